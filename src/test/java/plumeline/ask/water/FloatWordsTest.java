package plumeline.ask.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Answer.Assumed;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.ask.Asking;
import plumeline.tidy.Outside;

/// The question `float`: what is guessed, near neutral, spilled; mixes, names and refusals.
final class FloatWordsTest {
    private static final String CAN = "outside: 372 ml\nempty_mass: 14 g\n";

    /// Contents of 357 ml between 0.99 and 1.04 g/ml weigh 3.6 g less to 14.3 g more than at 1 g/ml.
    @Test
    void guessedContents_spreadAndTheVerdictRestsOnThem() {
        Answer sinks = Asking.answer("float", CAN + "contents: {volume: 358 ml}\n");
        assertThat(sinks.verdict()).isEqualTo(Verdict.TIGHT);
        double net = 0.9982067 * 372 - 372;
        Value.Spread lift = Asking.spread(sinks, "net_lift");
        assertThat(lift.value()).isCloseTo(net * 9.80665e-3, within(1e-6));
        assertThat(lift.low()).isCloseTo((net - 358 * 0.04) * 9.80665e-3, within(1e-6));
        assertThat(lift.high()).isCloseTo((net + 358 * 0.01) * 9.80665e-3, within(1e-6));
        assertThat(sinks.assumed())
                .filteredOn(each -> each.name().equals("contents.density"))
                .hasSize(1)
                .allMatch(each -> each.why().contains("0.99 (wine) to 1.04 (sugared), 80 %"));
        // The median sinks by 0.67 g, and one in ten floats by 2.9 g or more: z = 0.67/3.58·1.2816 = 0.239, so 59.4 %.
        assertThat(sinks.notes().because().getFirst())
                .startsWith("Sinks by 0.7 g (80 %: from 15 g down to 2.9 g up); odds that it sinks 59.4 %");
        assertThat(sinks.notes().because()).anyMatch(line -> line.endsWith("so that the verdict rests on it."));
        Answer floats = Asking.answer("float", CAN + "contents: {volume: 357 ml}\n");
        assertThat(floats.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(floats.notes().because()).anyMatch(line -> line.endsWith("so that the verdict rests on it."));
        Answer sure = Asking.answer("float", CAN + "contents: {volume: 300 ml}\n");
        assertThat(sure.notes().because()).noneMatch(line -> line.endsWith("so that the verdict rests on it."));
        Answer told = Asking.answer("float", CAN + "contents: {volume: 358 ml, density: 1 g/ml}\n");
        assertThat(told.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(told.getValue("net_lift")).isInstanceOf(Value.Number.class);
    }

    @Test
    void nearNeutral_isSaidSo() {
        for (String mass : new String[] {"371.36 g", "371.30 g"}) {
            Answer answer = Asking.answer("float", "outside: 372 ml\nwhole_mass: " + mass + "\n");
            assertThat(answer.verdict()).isEqualTo(Verdict.TIGHT);
            assertThat(answer.notes().because().getFirst()).startsWith("Neutral, within 0.05 g: it displaces 371 g");
            assertThat(answer.notes().attempts()).containsExactly("Add 23 g of ballast at its base: 20 g down then.");
        }
        assertThat(Asking.answer("float", "outside: 372 ml\nwhole_mass: 371.2 g\n")
                        .verdict())
                .isEqualTo(Verdict.FAILS);
        assertThat(Asking.answer("float", "outside: 372 ml\nwhole_mass: 371.5 g\n")
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    @Test
    void mostAir_isUnknownWhereItFloatsWithNone() {
        Answer answer =
                Asking.answer("float", CAN.replace("14 g", "3 g") + "contents: {volume: 20 ml, alcohol: 40 %}\n");
        assertThat(answer.getValue("most_air")).isEqualTo(new Value.Word("unknown"));
        assertThat(answer.notes().because()).anyMatch(line -> line.endsWith("it floats even without any."));
    }

    @Test
    void airByDefault_isListedWithItsVolume() {
        Answer answer = Asking.answer("float", CAN + "contents: {volume: 355 ml, density: 1 g/ml}\n");
        Assumed air = answer.assumed().stream()
                .filter(each -> each.name().equals("air"))
                .findFirst()
                .orElseThrow();
        assertThat(air.value()).isEqualTo(new Value.Number(11.81, "ml"));
        assertThat(372 - 355 - 14 / 2.7).isCloseTo(11.81, within(0.005));
        assertThat(Asking.answer("float", CAN + "air: 5 ml\nclosed: no\n").assumed())
                .noneMatch(each -> each.name().equals("air"));
    }

    /// The hollow is a cap of a ball of radius (24² + 10²)/20 = 33.8 mm whose rim is 45.2 deg from its top; leant by
    /// θ it keeps what lies over its rim's highest point, the cap within 45.2 − θ.
    @Test
    @Outside(
            source = "volume of a ball's cap, πR³(2 + cos α)(1 − cos α)²/3",
            place = "α = 45.24 − 28.6 deg",
            kind = "closed form",
            printedDigits = 1)
    void airUnderALeaningBase_hasSpilled() {
        String can = "profile: [[0 mm, 33 mm], [115 mm, 33 mm]]\nempty_mass: 13 g\nwall: {density: 2.7 g/ml}\n"
                + "base: {diameter: 48 mm, depth: 10 mm, air: 7 ml}\nclosed: no\nair: 0 ml\n";
        Answer answer = Asking.answer("float", can);
        double alpha = Math.toRadians(45.24 - Asking.number(answer, "upright"));
        double left = Math.PI * Math.pow(33.8, 3) / 3 * (2 + Math.cos(alpha)) * Math.pow(1 - Math.cos(alpha), 2) / 1e3;
        assertThat(left).isCloseTo(0.2, within(0.05));
        assertThat(answer.notes().because())
                .anySatisfy(line -> assertThat(line)
                        .contains("Let go upright it leans to 29 deg, where all but 0.2 ml has spilled; it then sinks"
                                + " by 8 g."));
    }

    @Test
    void names_areTakenInAnyCase() {
        double named = net("wall: {material: PET}\nclosed: no\nair: 5 ml\n");
        assertThat(named).isEqualTo(net("wall: {material: pet}\nclosed: no\nair: 5 ml\n"));
        assertThat(named).isEqualTo(net("wall: {density: 1.38 g/ml}\nclosed: no\nair: 5 ml\n"));
        assertThat(net("ballast: {material: Stainless_Steel}\n")).isEqualTo(net(""));
        assertThat(Asking.problems("float", CAN + "wall: {material: peet}\n").getFirst())
                .contains("glass, PET, polypropylene")
                .contains("Try PET.");
    }

    private static double net(String more) {
        return Asking.number(Asking.answer("float", CAN + more), "net_lift");
    }

    /// Half of each by the jug is 55.8 % by mass: 1.261/(1.261 + 0.998).
    @Test
    @Outside(
            source = "CRC Handbook, 102nd edition, glycerol: 20 % by mass 1.0459 g/ml, 52 % 1.1308 g/ml, 20 degC",
            place = "concentrative properties (as the project's check values S20, S21 have them)",
            kind = "standard's table",
            printedDigits = 4)
    void glycerine_byMassAndByVolume() {
        assertThat(density("water: {glycerine_by_mass: 20 %}\n")).isCloseTo(1.0459, within(0.001));
        assertThat(density("water: {glycerine_by_mass: 52 %}\n")).isCloseTo(1.1308, within(0.001));
        double share = 1.2611 / (1.2611 + 0.9982);
        assertThat(density("water: {glycerine: 50 %}\n"))
                .isCloseTo(density("water: {glycerine_by_mass: " + 100 * share + " %}\n"), within(0.0002));
        String contents = CAN + "contents: {volume: 300 ml, glycerine: 100 %}\n";
        assertThat(Asking.number(Asking.answer("float", contents), "net_lift"))
                .isCloseTo((371.333 - 14 - 300 * 1.2611) * 9.80665e-3, within(0.003));
        assertThat(Asking.problems("float", CAN + "water: {glycerine: 20 %, temperature: 10 degC}\n")
                        .getFirst())
                .contains("P-ASK-63")
                .contains("from 15 degC to 30 degC");
        assertThat(Asking.problems("float", CAN + "water: {glycerine: 20 %, sugar: 3 %}\n"))
                .hasSize(1);
    }

    private static double density(String water) {
        Answer answer = Asking.answer("float", "outside: 1000 ml\nwhole_mass: 900 g\n" + water);
        return (Asking.number(answer, "net_lift") / 9.80665e-3 + 900) / 1000;
    }

    @Test
    void jugWater_isTakenAsGiven_andWaterAtItsEndsIsMovedOneWay() {
        Answer other = Asking.answer(
                "float",
                "gained: 372 g\nwhole_mass: 380 g\njug_water: {density: 1 g/ml}\nwater: {density: 1.02 g/ml}\n");
        assertThat(Asking.number(other, "net_lift")).isCloseTo((372 * 1.02 - 380) * 9.80665e-3, within(1e-9));
        assertThat(other.assumed()).noneMatch(each -> each.name().equals("jug_water"));
        Answer cold =
                Asking.answer("float", "outside: 372 ml\nwhole_mass: 380 g\nwater: {temperature: 0 degC ± 2 degC}\n");
        assertThat(cold.verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void shapeFactor_pastASquareBox_isRefused_andSaysWhatToMeasure() {
        String form = "diameter: 60 mm\nheight: 100 mm\nempty_mass: 10 g\nshape_factor: ";
        assertThat(Asking.problems("float", form + "3\n"))
                .containsExactly("ask.yaml:4:15 shape_factor is 3; must be at most 1.27 (4/π): nothing within that"
                        + " diameter and height holds more than a square box\n  Measure its volume: hold it just under"
                        + " in a jug on a scale and give gained: 372 g; or measure its width, depth and height and give"
                        + " box.   (P-ASK-65, docs/problems.md)");
        Answer square = Asking.answer("float", form + 4 / Math.PI + "\nwater: {density: 1 g/ml}\n");
        assertThat(Asking.number(square, "net_lift")).isCloseTo((360 - 10) * 9.80665e-3, within(1e-6));
        assertThat(Asking.problems("float", form + "90 %\n").getFirst())
                .contains("Write it as a part of one: try 0.9.");
        assertThat(Asking.problems("float", form + "0\n").getFirst()).contains("such as 0.9");
    }

    /// A crew's figure is kept where only its unit is wrong or missing.
    @Test
    void hints_keepTheFigureGiven() {
        assertThat(Asking.problems("float", "gained: 355 ml\nempty_mass: 14 g\n")
                        .getFirst())
                .contains("Try 355 g.");
        assertThat(Asking.problems("float", "outside: 355 g\nempty_mass: 14 g\n")
                        .getFirst())
                .contains("Try 355 ml.");
        assertThat(Asking.problems("line", "load: 343\ndiameter: 0.4 mm\n").getFirst())
                .contains("Add the unit: try 343 g.");
    }
}
