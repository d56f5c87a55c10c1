package plumeline.ask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumeline.quantity.PaperUnit;

/// The question `float`: every answer, default, refusal and sentence.
final class FloatTest {
    private static final String CAN = """
        profile: [[0 mm, 23 mm], [12 mm, 33 mm], [95 mm, 33 mm], [112 mm, 26.5 mm], [118 mm, 26.5 mm]]
        empty_mass: 14 g
        contents: {volume: 355 ml, density: 1.000 g/ml}
        """;

    private static double number(String text, String name) {
        return Asking.number(Asking.answer("float", text), name);
    }

    @Test
    void measuredVolume_gainedAndForms_giveTheSameLift() {
        String rest = "empty_mass: 14 g\ncontents: {volume: 355 ml}\nwater: {density: 0.998207 g/ml}\n";
        double outside = number("outside: 372 ml\n" + rest, "net_lift");
        assertThat(outside).isCloseTo((0.998207 * 372 - 14 - 355) * 9.80665e-3, within(1e-9));
        assertThat(number("gained: 371.333004 g\n" + rest, "net_lift")).isCloseTo(outside, within(1e-8));
        double factor = 372e3 / (Math.PI / 4 * 66 * 66 * 121);
        String form = "diameter: 66 mm\nheight: 121 mm\nshape_factor: " + factor + "\n" + rest;
        assertThat(number(form, "net_lift")).isCloseTo(outside, within(1e-8));
        String whole =
                "outside: 372 ml\nwhole_mass: 369 g\ncontents: {volume: 355 ml}\nwater: {density: 0.998207 g/ml}\n";
        Answer answer = Asking.answer("float", whole);
        assertThat(Asking.number(answer, "net_lift")).isCloseTo(outside, within(1e-9));
        assertThat(Asking.number(answer, "after_flooding"))
                .isCloseTo(-14e-3 * 9.80665 * (1 - 998.207 / 2700), within(1e-9));
    }

    @Test
    void floatingCan_saysBallastTensionAirFlooding() {
        String text = "outside: 372 ml\nempty_mass: 14 g\ncontents: {volume: 355 ml, density: 1 g/ml}\n"
                + "wall: {density: 2.7 g/ml}\nballast: {density: 11.34 g/ml}\nwater: {density: 1 g/ml}\n";
        Answer answer = Asking.answer("float", text);
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(Asking.number(answer, "net_lift")).isCloseTo(3e-3 * 9.80665, within(1e-9));
        assertThat(Asking.number(answer, "floats_at")).isCloseTo(100 * 369.0 / 372, within(1e-6));
        assertThat(Asking.number(answer, "ballast_mass")).isCloseTo(1.1 * 3 / (1 - 1 / 11.34), within(1e-6));
        assertThat(Asking.number(answer, "line_tension")).isCloseTo(0.1 * 3e-3 * 9.80665, within(1e-9));
        double cavity = 372 - 14 / 2.7;
        assertThat(Asking.number(answer, "most_air")).isCloseTo(cavity - 358, within(1e-6));
        assertThat(answer.getValue("upright")).isEqualTo(new Value.Word("unknown"));
        assertThat(answer.notes().attempts()).anyMatch(line -> line.contains("flood"));
    }

