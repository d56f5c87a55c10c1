package plumeline.ask.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumeline.ask.Asking.answer;
import static plumeline.ask.Asking.number;
import static plumeline.ask.Asking.problems;
import static plumeline.ask.Asking.spread;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.tidy.Outside;

/// How `label` is asked and what it says, against closed forms.
@Outside(
        source =
                "closed forms: surfaces and lights of which the product can be seen; CIE 15:2004, definition of CIELAB",
        kind = "closed form")
final class LabelTest {
    private static final String RED = "light: {emitters: [{name: red, peak: 625 nm, width: 5 nm, lumens: 300 lm}]}\n";
    private static final String STEP =
            "label: {reflectance: [[400 nm, 10 %], [560 nm, 10 %], [561 nm, 60 %], [700 nm, 60 %]]}\n";

    /// A surface that throws back 60 % of all that a narrow red light has: its colour is the light's, its luminance 60
    /// %.
    @Test
    void reflectance_underANarrowLight_isExact() {
        Answer answer = answer("label", STEP + RED);
        assertThat(number(answer, "luminance")).isCloseTo(60, within(1e-6));
        assertThat(number(answer, "x")).isCloseTo(0.7006, within(1e-3));
        assertThat(number(answer, "y")).isCloseTo(0.2993, within(1e-3));
        assertThat(number(answer, "l")).isCloseTo(116 * Math.cbrt(0.6) - 16, within(1e-6));
        assertThat(answer.getValue("l")).isInstanceOf(Value.Number.class);
        assertThat(answer.verdict()).isEqualTo(Verdict.HOLDS);
    }

    /// By the light's own white a grey surface is grey, whatever the light.
    @Test
    void grey_byTheLightsWhite_isGrey() {
        Answer answer = answer("label", "label: {reflectance: [[400 nm, 18 %], [700 nm, 18 %]]}\nwhite: light\n" + RED);
        assertThat(number(answer, "a")).isCloseTo(0, within(1e-6));
        assertThat(number(answer, "b")).isCloseTo(0, within(1e-6));
        assertThat(number(answer, "l")).isCloseTo(116 * Math.cbrt(0.18) - 16, within(1e-6));
    }

    /// Under daylight of its own white a label is as it was written: as a screen's colour, or as a print's by D50.
    @Test
    void label_underItsOwnDaylight_isUnchanged() {
        Answer screen = answer("label", "label: \"#336699\"\nlight: {daylight: 6504 K}\n");
        assertThat(number(screen, "l")).isCloseTo(42.0092, within(0.01));
        assertThat(number(screen, "a")).isCloseTo(-0.1459, within(0.05));
        assertThat(number(screen, "b")).isCloseTo(-32.8451, within(0.05));
        assertThat(number(screen, "difference")).isCloseTo(0, within(0.05));
        Answer print =
                answer("label", "label: {lab: [50, 30, -20]}\nlight: {daylight: 5003 K}\nwhite: [0.3457, 0.3585]\n");
        assertThat(number(print, "l")).isCloseTo(50, within(0.01));
        assertThat(number(print, "a")).isCloseTo(30, within(0.05));
        assertThat(number(print, "b")).isCloseTo(-20, within(0.05));
        assertThat(width(print, "a")).isLessThan(0.02);
        assertThat(print.assumed().stream().map(Answer.Assumed::name)).containsExactly("label.under");
    }

    /// The less is known, the wider: both spectra, the light's, its colour only; the interval says so and a caution
    /// warns.
    @Test
    void lessKnown_isWider() {
        String mix = """
                light:
                  emitters:
                  - {name: red, peak: 625 nm, width: 20 nm, lumens: 300 lm}
                  - {name: green, peak: 525 nm, width: 32 nm, lumens: 300 lm}
                """;
        Answer known = answer("label", STEP + mix);
        Answer colour = answer("label", "label: \"#2a9d8f\"\n" + mix);
        Answer xy = answer("label", "label: \"#2a9d8f\"\nlight: [0.45, 0.50]\n");
        Answer broad = answer("label", "label: \"#2a9d8f\"\nlight: 3200 K\n");
        assertThat(known.getValue("a")).isInstanceOf(Value.Number.class);
        assertThat(width(broad, "a")).isBetween(0.5, width(colour, "a") / 2);
        assertThat(width(xy, "a")).isGreaterThan(1.5 * width(colour, "a"));
        Value.Spread l = spread(colour, "l");
        assertThat(l.high() - l.value()).isPositive().isLessThan(l.value() - l.low());
        assertThat(colour.notes().because()).anyMatch(text -> text.contains("fourteen measured paints"));
        assertThat(known.notes().because()).noneMatch(text -> text.contains("fourteen measured paints"));
        assertThat(spread(colour, "luminance").low()).isPositive().isLessThan(number(colour, "luminance"));
        assertThat(xy.notes().cautions()).anyMatch(text -> text.contains("Lights of one colour"));
        assertThat(colour.notes().cautions()).noneMatch(text -> text.contains("Lights of one colour"));
        assertThat(xy.notes().because()).anyMatch(text -> text.contains("smoothest spectrum of that colour"));
        assertThat(answer("label", STEP + "light: [0.45, 0.50]\n").getValue("a"))
                .isInstanceOf(Value.Spread.class);
    }

