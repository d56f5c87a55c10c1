package plumeline.ask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Answer.Assumed;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Item;
import plumeline.answer.Outcome;
import plumeline.answer.Question;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.quantity.PaperUnit;
import plumeline.text.Document;
import plumeline.text.Node;
import plumeline.tidy.Outside;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// What holds for every question: found by name, its example runs, its answer has the contract's form.
final class QuestionsTest {
    @Test
    void everyQuestion_isListedAndFound() {
        assertThat(Questions.listAll().stream().map(Question::name))
                .containsExactly(
                        "framing",
                        "reveal",
                        "float",
                        "hang",
                        "tank",
                        "line",
                        "sweat",
                        "beads",
                        "ink",
                        "clear-water",
                        "fall",
                        "highlight",
                        "exposure",
                        "colour",
                        "power",
                        "gel",
                        "lamp-flicker",
                        "cut-flash",
                        "move",
                        "turntable",
                        "label",
                        "white-balance",
                        "ramp",
                        "beat",
                        "media",
                        "loudness");
        for (Question question : Questions.listAll()) {
            assertThat(Questions.find(question.name())).isPresent();
            assertThat(question.asks()).isNotBlank().doesNotContain("\n").doesNotEndWith(".");
        }
        assertThat(Questions.find("framming")).isEmpty();
    }

    @Test
    void everyExample_runsAsItIs_andSaysWhatItsFieldsMean() {
        for (Question question : Questions.listAll()) {
            assertThat(question.example()).contains("#").endsWith("\n");
            Answer answer = Asking.answer(question.name(), question.example());
            assertThat(answer.verdict()).as(question.name()).isIn(Verdict.HOLDS, Verdict.NO_OBJECTION_FOUND);
            assertThat(answer.question()).isEqualTo(question.name());
            assertThat(answer.notes().sources()).isNotEmpty();
        }
    }

    @Test
    void everyAnswer_isWellFormedJson_withTheContractsFields() {
        for (Question question : Questions.listAll()) {
            String json = Asking.answer(question.name(), question.example()).toJson();
            Document document = Document.read(json.getBytes(StandardCharsets.UTF_8), "answer.json");
            assertThat(document.problems()).isEmpty();
            Node.Mapping root = (Node.Mapping) document.findRoot().orElseThrow();
            assertThat(root.keys())
                    .containsExactly(
                            "question", "verdict", "answers", "assumed", "because", "try", "cautions", "sources");
        }
    }

    @Test
    @Outside(
            source = "Jackson, a JSON library",
            place = "its streaming parser, strict as by default",
            kind = "other program",
            printedDigits = 7)
    void everyAnswer_readsTheSameInAnotherParser() {
        int values = 0;
        for (Question question : Questions.listAll()) {
            String example =
                    question.example().replace("100 mm", "100 mm ± 1 mm").replace("600 mm", "600 mm ± 1 mm");
            Answer answer = Asking.answer(question.name(), example);
            JsonNode root = JsonMapper.shared().readTree(answer.toJson());
            assertThat(root.get("verdict").asString())
                    .isEqualTo(answer.verdict().word());
            assertThat(root.get("because").size())
                    .isEqualTo(answer.notes().because().size());
            assertThat(root.get("answers").size()).isEqualTo(answer.answers().size());
            for (Item item : answer.answers()) {
                JsonNode there = root.get("answers").get(item.name());
                switch (item.value()) {
                    case Value.Word(String word) -> assertThat(there.asString()).isEqualTo(word);
                    case Value.Number(double number, String unit) -> checkNumber(there, number, unit);
                    case Value.Spread(double number, String unit, double low, double high) -> {
                        checkNumber(there, number, unit);
                        assertThat(there.get("low").asDouble()).isCloseTo(low, withinPercentage(1e-4));
                        assertThat(there.get("high").asDouble()).isCloseTo(high, withinPercentage(1e-4));
                    }
                    case Value.Numbers(List<Double> numbers, String unit) -> {
                        assertThat(there.get("unit").asString()).isEqualTo(unit);
                        assertThat(there.get("value").size()).isEqualTo(numbers.size());
                        for (int i = 0; i < numbers.size(); i++) {
                            assertThat(there.get("value").get(i).asDouble())
                                    .isCloseTo(numbers.get(i), withinPercentage(1e-4));
                        }
                    }
                }
                values++;
            }
        }
        assertThat(values)
                .isEqualTo(12 + 18 + 8 + 5 + 7 + 5 + 3 + 3 + 7 + 3 + 6 + 7 + 7 + 10 + 3 + 2 + 7 + 4 + 7 + 13 + 5 + 5 + 7
                        + 17 + 2 + 7);
    }

