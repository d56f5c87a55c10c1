package plumeline.ask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

/// `float` and `hang` against published numbers and arithmetic done elsewhere.
final class FloatOutsideTest {
    private static double number(String name, String text, String answer) {
        return Asking.number(Asking.answer(name, text), answer);
    }

    @Test
    @Outside(
            source =
                    "table of the job's questions with typical answers, row Float: 343 g against about 355 ml floats by"
                            + " 12 g; 46 g of lead gives 30 g down",
            place = "row Float?",
            kind = "worked example",
            printedDigits = 2)
    void referenceCan_floatsByTwelveGrams() {
        String text = "outside: 355 ml\nwhole_mass: 343 g\nballast: {density: 11.34 g/ml}\n";
        assertThat(number("float", text, "net_lift") / 9.80665e-3).isCloseTo(12, within(0.7));
        double forThirty = (12 + 30) / (1 - 1 / 11.34);
        assertThat(forThirty).isCloseTo(46, within(0.5));
        double forTenPercent = number("float", text, "ballast_mass");
        assertThat(forTenPercent).isCloseTo(1.1 * 12 / (1 - 1 / 11.34), within(1.0));
    }

    @Test
    @Outside(
            source = "can makers' sheet 202/211 with the CRC Handbook's sugar table and aluminium",
            place = "sugar-free 4.5 gf up, 11 % sugar 10.9 gf down, opened and flooded 8.21 gf down, 8.23 ml of air",
            kind = "standard",
            printedDigits = 2)
    void can_sugarFreeFloats_sugaredSinks_floodedSinks() {
        String can = "outside: 372.8 ml\nempty_mass: 13 g\nwall: {density: 2.71 g/ml}\n";
        String free = can + "contents: {volume: 355 ml, density: 0.999 g/ml}\n";
        assertThat(number("float", free, "net_lift") / 9.80665e-3).isCloseTo(4.5, within(0.1));
        assertThat(number("float", free, "after_flooding") / 9.80665e-3).isCloseTo(-8.21, within(0.01));
        assertThat(Asking.answer("float", free).verdict()).isEqualTo(Verdict.FAILS);
        String sugared = can + "contents: {volume: 355 ml, density: 1.0423 g/ml}\n";
        assertThat(number("float", sugared, "net_lift") / 9.80665e-3).isCloseTo(-10.9, within(0.1));
        assertThat(Asking.answer("float", sugared).verdict()).isEqualTo(Verdict.HOLDS);
        String open = can + "closed: no\nair: 1 ml\n";
        assertThat(number("float", open, "most_air")).isCloseTo(8.23, within(0.02));
    }

    @Test
    @Outside(
            source = "can makers' sheet 202/211, CRC Handbook's sugar table, 39 g of sugar in 355 ml; TEOS-10 by"
                    + " python3-gsw (1024.641 at 35 g/kg and 20 degC)",
            place = "11 % sugar 10.9 gf down; sea water lifts 372.8 ml by 9.855 g more than fresh",
            kind = "standard",
            printedDigits = 3)
    void can_bySugar_andInSeaWater() {
        String can = "outside: 372.8 ml\nempty_mass: 13 g\nwall: {density: 2.71 g/ml}\n";
        String sugared = can + "contents: {volume: 355 ml, sugar: 11 %}\n";
        assertThat(number("float", sugared, "net_lift") / 9.80665e-3).isCloseTo(-10.9, within(0.15));
        String sea = sugared + "water: {sea_salt: 3.5 %}\n";
        double more = number("float", sea, "net_lift") - number("float", sugared, "net_lift");
        assertThat(more / 9.80665e-3).isCloseTo(372.8 * (1.024641 - 0.998207), within(0.005));
    }

    @Test
    @Outside(
            source = "CRC Handbook 102nd ed., ethanol 40 mass % 0.9352 g/ml at 20 degC; OIML R 22 table: 40 mass % is"
                    + " 47.4 % by volume (0.4·0.9352/0.7893)",
            place = "40 mass %",
            kind = "standard",
            printedDigits = 3)
    void spirit_byItsLabel() {
        String bottle = "outside: 900 ml\nempty_mass: 400 g\nwall: {material: glass}\nwater: {density: 1 g/ml}\n";
        double net = number("float", bottle + "contents: {volume: 700 ml, alcohol: 47.4 %}\n", "net_lift");
        assertThat(net / 9.80665e-3).isCloseTo(900 - 400 - 700 * 0.9352, within(0.3));
    }

    @Test
    @Outside(
            source = "IAPWS SR6-08 (997.047013 at 298.15 K), G12-15 (999.84229 at 273.15 K); R6-95 by python3-iapws at"
                    + " 20 degC 998.2072",
            place = "Tables 8 and 5",
            kind = "standard",
            printedDigits = 7)
    void water_hasItsDensity() {
        assertThat(FloatLiquid.ofWater(298.15)).isCloseTo(997.047013, within(0.001));
        assertThat(FloatLiquid.ofWater(273.15)).isCloseTo(999.84229, within(0.002));
        assertThat(FloatLiquid.ofWater(293.15)).isCloseTo(998.2072, within(0.001));
    }

