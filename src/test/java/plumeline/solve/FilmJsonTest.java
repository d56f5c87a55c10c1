package plumeline.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.plan.Plans;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/// The answer's JSON by the contract of the questions: the fields, their units, nothing left out.
final class FilmJsonTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static final String TEXT = Solved.text(
                    "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, free between 40 mm and 110 mm], aim: ahead,"
                            + " f_number: 11, focus: 600 mm}",
                    "place:",
                    "  hero: {thing: tall, at: [0 mm, 0 mm], turn: 15 deg}",
                    "  back: {thing: tall, at: [1 mm, 4 in measured]}",
                    "lights: {key: {light: strip, at: [600 mm, 0 mm, 700 mm], level: 40 %}, fill: {light: strip, at:"
                            + " free}}",
                    "passes: {plain: {}, closer: {place.back.at.y: 60 mm}}",
                    "wants:",
                    "  - {hidden: back, behind: hero}",
                    "  - {fills: hero, height: 20 %}",
                    "  - {sharp_enough: wide}",
                    "  - {reaches: camera}")
            + "wants: [{inside: wide}, {on_beat: cuts}]\n";

    private static JsonNode json() {
        return MAPPER.readTree(
                FilmJson.of(Solved.film(Solved.replaced(TEXT, "papers: mm", "papers: mm, title: Test"))));
    }

    private static List<String> names(JsonNode node) {
        return node.propertyNames().stream().sorted().toList();
    }

    @Test
    void film_hasTheContractsFields() {
        JsonNode film = json();
        assertThat(names(film)).containsExactly("film", "plan_sha256", "problems", "shots", "verdict", "wants");
        assertThat(film.get("film").asString()).isEqualTo("Test");
        assertThat(film.get("verdict").asString()).isEqualTo("fails");
        assertThat(film.get("problems").size()).isZero();
        assertThat(film.get("shots").size()).isEqualTo(1);
    }

    @Test
    void planSha256_isOfTheText() throws NoSuchAlgorithmException {
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(TEXT.getBytes(StandardCharsets.UTF_8));
        JsonNode film = MAPPER.readTree(FilmJson.of(Solved.film(TEXT)));
        assertThat(film.get("plan_sha256").asString()).isEqualTo(HexFormat.of().formatHex(digest));
    }

    @Test
    void shot_hasTheContractsFields() {
        JsonNode shot = json().get("shots").get(0);
        assertThat(names(shot)).contains("leeway_without", "marks", "shot", "together", "verdict", "wants");
        assertThat(shot.get("shot").asString()).isEqualTo("one");
        assertThat(shot.get("verdict").asString()).isEqualTo("fails");
        assertThat(names(shot.get("together"))).containsExactly("unit", "value");
        assertThat(shot.get("together").get("unit").asString()).isEqualTo("1");
        assertThat(shot.get("leeway_without").get(0).asString()).isEqualTo("one.2");
        // Grown by addition: `notes` and a mark's `ends` are ours.
        assertThat(names(shot)).hasSize(7).contains("notes");
    }

    @Test
    void wants_haveIdWordsVerdictMarginReasonsAndPass() {
        JsonNode wants = json().get("shots").get(0).get("wants");
        JsonNode hidden = wants.get(0);
        assertThat(names(hidden))
                .containsExactly("because", "id", "margin", "margin_over_pupil", "pass", "try", "verdict", "want");
        // Seen from off the lens point less is hidden.
        assertThat(hidden.get("margin_over_pupil").get("unit").asString()).isEqualTo("mm");
        assertThat(hidden.get("margin_over_pupil").get("value").asDouble())
                .isLessThan(hidden.get("margin").get("value").asDouble());
        assertThat(wants.get(1).has("margin_over_pupil")).isFalse();
        assertThat(hidden.get("id").asString()).isEqualTo("one.1");
        assertThat(hidden.get("want").asString()).startsWith("hidden back behind hero");
        assertThat(hidden.get("pass").asString()).isEqualTo("closer");
        assertThat(hidden.get("margin").get("unit").asString()).isEqualTo("mm");
        assertThat(wants.get(1).get("margin").get("unit").asString()).isEqualTo("%");
        assertThat(wants.get(1).get("margin").get("value").asDouble()).isNegative();
        JsonNode unknown = wants.get(2);
        assertThat(unknown.get("verdict").asString()).isEqualTo("unknown");
        assertThat(unknown.has("margin")).isFalse();
        assertThat(unknown.get("because").get(0).asString()).startsWith("Not known: how many pixels wide has.");
        assertThat(wants.get(3).get("margin").get("unit").asString()).isEqualTo("mm");
    }

    @Test
    void aLackInTheKit_failsWithAMarginThatSaysSo() {
        JsonNode reaches = MAPPER.readTree(
                        FilmJson.of(Solved.film(Solved.replaced(TEXT, "f_number: 11", "f_number: 1.4"))))
                .get("shots")
                .get(0)
                .get("wants")
                .get(3);
        assertThat(reaches.get("verdict").asString()).isEqualTo("fails");
        assertThat(reaches.get("margin").get("unit").asString()).isEqualTo("mm");
        // 50 mm at f/1.4 would be 35.7 mm wide; f/2 less half a per cent is 25.1.
        assertThat(reaches.get("margin").get("value").asDouble()).isEqualTo(50 / 1.99 - 50 / 1.4, within(1e-6));
        assertThat(reaches.get("because").get(0).asString()).isEqualTo("fifty has f/2 to f/22, not f/1.4.");
    }

    @Test
    void filmWants_areAnsweredToo() {
        JsonNode wants = json().get("wants");
        assertThat(wants.get(0).get("id").asString()).isEqualTo("film.1");
        assertThat(wants.get(1).get("verdict").asString()).isEqualTo("unknown");
    }

    @Test
    void marks_haveUnitsByTheirKind_andOrigins() {
        checkMark("camera.y", -600, "mm", "given");
        checkMark("back.y", 101.6, "mm", "measured");
        checkMark("camera.f_number", 11, "1", "given");
        checkMark("camera.focus", 600, "mm", "given");
        checkMark("hero.turn", 15, "deg", "given");
        JsonNode height = mark("camera.z");
        assertThat(height.get("origin").asString()).isEqualTo("solved");
        assertThat(height.get("value").get("unit").asString()).isEqualTo("mm");
        assertThat(height.get("value").get("value").asDouble()).isBetween(40.0, 110.0);
        JsonNode open = mark("fill.x");
        assertThat(open.get("origin").asString()).isEqualTo("free");
        assertThat(open.has("value")).isFalse();
    }

    private static void checkMark(String name, double value, String unit, String origin) {
        JsonNode mark = mark(name);
        assertThat(names(mark)).containsExactly("ends", "leeway", "mark", "origin", "value");
        assertThat(mark.get("value").get("value").asDouble()).isEqualTo(value, within(1e-6));
        assertThat(mark.get("value").get("unit").asString()).isEqualTo(unit);
        assertThat(mark.get("origin").asString()).isEqualTo(origin);
    }

    private static JsonNode mark(String name) {
        for (JsonNode mark : json().get("shots").get(0).get("marks")) {
            if (mark.get("mark").asString().equals(name)) {
                return mark;
            }
        }
        throw new AssertionError("no mark " + name);
    }

    @Test
    void leeway_isADistanceWithAUnitOrEndless() {
        JsonNode aside = mark("back.x").get("leeway");
        assertThat(names(aside)).containsExactly("minus", "plus");
        assertThat(aside.get("plus").get("unit").asString()).isEqualTo("mm");
        // The closer pass has its own depth of 60 mm, and 1 mm aside of its leeway is used up.
        assertThat(aside.get("minus").get("value").asDouble()
                        - aside.get("plus").get("value").asDouble())
                .isEqualTo(2, within(0.02));
        assertThat(mark("hero.turn").get("leeway").get("plus").asString()).isEqualTo("endless");
    }

    @Test
    void problems_havePlaceFieldCodeAndWhatToTry() {
        String bad = Solved.replaced(TEXT, "focal_length: 50 mm", "focal_length: 0 mm");
        var reading = Plans.read(bad.getBytes(StandardCharsets.UTF_8), "p.yaml");
        JsonNode problems =
                MAPPER.readTree(FilmJson.ofProblems(reading.problems())).get("problems");
        assertThat(problems.size()).isEqualTo(1);
        assertThat(names(problems.get(0)))
                .containsExactly("allowed", "code", "column", "field", "file", "given", "line", "try");
        assertThat(problems.get(0).get("file").asString()).isEqualTo("p.yaml");
        assertThat(problems.get(0).get("given").asString()).isEqualTo("0 mm");
        assertThat(problems.get(0).get("line").asInt()).isPositive();
    }
}