    private static void checkNumber(JsonNode there, double number, String unit) {
        assertThat(there.get("value").asDouble()).isCloseTo(number, withinPercentage(1e-4));
        assertThat(there.get("unit").asString()).isEqualTo(unit);
    }

    @Test
    void everyTextAnswer_isShort() {
        for (Question question : Questions.listAll()) {
            String text = Asking.answer(question.name(), question.example()).toText(PaperUnit.MILLIMETRES);
            assertThat(text.lines().count()).as(text).isLessThanOrEqualTo(30);
            assertThat(text).containsPattern("^" + question.name() + ": (holds|no objection found)\n");
        }
    }

    @Test
    void json_escapesAndRoundsAndSpreads() {
        Notes notes = new Notes(List.of("say \"so\"\\\n\u0001µ"), List.of(), List.of(), List.of());
        Answer answer = new Answer(
                "x",
                Verdict.NO_OBJECTION_FOUND,
                List.of(
                        Item.of("a", 1234.56789, "mm"),
                        new Item("b", new Value.Spread(0.1, "N", -0.00000001, 1e20)),
                        new Item("c", new Value.Numbers(List.of(86.4, 172.8), "deg")),
                        Item.word("d", "endless"),
                        Item.of("e", -0.0, "1")),
                List.of(
                        new Assumed("f", new Value.Number(20, "degC"), "why"),
                        new Assumed("g", new Value.Word("left"), "because")),
                notes);
        assertThat(answer.toJson()).isEqualTo("""
            {"question": "x",
             "verdict": "no objection found",
             "answers": {
               "a": {"value": 1234.568, "unit": "mm"},
               "b": {"value": 0.1, "unit": "N", "low": -0.00000001, "high": 1E+20},
               "c": {"value": [86.4, 172.8], "unit": "deg"},
               "d": "endless",
               "e": {"value": 0, "unit": "1"}},
             "assumed": [
               {"name": "f", "value": 20, "unit": "degC", "why": "why"},
               {"name": "g", "value": "left", "why": "because"}],
             "because": [
               "say \\"so\\"\\\\\\u000a\\u0001µ"],
             "try": [],
             "cautions": [],
             "sources": []}
            """);
    }

    @Test
    void emptyMap_isAnsweredOnlyWhereEveryFieldHasADefault() {
        for (Question question : Questions.listAll()) {
            if (question.name().equals("beads")) {
                assertThat(Asking.answer("beads", "{}").assumed()).hasSize(5);
            } else {
                assertThat(Asking.problems(question.name(), "{}")).isNotEmpty();
            }
        }
    }

    @Test
    void brokenInputs_areRefusedNotThrown() {
        List<String> broken = List.of(
                "", "   \n", "framing", "- 1\n- 2\n", "{", "sensor: [", "a: &b 1", "\u0000", "sensor: null\n", "[]");
        for (Question question : Questions.listAll()) {
            for (String text : broken) {
                assertThat(Asking.problems(question.name(), text)).as(text).isNotEmpty();
            }
        }
        byte[] bytes = {(byte) 0xff, (byte) 0xfe, 0, 1, 2};
        assertThat(Questions.find("framing").orElseThrow().answer(bytes, "x")).isInstanceOf(Outcome.Refused.class);
    }
}
