package plumeline.ask.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumeline.ask.Asking.answer;
import static plumeline.ask.Asking.number;
import static plumeline.ask.Asking.problems;
import static plumeline.ask.Asking.spread;

import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.tidy.Outside;

/// How `white-balance` is asked and what it says, against closed forms by the printed matrix of BT.709.
@Outside(
        source = "IEC 61966-2-1, XYZ to linear RGB; Planck's locus in steps of 1 nm by colour-science 0.4.6",
        place = "the matrix as W3C CSS Color 4 prints it, section 17",
        kind = "standard, other program",
        printedDigits = 5)
final class WhiteBalanceTest {
    private static double[] rgb(double x, double y) {
        double bigX = x / y;
        double z = (1 - x - y) / y;
        return new double[] {
            3.2409699 * bigX - 1.5373832 - 0.4986108 * z,
            -0.9692436 * bigX + 1.8759675 + 0.0415551 * z,
            0.0556301 * bigX - 0.2039770 + 1.0569715 * z
        };
    }

    private static double stops(double channel) {
        return Math.log(channel) / Math.log(2);
    }

    /// Tungsten of 3200 K (0.42336, 0.39895) at a balance of 5600 K (0.33020, 0.33908): each channel by the matrix,
    /// over that of the balance.
    @Test
    void tungsten_atDaylightBalance() {
        double[] light = rgb(0.42336, 0.39895);
        double[] white = rgb(0.33020, 0.33908);
        Answer answer = answer("white-balance", "light: 3200 K\nbalance: 5600 K\n");
        assertThat(number(answer, "red")).isCloseTo(stops(light[0] / white[0]), within(1e-3));
        assertThat(number(answer, "green")).isCloseTo(stops(light[1] / white[1]), within(1e-3));
        assertThat(number(answer, "blue")).isCloseTo(stops(light[2] / white[2]), within(3e-3));
        assertThat(number(answer, "stop_down")).isEqualTo(number(answer, "red"));
        assertThat(number(answer, "mired_shift")).isCloseTo(1e6 / 3200 - 1e6 / 5600, within(0.01));
        assertThat(number(answer, "kelvin")).isCloseTo(3200, within(0.1));
        assertThat(number(answer, "duv_change")).isCloseTo(0, within(1e-8));
        assertThat(answer.notes().because()).anyMatch(text -> text.contains("looks warmer by 134 mireds"));
        double r = light[0] / white[0];
        double g = light[1] / white[1];
        double b = light[2] / white[2];
        double x = 0.4123908 * r + 0.3575843 * g + 0.1804808 * b;
        double y = 0.2126390 * r + 0.7151687 * g + 0.0721923 * b;
        double z = 0.0193308 * r + 0.1191948 * g + 0.9505322 * b;
        assertThat(number(answer, "x")).isCloseTo(x / (x + y + z), within(5e-4));
        assertThat(number(answer, "y")).isCloseTo(y / (x + y + z), within(5e-4));
        double fy = Math.cbrt(0.18 * y);
        assertThat(number(answer, "a")).isCloseTo(500 * (Math.cbrt(0.18 * x * 0.3290 / 0.3127) - fy), within(0.1));
        assertThat(number(answer, "b")).isCloseTo(200 * (fy - Math.cbrt(0.18 * z * 0.3290 / 0.3583)), within(0.1));
    }

    /// The light of the balance is neutral, and no channel stands above the reading.
    @Test
    void ownLight_isNeutral() {
        Answer answer = answer("white-balance", "light: 4300 K\nbalance: 4300 K\n");
        assertThat(number(answer, "x")).isCloseTo(0.3127, within(1e-6));
        assertThat(number(answer, "difference")).isCloseTo(0, within(1e-9));
        assertThat(number(answer, "stop_down")).isCloseTo(0, within(1e-9));
        assertThat(answer.notes().attempts()).isEmpty();
        assertThat(answer.notes().because()).anyMatch(text -> text.contains("expose by the meter"));
    }

