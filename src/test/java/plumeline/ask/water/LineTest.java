package plumeline.ask.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumeline.ask.Asking.answer;
import static plumeline.ask.Asking.number;
import static plumeline.ask.Asking.problems;
import static plumeline.ask.Asking.spread;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Answer.Assumed;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.quantity.PaperUnit;
import plumeline.tidy.Outside;

/// The question `line` in text: strength, factor, least diameter, width, verdicts, what it says to try, refusals.
final class LineTest {
    private static final String VIEW = "view: {distance: %s, focal_length: 100 mm,"
            + " sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}\n";

    @Test
    @Outside(
            source = "arithmetic of the project's check values",
            place = "rows L12, L17, L18, L23",
            kind = "worked example",
            printedDigits = 3)
    void checkRows_areAnswered() {
        Answer can = answer("line", "load: 0.55 kg\ndiameter: 0.25 mm\n");
        assertThat(number(can, "strength")).isCloseTo(29.5, within(0.05));
        assertThat(number(can, "least_diameter")).isCloseTo(0.338, within(0.0005));
        assertThat(number(can, "safety_factor")).isCloseTo(29.45 * 0.5 / 5.3937, within(0.001));
        Answer wet = answer("line", "load: 0.0805 N\ndiameter: 0.25 mm\n");
        assertThat(number(wet, "least_diameter")).isCloseTo(0.041, within(0.0005));
        // A frame 200 mm wide: m = 0.18, so the lens stands at f(1 + 1/m).
        String view = VIEW.formatted("655.5555556 mm");
        Answer seen = answer("line", "load: 0.0805 N\ndiameter: 0.25 mm\n" + view);
        assertThat(number(seen, "width")).isCloseTo(4.80, within(0.005));
        assertThat(number(seen, "mask_width")).isEqualTo(9);
    }

    @Test
    void water_makesItWider() {
        String text = "load: 1 N\ndiameter: 0.25 mm\n" + VIEW.formatted("800 mm");
        double dry = number(answer("line", text), "width");
        assertThat(dry).isCloseTo(0.25 / 7 * 3840 / 36, within(1e-9));
        Answer wet = answer("line", text + "between: water\n");
        assertThat(number(wet, "width")).isCloseTo(0.25 / (8 / 1.333 - 1) * 3840 / 36, within(1e-9));
        assertThat(wet.notes().because()).anyMatch(sentence -> sentence.contains("with water all the way"));
        assertThat(answer("line", text).assumed().stream().map(Assumed::name)).contains("between");
    }

    @Test
    @Outside(
            source = "a seconds pendulum: 0.994 m swing there and back in 2 s (any text on mechanics)",
            place = "2√(l/g)π; 0.9^n = 0.01 for n = 43.7",
            kind = "closed form",
            printedDigits = 3)
    void length_saysSwingAndWait() {
        Answer answer = answer("line", "load: 1 N\nstrength: 30 N\nlength: 994 mm\n");
        assertThat(answer.notes().because())
                .anySatisfy(line ->
                        assertThat(line).contains("there and back in 2 s").contains("after 87 s"));
    }

    @Test
    void withoutView_widthIsUnknown() {
        Answer answer = answer("line", "load: 1 N\nstrength: 30 N\n");
        assertThat(answer.getValue("width")).isEqualTo(new Value.Word("unknown"));
        assertThat(answer.getValue("mask_width")).isEqualTo(new Value.Word("unknown"));
        assertThat(answer.verdict()).isEqualTo(Verdict.NO_OBJECTION_FOUND);
        assertThat(answer.assumed().stream().map(Assumed::name)).contains("diameter", "knot", "material");
    }

    @Test
    void label_goesBeforeTheChart() {
        Answer answer = answer("line", "load: 4 N\nstrength: 44.5 N\ndiameter: 0.30 mm\nknot: 60 %\n");
        assertThat(number(answer, "strength")).isEqualTo(44.5);
        assertThat(number(answer, "safety_factor")).isCloseTo(44.5 * 0.6 / 4, within(1e-9));
        // As strong for its thickness as this line: d·√(needed/strength).
        assertThat(number(answer, "least_diameter")).isCloseTo(0.3 * Math.sqrt(4 * 5 / 0.6 / 44.5), within(1e-9));
    }

    /// Charts give 530 to 780 N/mm² where 600 is planned with; thickness goes with one over the root of that.
    @Test
    void oneOfTheTwo_givesWhatChartsSayForItsEnds() {
        String view = VIEW.formatted("800 mm");
        Answer measured = answer("line", "load: 4 N\ndiameter: 0.30 mm\n" + view);
        double strength = 600 * Math.PI / 4 * 0.09;
        checkEnds(spread(measured, "strength"), strength, 530 / 600.0, 780 / 600.0);
        checkEnds(spread(measured, "safety_factor"), strength / 2 / 4, 530 / 600.0, 780 / 600.0);
        double least = Math.sqrt(4 * 4 * 5 / 0.5 / Math.PI / 600);
        checkEnds(spread(measured, "least_diameter"), least, Math.sqrt(600 / 780.0), Math.sqrt(600 / 530.0));
        assertThat(measured.getValue("width")).isInstanceOf(Value.Number.class);
        Answer labelled = answer("line", "load: 4 N\nstrength: 50 N\n" + view);
        double width = Math.sqrt(4 * 50 / Math.PI / 600) / 7 * 3840 / 36;
        checkEnds(spread(labelled, "width"), width, Math.sqrt(600 / 780.0), Math.sqrt(600 / 530.0));
        Value.Spread mask = spread(labelled, "mask_width");
        assertThat(mask.value()).isEqualTo(Math.ceil(width) + 4);
        assertThat(mask.high()).isEqualTo(Math.ceil(width * Math.sqrt(600 / 530.0)) + 4);
        assertThat(labelled.getValue("safety_factor")).isInstanceOf(Value.Number.class);
        assertThat(labelled.notes().because())
                .anyMatch(line -> line.startsWith("Lines with that label are 0.29 mm to 0.35 mm thick"));
        Answer both = answer("line", "load: 4 N\nstrength: 50 N\ndiameter: 0.30 mm\n" + view);
        for (String name : List.of("strength", "safety_factor", "least_diameter", "width", "mask_width")) {
            assertThat(both.getValue(name)).as(name).isInstanceOf(Value.Number.class);
        }
    }