    @Test
    void sinkingCan_holds_withItsOwnWeightOnTheLine() {
        Answer answer = Asking.answer("float", CAN.replace("1.000", "1.05"));
        assertThat(answer.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(Asking.number(answer, "floats_at")).isEqualTo(100);
        assertThat(Asking.number(answer, "ballast_mass")).isZero();
        assertThat(Asking.number(answer, "line_tension")).isCloseTo(-Asking.number(answer, "net_lift"), within(1e-9));
        assertThat(Asking.number(answer, "upright")).isLessThan(45);
        assertThat(answer.getValue("end_up")).isEqualTo(new Value.Word("top"));
    }

    @Test
    void scaleReadings_giveOdds_andTight() {
        Answer sinks = Asking.answer("float", "gained: 370 g ± 5 g\nwhole_mass: 378 g ± 3 g\n");
        assertThat(sinks.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(sinks.notes().because().getFirst())
                .contains("Sinks by 8 g ± 5.8 g (95 %)")
                .contains("99.6 %");
        assertThat(sinks.notes().attempts()).anyMatch(line -> line.startsWith("Add 13.7 g"));
        Answer tight = Asking.answer("float", "gained: 370 g ± 5 g\nwhole_mass: 372 g ± 3 g\n");
        assertThat(tight.verdict()).isEqualTo(Verdict.TIGHT);
        Value.Spread lift = Asking.spread(tight, "net_lift");
        double half = Math.hypot(5, 3) * 9.80665e-3 * 1.2815515655446004 / 1.959963984540054;
        assertThat(lift.high() - lift.value()).isCloseTo(half, within(1e-6));
        assertThat(tight.getValue("after_flooding")).isEqualTo(new Value.Word("unknown"));
    }

    @Test
    void open_fillsWhereItsAirDoesNotStay() {
        String open = "outside: 372 ml\nempty_mass: 14 g\nwater: {density: 1 g/ml}\nclosed: no\nair: 5 ml\n";
        double net = number(open, "net_lift");
        double cavity = 372 - 14 / 2.7;
        assertThat(net).isCloseTo((372 - 14 - (cavity - 5)) * 9.80665e-3, within(1e-8));
        assertThat(number(open, "most_air")).isCloseTo(14 - 14 / 2.7, within(1e-6));
        assertThat(number(open, "after_flooding")).isCloseTo(-(14 - 14 / 2.7) * 9.80665e-3, within(1e-8));
    }

    @Test
    void whatDoesNotAddUp_isRefused_andSaysWhatToMeasure() {
        String start = "outside: 372 ml\nempty_mass: 14 g\n";
        assertThat(Asking.problems("float", start + "contents: {volume: 371 ml}\n")
                        .getFirst())
                .contains("371 ml of contents")
                .contains("at most 367 ml")
                .contains("holding it under in a jug on a scale")
                .contains("P-ASK-54");
        assertThat(Asking.problems("float", start + "contents: {volume: 355 ml}\nair: 20 ml\n")
                        .getFirst())
                .contains("at most 11.8 ml")
                .contains("P-ASK-55");
        assertThat(Asking.problems("float", start + "air: -1 ml\n").getFirst()).contains("air is -1 ml");
        assertThat(Asking.problems("float", "outside: 20 ml\nempty_mass: 100 g\n")
                        .getFirst())
                .contains("P-ASK-53");
        assertThat(Asking.problems("float", "outside: 400 ml\nwhole_mass: 300 g\ncontents: {volume: 355 ml}\n")
                        .getFirst())
                .contains("P-ASK-51");
        String hole = "empty_mass: 14 g\nprofile: [[0 mm, 30 mm], [50 mm, 0 mm], [90 mm, 30 mm]]\n";
        assertThat(Asking.problems("float", hole).getFirst())
                .contains("a profile with a hole")
                .contains("Measure the diameter")
                .contains("P-ASK-52");
        assertThat(Asking.problems("float", "empty_mass: 14 g\nprofile: [[5 mm, 30 mm], [90 mm, 30 mm]]\n"))
                .hasSize(1);
        assertThat(Asking.problems("float", start + "ballast: {density: 0.9 g/ml}\n")
                        .getFirst())
                .contains("P-ASK-56");
        assertThat(Asking.problems("float", start + "gained: 3 g\n")).isNotEmpty();
        assertThat(Asking.problems("float", "outside: 372 ml\n")).isNotEmpty();
        assertThat(Asking.problems("float", start + "water: {temperature: 60 degC}\n")
                        .getFirst())
                .contains("from 0 degC to 40 degC");
    }

    @Test
    void answers_areShort() {
        for (String text : new String[] {CAN, CAN.replace("1.000", "1.05")}) {
            assertThat(Asking.answer("float", text)
                            .toText(PaperUnit.MILLIMETRES)
                            .lines()
                            .count())
                    .isLessThanOrEqualTo(30);
        }
    }
}