    /// A balance's kelvin and tint taken from what the answer says of a light makes it neutral.
    @Test
    void kelvinAndTint_makeItNeutral() {
        Answer green = answer("white-balance", "light: [0.38, 0.40]\nbalance: 5600 K\n");
        assertThat(number(green, "duv")).isPositive();
        assertThat(green.notes().because()).anyMatch(text -> text.contains("greenish light"));
        Answer set = answer(
                "white-balance",
                "light: [0.38, 0.40]\nbalance: " + number(green, "kelvin") + " K\ntint: " + number(green, "duv")
                        + "\n");
        assertThat(number(set, "difference")).isCloseTo(0, within(1e-3));
        assertThat(number(answer("white-balance", "light: [0.38, 0.40]\nbalance: [0.38, 0.40]\n"), "difference"))
                .isCloseTo(0, within(1e-9));
    }

    /// The red primary alone at the screen's white: 1/0.2126 of its share of luminance, 2.23 stops; beyond the
    /// primaries green falls below zero.
    @Test
    void red_isExposedFor() {
        Answer answer = answer("white-balance", "light: \"#ff0000\"\nbalance: [0.3127, 0.3290]\n");
        assertThat(number(answer, "red")).isCloseTo(stops(1 / 0.2126390), within(1e-4));
        assertThat(number(answer, "stop_down")).isCloseTo(2.2336, within(1e-3));
        assertThat(answer.notes().because()).anyMatch(text -> text.contains("expose for red"));
        Answer pure = answer("white-balance", "light: [0.70, 0.299]\nbalance: [0.3127, 0.3290]\n");
        assertThat(pure.getValue("green")).isEqualTo(new Value.Word("below zero"));
        assertThat(pure.getValue("kelvin")).isEqualTo(new Value.Word("unknown"));
        assertThat(pure.notes().because()).anyMatch(text -> text.startsWith("Below zero: green"));
        Answer wide = answer("white-balance", "light: [0.70, 0.299]\nbalance: [0.3127, 0.3290]\nprimaries: Rec.2020\n");
        assertThat(number(wide, "red")).isLessThan(number(pure, "red"));
        assertThat(number(wide, "green")).isNegative();
    }

    /// What stands higher than the headroom fails by what is to be stopped down.
    @Test
    void headroom_isACriterion() {
        String red = "light: \"#ff0000\"\nbalance: [0.3127, 0.3290]\n";
        assertThat(answer("white-balance", red + "headroom: 2.5 stops\n").verdict())
                .isEqualTo(Verdict.HOLDS);
        Answer fails = answer("white-balance", red + "headroom: 2 stops\n");
        assertThat(fails.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(number(fails, "stop_down")).isCloseTo(0.2336, within(1e-3));
        assertThat(fails.notes().attempts().getFirst())
                .isEqualTo("Stop down by 1/3 stops from the reading: no channel is then more than full.");
        assertThat(answer("white-balance", red + "headroom: 2.24 stops ± 0.1 stops\n")
                        .verdict())
                .isEqualTo(Verdict.TIGHT);
        assertThat(spread(answer("white-balance", "light: 3200 K ± 100 K\nbalance: 5600 K\n"), "mired_shift")
                        .low())
                .isLessThan(133.9);
    }

    @Test
    void whatCannotBe_isRefused() {
        check("light: 3200 K\nbalance: 1200 K\n", "a white that the primaries reach", "P-ASK-28");
        check("light: 3200 K\nbalance: [0.33, 0.34]\ntint: 0.01\n", "left out beside x and y", "P-ASK-29");
        check(
                "light: 3200 K\nprimaries: {red: [0.6, 0.3], green: [0.5, 0.3], blue: [0.4, 0.3]}\n",
                "red, green and blue that make a triangle",
                "P-ASK-28");
    }

    private static void check(String text, String said, String code) {
        assertThat(problems("white-balance", text))
                .as(text)
                .hasSize(1)
                .allSatisfy(problem -> assertThat(problem).contains(said).contains(code));
    }
}