    private static void checkEnds(Value.Spread spread, double value, double low, double high) {
        assertThat(spread.value()).isCloseTo(value, within(1e-9));
        assertThat(spread.low()).isCloseTo(value * low, within(1e-9));
        assertThat(spread.high()).isCloseTo(value * high, within(1e-9));
    }

    @Test
    void strength_mayBeTheMassOnTheLabel() {
        Answer answer = answer("line", "load: 13 oz\nstrength: 30 lb\n");
        assertThat(number(answer, "strength")).isCloseTo(30 * 0.45359237 * 9.80665, within(1e-9));
        assertThat(number(answer, "safety_factor")).isCloseTo(0.5 * 30 * 16 / 13, within(1e-9));
        assertThat(answer("line", "load: 4 N\nstrength: 4.5 kg ± 0.5 kg\n").verdict())
                .isEqualTo(Verdict.NO_OBJECTION_FOUND);
    }

    @Test
    void verdicts_failTightAndNoObjection() {
        assertThat(answer("line", "load: 0.55 kg\ndiameter: 0.33 mm\n").verdict())
                .isEqualTo(Verdict.FAILS);
        Answer tight = answer("line", "load: 0.55 kg\ndiameter: 0.35 mm\n");
        assertThat(tight.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(tight.notes().because()).anyMatch(text -> text.contains("too little"));
        assertThat(answer("line", "load: 0.55 kg\ndiameter: 0.37 mm\n").verdict())
                .isEqualTo(Verdict.NO_OBJECTION_FOUND);
        Answer spread = answer("line", "load: 5 N ± 1 N\nstrength: 52 N\n");
        assertThat(spread.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(spread(spread, "safety_factor").low()).isLessThan(5);
    }

    @Test
    void whatItSaysToTry_raisesNoObjection() {
        Answer answer = answer("line", "load: 0.55 kg\ndiameter: 0.30 mm\n");
        assertThat(answer.notes().attempts())
                .containsExactly(
                        "Take 0.36 mm or thicker of such line.",
                        "Hang it on two upright lines that share the load: factor 6.9 while both bear.",
                        "Tie a knot that leaves 85 % and pull a trial piece to the load times five.");
        Answer thicker = answer("line", "load: 0.55 kg\ndiameter: 0.36 mm\n");
        assertThat(thicker.verdict()).isEqualTo(Verdict.NO_OBJECTION_FOUND);
        assertThat(thicker.notes().attempts()).isEmpty();
        assertThat(answer("line", "load: 0.275 kg\ndiameter: 0.30 mm\n").verdict())
                .isEqualTo(Verdict.NO_OBJECTION_FOUND);
        assertThat(answer("line", "load: 0.55 kg\ndiameter: 0.30 mm\nknot: 85 %\n")
                        .verdict())
                .isEqualTo(Verdict.NO_OBJECTION_FOUND);
    }

    @Test
    void text_neverSaysAThinnerLine() {
        String text = answer("line", "load: 0.55 kg\ndiameter: 0.37 mm\n").toText(PaperUnit.MILLIMETRES);
        assertThat(text)
                .containsPattern("least_diameter +0.34 mm \\(0.3 mm to 0.36 mm\\)\n")
                .contains("Caution  Nobody under it");
        String spread = answer("line", "load: 0.55 kg ± 10 %\nstrength: 64.5 N\ndiameter: 0.37 mm\n")
                .toText(PaperUnit.INCHES);
        assertThat(spread).contains("0.34 mm (0.33 mm to 0.35 mm)");
    }

    @Test
    void wrongInputs_areRefused() {
        String base = "load: 1 N\ndiameter: 0.25 mm\n";
        assertThat(problems("line", base + VIEW.formatted("90 mm")))
                .containsExactly("ask.yaml:3:18 view.distance is 90 mm; must be more than 100 mm with this lens\n"
                        + "  Measure from the lens to the line, such as 900 mm.   (P-ASK-21, docs/problems.md)");
        assertThat(problems("line", base + VIEW.formatted("120 mm") + "between: water\n"))
                .hasSize(1)
                .allMatch(text -> text.contains("must be more than 133 mm with this lens"));
        assertThat(problems("line", "load: 1 N\n"))
                .hasSize(1)
                .allMatch(text -> text.contains("diameter") && text.contains("strength"));
        for (String wrong : List.of("load: 0 N\n", "load: 3 mm\n", "load: 3\n", "load: 1 N\nknot: 120 %\n")) {
            assertThat(problems("line", wrong + "diameter: 0.25 mm\n"))
                    .as(wrong)
                    .isNotEmpty();
        }
    }
}
