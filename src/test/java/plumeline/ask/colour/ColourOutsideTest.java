package plumeline.ask.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumeline.ask.Asking.answer;
import static plumeline.ask.Asking.number;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.answer.Answer;
import plumeline.answer.Value;
import plumeline.tidy.Outside;

/// The questions on colour against closed forms and figures of other programs.
@Outside(
        source = "Grassmann's sums; colorjs.io 0.7.1; colour-science 0.4.6; glossaries; each test names its own",
        kind = "closed form, other program")
final class ColourOutsideTest {
    /// Emitters of 625, 525 and 465 nm on the CIE 1931 spectrum (colour-science 0.4.6).
    private static final String LASERS = """
            emitters:
            - {name: red, x: 0.70061, y: 0.29930, lumens: 300 lm}
            - {name: green, x: 0.11416, y: 0.82621, lumens: 500 lm}
            - {name: blue, x: 0.13550, y: 0.03988, lumens: 80 lm}
            """;

    /// Shares by the three by three sum (grade F: closed form): 0.31290, 0.64218 and 0.04492 of the light for 5600 K,
    /// so that green sets the output, 500/0.64218 lm.
    @Test
    void white_ofThreeEmitters() {
        Answer answer = answer("colour", LASERS + "colour: 5600 K\nwant: white\nagainst: 3200 K\n");
        double lumens = 500 / 0.64218;
        assertThat(number(answer, "lumens")).isCloseTo(lumens, within(0.5));
        assertThat(number(answer, "drive_green")).isEqualTo(100);
        assertThat(number(answer, "drive_red")).isCloseTo(100 * 0.31290 * lumens / 300, within(0.1));
        assertThat(number(answer, "drive_blue")).isCloseTo(100 * 0.04492 * lumens / 80, within(0.1));
        assertThat(number(answer, "x")).isCloseTo(0.33020, within(1e-4));
        assertThat(number(answer, "y")).isCloseTo(0.33908, within(1e-4));
        assertThat(number(answer, "kelvin")).isCloseTo(5600, within(0.01));
        assertThat(number(answer, "duv")).isCloseTo(0, within(1e-9));
        assertThat(number(answer, "distance_uv")).isZero();
        assertThat(number(answer, "mired_shift")).isCloseTo(1e6 / 5600 - 1e6 / 3200, within(1e-5));
    }

    /// The complement of the CIELAB values that colorjs.io 0.7.1 gives of #336699 (42.0092, −0.1459, −32.8451), taken
    /// back by the standard's formulas here: fx = fy − 0.1459/500 ….
    @Test
    void complement_ofABlue() {
        double fy = (42.0092 + 16) / 116;
        double x = 0.3127 / 0.3290 * Math.pow(fy + 0.1459 / 500, 3);
        double y = Math.pow(fy, 3);
        double fz = fy - 32.8451 / 200;
        double z = (1 - 0.3127 - 0.3290) / 0.3290 * Math.pow(fz, 3);
        Answer answer = answer("colour", LASERS + "colour: \"#336699\"\nwant: complement\n");
        assertThat(number(answer, "x")).isCloseTo(x / (x + y + z), within(1e-5));
        assertThat(number(answer, "y")).isCloseTo(y / (x + y + z), within(1e-5));
    }

    /// Across D65 in the CIE 1931 diagram: the complementary wavelength of 470 nm is 572.2 nm by colour-science 0.4.6
    /// (grade D); a green of 525 nm has none.
    @Test
    void complement_byWavelength() {
        Answer blue = answer("colour", LASERS + "colour: [0.1241, 0.0578]\nwant: complement\nby: wavelength\n");
        assertThat(number(blue, "dominant_wavelength")).isCloseTo(470, within(0.1));
        assertThat(number(blue, "complementary_wavelength")).isCloseTo(572.2, within(0.3));
        Answer green = answer("colour", LASERS + "colour: [0.2, 0.7]\nwant: complement\nby: wavelength\n");
        assertThat(green.getValue("complementary_wavelength")).isEqualTo(new Value.Word("none"));
        assertThat(green.notes().because()).anyMatch(text -> text.contains("a purple"));
    }