    private static double width(Answer answer, String name) {
        return spread(answer, name).high() - spread(answer, name).low();
    }

    /// An input's own ± adds to what isn't known, as a root sum of squares.
    @Test
    void spread_adds() {
        Answer exact = answer("label", "label: {lab: [50, 0, 0], under: D65}\nlight: 3200 K\n");
        Answer wide = answer("label", "label: {lab: [50 ± 5, 0, 0], under: D65}\nlight: 3200 K\n");
        assertThat(width(wide, "l")).isGreaterThan(width(exact, "l") + 5);
        assertThat(width(wide, "l")).isLessThan(10);
    }

    /// White, black and a light's own colour have no doubt to speak of: a white part has the light's colour, and a
    /// black one gives nothing back.
    @Test
    void whiteAndBlack_areSure() {
        Answer white = answer("label", "label: \"#ffffff\"\nlight: [0.45, 0.50]\n");
        assertThat(number(white, "x")).isCloseTo(0.45, within(1e-3));
        assertThat(width(white, "x")).isLessThan(0.002);
        Answer black = answer("label", "label: \"#000000\"\nlight: [0.45, 0.50]\n");
        assertThat(number(black, "luminance")).isCloseTo(0, within(0.01));
        assertThat(width(black, "a")).isLessThan(0.1);
        Answer dark = answer("label", "label: \"#10080c\"\nlight: [0.45, 0.50]\n");
        assertThat(spread(dark, "luminance").low()).isNotNegative();
        assertThat(spread(dark, "difference").low()).isNotNegative();
        assertThat(spread(dark, "x").low()).isPositive();
    }

    /// Emitters mixed to a colour give it, and an emitter of which only the colour is known makes the whole such.
    @Test
    void mixedTo_andColoursOnly() {
        String label = "label: {reflectance: [[400 nm, 50 %], [700 nm, 50 %]]}\n";
        Answer mixed = answer("label", label + """
                light:
                  mixed_to: [0.40, 0.39]
                  emitters:
                  - {peak: 625 nm, lumens: 300 lm}
                  - {peak: 525 nm, lumens: 600 lm}
                  - {peak: 460 nm, lumens: 90 lm}
                """);
        assertThat(number(mixed, "x")).isCloseTo(0.40, within(1e-6));
        assertThat(number(mixed, "y")).isCloseTo(0.39, within(1e-6));
        Answer colours = answer("label", STEP + """
                light:
                  emitters:
                  - {peak: 625 nm, lumens: 300 lm}
                  - {x: 0.17, y: 0.70, lumens: 600 lm}
                """);
        assertThat(colours.getValue("x")).isInstanceOf(Value.Spread.class);
    }

    @Test
    void whatCannotBe_isRefused() {
        String light = "light: 5600 K\n";
        check("label: {lab: [95, -90, 90]}\n" + light, "a colour that a surface can have", "P-ASK-98");
        check("label: \"#2a9d8f\"\nlight: [0.05, 0.2]\n", "a colour that light can have", "P-ASK-97");
        check(
                "label: {reflectance: [[450 nm, 10 %], [700 nm, 20 %]]}\n" + light,
                "450 nm to 700 nm; must be a table from 420 nm or less to 680 nm or more",
                "P-ASK-27");
        check(
                "label: \"#2a9d8f\"\nlight: {spectrum: [[800 nm, 1], [900 nm, 1]]}\n",
                "nothing from 380 nm to 780 nm",
                "P-ASK-99");
        check(
                "label: \"#2a9d8f\"\nlight: {emitters: [{peak: 625 nm, lumens: 1 lm, drive: 0 %}]}\n",
                "every drive at 0", "P-ASK-99");
        check(
                "label: \"#2a9d8f\"\nlight: {emitters: [{peak: 625 nm, lumens: 1 lm, drive: 9 %}], mixed_to: 5600 K}\n",
                "left out beside mixed_to", "P-ASK-29");
        check("label: \"#2a9d8f\"\nlight: \"#000000\"\n", "black", "P-ASK-92");
        assertThat(problems(
                        "label", "label: {lab: [58, -33, -2], reflectance: [[400 nm, 1 %], [700 nm, 1 %]]}\n" + light))
                .isNotEmpty();
    }

    private static void check(String text, String said, String code) {
        List<String> problems = problems("label", text);
        assertThat(problems).as(text).hasSize(1);
        assertThat(problems.getFirst()).contains(said).contains(code);
    }
}
