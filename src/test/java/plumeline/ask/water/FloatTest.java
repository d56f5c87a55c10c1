package plumeline.ask.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.ask.Asking;
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

    /// Intervals of what turns at neutral are what follows from the net lift's own ends.
    @Test
    void intervals_neverSayWhatCannotBe() {
        Answer answer = Asking.answer("float", "gained: 372 g ± 6 g\nwhole_mass: 375 g ± 2 g\n");
        double half = Math.hypot(6, 2) * 1.2815515655446004 / 1.959963984540054;
        Value.Spread under = Asking.spread(answer, "floats_at");
        assertThat(under.high()).isEqualTo(100);
        assertThat(under.low()).isCloseTo(100 * 375 / (375 + half - 3), within(0.02));
        Value.Spread ballast = Asking.spread(answer, "ballast_mass");
        assertThat(ballast.value()).isZero();
        assertThat(ballast.low()).isZero();
        assertThat(ballast.high()).isCloseTo(1.1 * (half - 3) / (1 - 0.998207 / 7.85), within(1e-4));
        Value.Spread line = Asking.spread(answer, "line_tension");
        assertThat(line.low()).isZero();
        assertThat(line.high()).isCloseTo((3 + half) * 9.80665e-3, within(1e-5));
        Value.Spread floating =
                Asking.spread(Asking.answer("float", "gained: 372 g ± 6 g\nwhole_mass: 330 g\n"), "line_tension");
        assertThat(floating.low()).isCloseTo(0.1 * (42 - 6 * 0.65386) * 9.80665e-3, within(1e-5));
    }

    /// A box that just stands: somewhat higher it leans by 32 deg, which no slope from 0 deg tells.
    @Test
    void whatTips_hasTheOutcomesForEnds() {
        String text = "box: {width: 60 mm, depth: 60 mm, height: %s}\nempty_mass: 60 g\n"
                + "contents: {volume: 60 ml, density: 1 g/ml}\n";
        Value.Spread tilt = Asking.spread(Asking.answer("float", text.formatted("50 mm ± 4 mm")), "upright");
        assertThat(tilt.value()).isZero();
        assertThat(tilt.low()).isZero();
        double end = 50 + 4 * 1.2815515655446004 / 1.959963984540054;
        assertThat(tilt.high())
                .isGreaterThan(20)
                .isCloseTo(number(text.formatted(end + " mm"), "upright"), within(1e-3));
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
        assertThat(Asking.problems("float", start + "air: -1 ml\n").getFirst())
                .contains("air is -1 ml")
                .contains("from a weighed jug");
        assertThat(Asking.problems("float", start + "water: {salt: -3 %}\n").getFirst())
                .contains("weigh a measured volume");
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
    void box_hasItsVolumeAndAttitudes() {
        String box = "box: {width: 100 mm, depth: 40 mm, height: 60 mm}\nempty_mass: 144 g\nwall: {density: 0.6 g/ml}\n"
                + "water: {density: 1 g/ml}\n";
        Answer answer = Asking.answer("float", box);
        assertThat(Asking.number(answer, "net_lift")).isCloseTo(0.096 * 9.80665, within(1e-9));
        assertThat(Asking.number(answer, "upright")).isCloseTo(90, within(0.01));
        assertThat(answer.getValue("end_up")).isEqualTo(new Value.Word("neither"));
        assertThat(answer.notes().because()).anyMatch(line -> line.contains("90 deg along its depth."));
    }

    @Test
    void hollowBase_holdsAirThatLifts_andIsClearedFirst() {
        String can = "profile: [[0 mm, 26 mm], [12 mm, 33 mm], [95 mm, 33 mm], [118 mm, 26.5 mm]]\nempty_mass: 13 g\n"
                + "wall: {density: 2.7 g/ml}\nwater: {density: 1 g/ml}\nclosed: no\nair: 0 ml\n";
        double flooded = -13e-3 * (1 - 1 / 2.7) * 9.80665;
        double cap = Math.PI * 10 * (3 * 24 * 24 + 100) / 6 / 1e3;
        Answer caught = Asking.answer("float", can + "base: {diameter: 48 mm, depth: 10 mm}\n");
        assertThat(Asking.number(caught, "net_lift")).isCloseTo(flooded + cap * 9.80665e-3, within(1e-6));
        assertThat(caught.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(caught.notes().attempts().getFirst()).startsWith("Tilt it under water until no air is left");
        Answer some = Asking.answer("float", can + "base: {diameter: 48 mm, depth: 10 mm, air: 7 ml}\n");
        assertThat(some.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(some.notes().because()).anyMatch(line -> line.startsWith("Its hollow base holds 7 ml of air"));
        assertThat(Asking.number(some, "upright")).isGreaterThan(20);
        Answer cleared = Asking.answer("float", can + "base: {diameter: 48 mm, depth: 10 mm, air: 0 ml}\n");
        assertThat(Asking.number(cleared, "net_lift")).isCloseTo(flooded, within(1e-9));
        String outside = "outside: 372.8 ml\nempty_mass: 13 g\nwater: {density: 1 g/ml}\n";
        double measured = number(outside + "base: {diameter: 48 mm, depth: 10 mm, volume: 7 ml}\n", "net_lift");
        assertThat(measured - number(outside, "net_lift")).isCloseTo(7 * 9.80665e-3, within(1e-9));
        assertThat(Asking.problems("float", can + "base: {diameter: 70 mm, depth: 10 mm}\n")
                        .getFirst())
                .contains("P-ASK-60");
        assertThat(Asking.problems("float", can + "base: {diameter: 48 mm, depth: 10 mm, air: 20 ml}\n")
                        .getFirst())
                .contains("P-ASK-61")
                .contains("upside down on a scale");
        assertThat(Asking.problems("float", can + "base: {diameter: 48 mm, depth: 10 mm, volume: 20 ml}\n")
                        .getFirst())
                .contains("P-ASK-62");
    }

    @Test
    void aWeighing_givesTheContentsDensity_withItsSpread() {
        String can = "outside: 372 ml\nempty_mass: 14 g\nwater: {density: 1 g/ml}\n";
        Answer weighed = Asking.answer(
                "float", can + "contents: {volume: 350 ml, weighed: {volume: 100 ml ± 1 ml, mass: 104 g ± 1 g}}\n");
        assertThat(Asking.number(weighed, "net_lift")).isCloseTo((372 - 14 - 350 * 1.04) * 9.80665e-3, within(1e-9));
        double half = 350 * Math.hypot(0.01, 0.0104);
        assertThat(weighed.notes().because().getFirst()).contains("± " + FloatBody.grams(half / 1e3) + " (95 %)");
        Answer guessed = Asking.answer("float", can + "contents: {volume: 350 ml}\n");
        assertThat(guessed.notes().attempts()).anyMatch(line -> line.startsWith("Weigh 100 ml of its contents"));
        assertThat(guessed.assumed()).anyMatch(each -> each.name().equals("contents.density"));
        assertThat(Asking.problems("float", can + "contents: {volume: 9 ml, weighed: {volume: 9 ml, mass: 90 g}}\n")
                        .getFirst())
                .contains("P-ASK-64")
                .contains("syringe");
    }

    @Test
    void mixes_outOfRange_areRefused_andSayWhatToWeigh() {
        String can = "outside: 372 ml\nempty_mass: 14 g\n";
        for (String mix : new String[] {
            "contents: {volume: 9 ml, sugar: 60 %}\n",
            "water: {salt: 30 %}\n",
            "water: {sea_salt: 5 %}\n",
            "contents: {volume: 9 ml, sugar: 10 %}\nwater: {temperature: 10 degC}\n",
            "water: {salt: 3 %, temperature: 2 degC}\n"
        }) {
            assertThat(Asking.problems("float", can + mix).getFirst())
                    .as(mix)
                    .contains("P-ASK-63")
                    .contains("Weigh a measured volume of it");
        }
        assertThat(Asking.problems("float", can + "water: {salt: 3 %, density: 1.02 g/ml}\n"))
                .hasSize(1);
    }

    @Test
    void materials_goByName() {
        String can = "outside: 372 ml\nempty_mass: 30 g\n";
        double named = number(can + "wall: {material: steel}\nballast: {material: lead}\n", "ballast_mass");
        double given = number(can + "wall: {density: 7.85 g/ml}\nballast: {density: 11.34 g/ml}\n", "ballast_mass");
        assertThat(named).isCloseTo(given, within(1e-9));
        assertThat(Asking.problems("float", can + "wall: {material: cheese}\n").getFirst())
                .contains("tinplate");
    }

    @Test
    void emptyCentre_isTakenAsGiven() {
        String bottle =
                "diameter: 60 mm\nheight: 160 mm\nshape_factor: 0.9\nempty_mass: 300 g\nwall: {material: glass}\n";
        assertThat(number(bottle + "empty_centre: 30 mm\n", "upright")).isZero();
        assertThat(number(bottle + "empty_centre: 130 mm\n", "upright")).isEqualTo(180);
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