    /// Hue + 180 deg in HSL (closed form): #336699 to #996633, whose xy by the standard's matrix is here; in CIE
    /// LCh(uv) across white in u'v'.
    @Test
    void complement_onScreenAndInLuv() {
        double r = Math.pow((0.6 + 0.055) / 1.055, 2.4);
        double g = Math.pow((0.4 + 0.055) / 1.055, 2.4);
        double b = Math.pow((0.2 + 0.055) / 1.055, 2.4);
        double x = 0.4123908 * r + 0.3575843 * g + 0.1804808 * b;
        double y = 0.2126390 * r + 0.7151687 * g + 0.0721923 * b;
        double z = 0.0193308 * r + 0.1191948 * g + 0.9505322 * b;
        Answer screen = answer("colour", LASERS + "colour: \"#336699\"\nwant: complement\nby: rgb\n");
        assertThat(number(screen, "x")).isCloseTo(x / (x + y + z), within(1e-6));
        assertThat(number(screen, "y")).isCloseTo(y / (x + y + z), within(1e-6));
        double[] white = uv(0.3127, 0.3290);
        double[] here = uv(0.26, 0.35);
        Answer luv = answer("colour", LASERS + "colour: [0.26, 0.35]\nwant: complement\nby: luv\n");
        double[] there = uv(number(luv, "x"), number(luv, "y"));
        assertThat(there[0]).isCloseTo(2 * white[0] - here[0], within(1e-7));
        assertThat(there[1]).isCloseTo(2 * white[1] - here[1], within(1e-7));
    }

    /// Emitters by their peaks, 5 nm wide, mix as those of the same wavelengths on the spectrum do, to a per cent.
    @Test
    void peaks_mixAsTheirColours() {
        String peaks = """
                emitters:
                - {name: red, peak: 625 nm, width: 5 nm, lumens: 300 lm}
                - {name: green, peak: 525 nm, width: 5 nm, lumens: 500 lm}
                - {name: blue, peak: 465 nm, width: 5 nm, lumens: 80 lm}
                colour: 5600 K
                """;
        Answer answer = answer("colour", peaks);
        assertThat(number(answer, "lumens")).isCloseTo(500 / 0.64218, within(5.0));
        assertThat(number(answer, "drive_green")).isEqualTo(100);
    }

    /// Out of reach (grade F: this colour has a negative share of red): the nearest lies on the line from green to
    /// blue, as far off as the foot of the plumb line in u'v'.
    @Test
    void outOfReach_theNearest() {
        double[] p = uv(0.05, 0.50);
        double[] g = uv(0.11416, 0.82621);
        double[] b = uv(0.13550, 0.03988);
        double along = ((p[0] - b[0]) * (g[0] - b[0]) + (p[1] - b[1]) * (g[1] - b[1]))
                / (Math.pow(g[0] - b[0], 2) + Math.pow(g[1] - b[1], 2));
        double off = Math.hypot(p[0] - b[0] - along * (g[0] - b[0]), p[1] - b[1] - along * (g[1] - b[1]));
        Answer answer = answer("colour", LASERS + "colour: [0.05, 0.50]\n");
        assertThat(number(answer, "distance_uv")).isCloseTo(off, within(1e-7));
        assertThat(number(answer, "drive_red")).isZero();
        assertThat(answer.verdict().word()).isEqualTo("fails");
    }

    private static double[] uv(double x, double y) {
        return new double[] {4 * x / (3 + 12 * y - 2 * x), 9 * y / (3 + 12 * y - 2 * x)};
    }

    /// Mired shifts as reference works print them (grade P), whole ones.
    @ParameterizedTest
    @CsvSource({"4000, 3000, 83", "7000, 6000, 24", "6500, 3200, 159", "3200, 5500, -131", "3400, 5500, -112"})
    void gel_byReferenceWorks(String from, String to, double mireds) {
        Answer answer = answer("gel", "from: " + from + " K\nto: " + to + " K\n");
        assertThat(number(answer, "mired_shift")).isCloseTo(mireds, within(0.6));
        assertThat(number(answer, "duv_change")).isZero();
    }

    /// D65 by colour-science 0.4.6 (Ohno's method): 6504.3 K and Duv 0.00321.
    @Test
    void gel_toDaylight() {
        Answer answer = answer("gel", "from: 3200 K\nto: [0.3127, 0.3290]\n");
        assertThat(number(answer, "mired_shift")).isCloseTo(1e6 / 6504.3 - 1e6 / 3200, within(0.05));
        assertThat(number(answer, "duv_change")).isCloseTo(0.00321, within(5e-5));
    }
}