    @Test
    @Outside(
            source = "lever rule by hand: M 600 g at 70 mm, 500 ml at 60 mm in water of 1.000 g/ml",
            place = "x = (600·70 − 500·60)/100 = 120 mm; 0.980665 N",
            kind = "closed form")
    void level_isByTheLever() {
        String body = "whole_mass: 600 g\noutside: 500 ml\ncentre_of_mass: 70 mm\ncentre_of_volume: 60 mm\n"
                + "water: {density: 1 g/ml}\nattitude: level\n";
        Answer two = Asking.answer("hang", body + "points: [100 mm, 150 mm]\n");
        assertThat(Asking.number(two, "single_point")).isCloseTo(120, within(1e-6));
        assertThat(Asking.number(two, "load")).isCloseTo(0.980665, within(1e-9));
        assertThat(Asking.number(two, "load_1")).isCloseTo(0.980665 * 30 / 50, within(1e-9));
        assertThat(Asking.number(two, "load_2")).isCloseTo(0.980665 * 20 / 50, within(1e-9));
        assertThat(Asking.number(two, "tilt")).isCloseTo(90, within(1e-9));
        assertThat(two.verdict()).isEqualTo(Verdict.HOLDS);
        Answer outside = Asking.answer("hang", body + "points: [130 mm, 150 mm]\n");
        assertThat(outside.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(Asking.number(outside, "load_2")).isCloseTo(-0.980665 * 10 / 20, within(1e-9));
        assertThat(Asking.number(outside, "tilt")).isCloseTo(0, within(1e-6));
        assertThat(outside.notes().attempts().getFirst()).isEqualTo("Tie it at 100 mm and 140 mm.");
        Answer one = Asking.answer("hang", body + "points: [120 mm]\n");
        assertThat(one.verdict()).isEqualTo(Verdict.TIGHT);
    }

    @Test
    @Outside(
            source = "pendulum: it hangs below its tie with the net weight's centre lowest",
            place = "",
            kind = "closed form")
    void oneLine_turnsTheNetCentreDown() {
        String body = "whole_mass: 600 g\noutside: 500 ml\ncentre_of_mass: 50 mm\ncentre_of_volume: 55 mm\n"
                + "water: {density: 1 g/ml}\n";
        Answer upright = Asking.answer("hang", body + "points: [100 mm]\n");
        assertThat(Asking.number(upright, "single_point")).isCloseTo(25, within(1e-4));
        assertThat(upright.verdict()).isEqualTo(Verdict.HOLDS);
        Answer low = Asking.answer("hang", body + "points: [10 mm]\n");
        assertThat(Asking.number(low, "tilt")).isCloseTo(180, within(1e-6));
        assertThat(low.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(low.notes().attempts().getFirst()).isEqualTo("Tie it at 35 mm.");
        Answer down = Asking.answer("hang", body + "points: [10 mm]\nattitude: upside down\n");
        assertThat(down.verdict()).isEqualTo(Verdict.HOLDS);
        Answer both = Asking.answer("hang", body + "points: [10 mm, 100 mm]\n");
        assertThat(Asking.number(both, "load_1")).isZero();
        assertThat(Asking.number(both, "load_2")).isCloseTo(0.980665, within(1e-9));
    }

    @Test
    @Outside(
            source = "moments about the tie, can of H 115 mm, r 32.6 mm, 110 mm of water inside: it floats",
            place = "net sink force -0.083 N, a line from above can't hold it",
            kind = "closed form",
            printedDigits = 2)
    void whatFloats_cantHang() {
        double skin = 0.013 / 2710 / (Math.PI * 0.0326 * 0.0326) * 1e3;
        String text = "profile: [[0 mm, 32.6 mm], [" + (115 + skin) + " mm, 32.6 mm]]\nempty_mass: 13 g\n"
                + "wall: {density: 2.71 g/ml}\ncontents: {volume: 367.27 ml, density: 0.998207 g/ml}\n"
                + "water: {density: 0.998207 g/ml}\npoints: [115 mm]\n";
        Answer answer = Asking.answer("hang", text);
        assertThat(Asking.number(answer, "load")).isCloseTo(-0.083, within(0.004));
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
        String centres = "whole_mass: 600 g\noutside: 500 ml\npoints: [100 mm]\n";
        assertThat(Asking.problems("hang", centres).getFirst())
                .contains("P-ASK-58")
                .contains("Balance it on a ruler");
        assertThat(Asking.problems("hang", centres + "centre_of_mass: 3 mm\n")).isNotEmpty();
        String same = centres + "centre_of_mass: 3 mm\ncentre_of_volume: 3 mm\n";
        assertThat(Asking.problems("hang", same.replace("[100 mm]", "[90 mm, 90 mm]"))
                        .getFirst())
                .contains("P-ASK-57");
    }
}
