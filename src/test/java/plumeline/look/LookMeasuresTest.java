package plumeline.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.stage.Gauge;

/// What wants on looks measure, against sums by hand.
final class LookMeasuresTest {
    private static String looks(String want) {
        return LookPlan.LOOKS.replace("WANT", want);
    }

    private static String standing(String text, String pass) {
        return LookPlan.measure(text, pass).standing(LookPlan.looks(text, pass));
    }

    /// The green emitter is 715.2 of 1000 lumens, so 715.2 of 1000 cd, against 800 cd: 0.162 stops less.
    @Test
    void matched_isTheRatioOfWhatFallsThere() {
        double stops = Math.log(715.2 / 800) / Math.log(2);
        assertThat(LookPlan.margin(looks("matched: [green, white]"))).isCloseTo(0.5 + stops, within(2e-3));
        assertThat(LookPlan.margin(looks("matched: [green, white], by: 1 stop")))
                .isCloseTo(0.5 - (1 - stops), within(2e-3));
        assertThat(LookPlan.margin(looks("matched: [green, white], by: -1 stop, within: 0.2 stops")))
                .isCloseTo(0.2 - (1 + stops), within(2e-3));
        assertThat(LookPlan.margin(looks("matched: [white, green], within: 10 %"), "white"))
                .isCloseTo(Math.log(1.1) / Math.log(2) + stops, within(2e-3));
        assertThat(standing(looks("matched: [green, white]"), "green"))
                .isEqualTo(
                        "hero's label gets 720 lx in green, 800 lx in white: green is 0.2 stops under white; as bright"
                                + " as each other wanted, within 0.5 stops.");
    }

    @Test
    void matched_asksForAsManyStops_inEitherLook() {
        String text = looks("matched: [green, white], by: 1 stop");
        double stops = Math.log(715.2 / 800) / Math.log(2);
        Gauge<Looks> measure = LookPlan.measure(text, "green");
        assertThat(measure.findChange(LookPlan.looks(text, "green"), "white").orElseThrow())
                .isCloseTo(stops - 1, within(2e-3));
        assertThat(measure.findChange(LookPlan.looks(text, "green"), "green").orElseThrow())
                .isCloseTo(1 - stops, within(2e-3));
        assertThat(measure.findChange(LookPlan.looks(text, "green"), "grey")).isEmpty();
    }

    /// One lamp in both looks: at the same hue it is off by as much in both, at two hues by other emitters, apart.
    @Test
    void matched_betweenTwoHuesOfTypicalEmitters_isTight() {
        String two = LookPlan.LOOKS
                .replace("light: tube", "light: typical")
                .replace("{lights.key.level: 0 %}", "{lights.key.level: 0 %, lights.wash.hue: 30 deg}")
                .replace("{lights.wash.level: 0 %}", "{lights.key.level: 0 %, lights.wash.hue: 150 deg}")
                .replace("WANT", "matched: [green, white], by: BY stops, within: 0.3 stops");
        double apart = 0.3 - LookPlan.margin(two.replace("BY", "0"));
        String by = Stream.of("", "-")
                .map(sign -> two.replace("BY", sign + String.format(Locale.ROOT, "%.3f", apart)))
                .max(Comparator.comparingDouble(LookPlan::margin))
                .orElseThrow();
        assertThat(LookPlan.margin(by)).isCloseTo(0.3, within(0.001));
        assertThat(LookPlan.measure(by, "green").findTight(LookPlan.looks(by, "green")))
                .isPresent();
        String alike = two.replace("150 deg", "30 deg").replace("BY", "0");
        assertThat(LookPlan.margin(alike)).isCloseTo(0.3, within(1e-9));
        assertThat(LookPlan.measure(alike, "green").findTight(LookPlan.looks(alike, "green")))
                .isEmpty();
        assertThat(apart).isGreaterThan(0.3);
    }

    /// What is given as measured without ± is sure; typical emitters are 30 % off, 80 % of takes within 0.65 of that.
    @Test
    void matched_byTypicalEmitters_isTight() {
        String sure = looks("matched: [green, white]");
        assertThat(LookPlan.measure(sure, "green").findTight(LookPlan.looks(sure, "green")))
                .isEmpty();
        String rough = sure.replace("light: tube", "light: typical").replace("within: 0.5", "within: 2 stops");
        assertThat(LookPlan.measure(rough, "green").findTight(LookPlan.looks(rough, "green")))
                .contains("What its lamps give isn't known so closely: meter both looks there, and write it measured.");
    }

    @Test
    void matched_withoutLight_lacksIt() {
        String text = looks("matched: [green, white]")
                .replace("lights.wash.level: 0 %}", "lights.wash.level: 0 %, lights.key.level: 0 %}");
        Gauge<Looks> measure = LookPlan.measure(text, "green");
        assertThat(measure.findLack(LookPlan.looks(text, "green"))).contains("No light comes to hero in white.");
    }

    /// The key's 5600 K on Planck's locus is at x 0.3302, y 0.3391; the tube is at its green.
    @Test
    void look_ofALight_isADistanceInUv() {
        assertThat(LookPlan.margin(looks("look: green, light: wash, colour: [0.30, 0.60], within: 0.01")))
                .isCloseTo(0.01, within(3e-4));
        // u'v' of 0.30, 0.60 and of 0.31, 0.59 by hand: 0.125, 0.5625 and 0.13107, 0.56131.
        assertThat(LookPlan.margin(looks("look: green, light: wash, colour: [0.31, 0.59], within: 0.01")))
                .isCloseTo(0.01 - Math.hypot(0.13107 - 0.125, 0.56131 - 0.5625), within(3e-4));
        assertThat(LookPlan.margin(looks("look: white, light: key, colour: 5600 K"), "white"))
                .isCloseTo(0.01, within(1e-9));
        assertThat(standing(looks("look: white, light: key, colour: 5600 K"), "white"))
                .startsWith("key shines in white at x 0.3302, y 0.3391, 0 from what is wanted");
        String off = looks("look: white, light: wash, colour: 5600 K");
        assertThat(LookPlan.measure(off, "white").findLack(LookPlan.looks(off, "white")))
                .contains("wash is off in white.");
    }

    /// In the light that the camera is balanced to the print is itself; in green only its green is left.
    @Test
    void look_uponAThing_isCiede2000() {
        assertThat(LookPlan.margin(looks("look: white, upon: hero, colour: \"#9d94c8\""), "white"))
                .isCloseTo(5, within(0.05));
        assertThat(LookPlan.margin(looks("look: green, upon: hero, colour: \"#009400\""), "green"))
                .isGreaterThan(2);
        assertThat(LookPlan.margin(looks("look: green, upon: hero, colour: \"#9d94c8\""), "green"))
                .isLessThan(-25);
        assertThat(standing(looks("look: green, upon: hero, colour: \"#9d94c8\""), "green"))
                .contains("hero shows in green about as #00")
                .contains("(green)")
                .endsWith("quite another colour.");
        assertThat(LookPlan.measure(looks("look: white, upon: hero, colour: 5600 K"), "white")
                        .findCaution(LookPlan.looks(looks("look: white, upon: hero, colour: 5600 K"), "white"))
                        .orElseThrow())
                .contains("no spectra are known")
                .contains("balanced to 5600 K");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "look: green, colour: 5600 K|Say whose colour: light: LAMP, or upon: THING.",
                "look: green, colour: 5600 K, light: key, upon: hero|Two colours are meant: write light or upon.",
                "look: green, light: wash|Say which colour: colour: \"#2a9d8f\", 5600 K, or [0.31, 0.33].",
                "look: green, light: wash, colour: \"#000000\"|Black is no colour of a light: level: 0 % is"
                        + " what makes it dark.",
                "look: green, light: wash, colour: [0.7, 0.6]|No light has the colour that is wanted: x and y come to 1"
                        + " at most."
            })
    void look_saysWhatToWrite(String want, String missing) {
        assertThat(LookPlan.missing(looks(want))).isEqualTo(missing);
    }

    @Test
    void whatIsntKnown_isSaid() {
        String upon = looks("look: green, upon: hero, colour: 5600 K");
        assertThat(LookPlan.missing(upon.replace(", colour: \"#9d94c8\"}}", "}}")))
                .isEqualTo("Not known: the colour of can. Write its colour under daylight, off its print file: colour:"
                        + " \"#b9a7d0\".");
        String plain = upon.replace("light: tube", "light: plain").replace(", hue: 136.016 deg", "");
        assertThat(LookPlan.measure(plain, "green").findUnknown(LookPlan.looks(plain, "green")))
                .contains("Not known: the colour of wash. Write plain's white: 5600 K.");
        String light = looks("look: green, light: wash, colour: 5600 K")
                .replace("light: tube", "light: plain")
                .replace(", hue: 136.016 deg", "");
        assertThat(LookPlan.measure(light, "green").findUnknown(LookPlan.looks(light, "green")))
                .contains("Not known: the colour of wash. Write plain's white: 5600 K, or its primaries.");
        String hued = looks("matched: [green, white]").replace("light: tube", "light: plain");
        assertThat(LookPlan.measure(hued, "green")
                        .findUnknown(LookPlan.looks(hued, "green"))
                        .orElseThrow())
                .contains("Write its primaries");
    }

    @Test
    void flashes_areCountedByTheCut() {
        String text = looks("flash_safe: [green, white]");
        assertThat(LookPlan.margin(text)).isEqualTo(2);
        assertThat(LookPlan.margin(text.replace("each: 6", "each: 3"))).isEqualTo(-1);
        assertThat(LookPlan.measure(text, "green").isSafety()).isTrue();
        assertThat(LookPlan.missing(text.replace("alternate: [green, white], each: 6 frames", "pass: green")))
                .startsWith("Not known: how long each look is on.");
        assertThat(LookPlan.missing(looks("flash_safe: cuts").replaceAll("(?s)\ncut:.*", "\n")))
                .isEqualTo("Not known: what is cut. Write the film's cut.");
    }

    /// 800 lx want 1750 lx at f/4, 1/48 s, ISO 800 and no close-up loss, 250·16·48/800 = 240 lx with C 250: full.
    @Test
    void flashes_tellHowBrightWhitePaperShows_andAcquitOfNothing() {
        String text = looks("flash_safe: [green, white]").replace("f_number: 4", "f_number: 22");
        String caution = LookPlan.measure(text, "green")
                .findCaution(LookPlan.looks(text, "green"))
                .orElseThrow();
        assertThat(caution)
                .startsWith("White paper at hero shows at ")
                .contains("by luminance no flash there, if the rest of the picture is alike too.")
                .contains("no permission");
        String dark = text.replace("hue: 136.016 deg", "hue: 136.016 deg, level: 10 %")
                .replace("f_number: 22", "f_number: 11");
        assertThat(LookPlan.measure(dark, "green")
                        .findCaution(LookPlan.looks(dark, "green"))
                        .orElseThrow())
                .contains("each change is half a flash there.");
    }

    @Test
    void flashes_ofASaturatedRed_areWorse() {
        String red = looks("flash_safe: [green, white]").replace("136.016", "39.999");
        assertThat(LookPlan.measure(red, "green")
                        .findCaution(LookPlan.looks(red, "green"))
                        .orElseThrow())
                .startsWith("A look is a saturated red against the other");
        String blue = looks("flash_safe: [green, white]");
        assertThat(LookPlan.measure(blue, "green")
                        .findCaution(LookPlan.looks(blue, "green"))
                        .orElseThrow())
                .doesNotContain("red");
    }

    @Test
    void steadyLight_withoutAPulse_isTakenForSteady() {
        String text =
                LookPlan.STEADY.replace(", PULSE", "").replace("RATE", "24 fps").replace("SHUTTER", "180 deg");
        assertThat(LookPlan.margin(text)).isEqualTo(3);
        assertThat(standing(text, "")).contains("No pulse_rate is written of bulb: it counts as steady.");
        assertThat(LookPlan.measure(text, "").findTight(LookPlan.looks(text, "")))
                .isEmpty();
    }

    private static String steady(String pulse, String rate, String shutter) {
        return LookPlan.STEADY.replace("PULSE", pulse).replace("RATE", rate).replace("SHUTTER", shutter);
    }

    /// In step with 50 fps, so that frames are alike; the mode's 5 ms show half a bar of what an exposure of a quarter
    /// pulse leaves.
    @Test
    void steadyLight_countsBarsWhereTheReadoutIsWritten() {
        String text = steady("pulse_rate: 100 Hz, depth: 100 %", "50 fps", "45 deg");
        double left = Math.sin(Math.PI * 0.25) / (Math.PI * 0.25);
        assertThat(LookPlan.margin(text)).isCloseTo(3 - 100 * left, within(1e-6));
        assertThat(standing(text, ""))
                .contains("frames are alike")
                .contains("bars that stand, 0.5 on the picture's height");
        assertThat(LookPlan.margin(steady("pulse_rate: 100 Hz, depth: 100 %", "25 fps", "45 deg")))
                .isEqualTo(3);
    }

    @Test
    void steadyLight_isTight_overOnePercent_andWithinItsSpread() {
        String some = steady("pulse_rate: 100 Hz, depth: 30 %", "24 fps", "180 deg");
        assertThat(LookPlan.measure(some, "")
                        .findTight(LookPlan.looks(some, ""))
                        .orElseThrow())
                .startsWith("Over 1 %");
        String drifting = steady("pulse_rate: 100 Hz ± 5 Hz, depth: 100 %", "24 fps", "172.8 deg");
        assertThat(LookPlan.margin(drifting)).isCloseTo(3, within(0.01));
        assertThat(LookPlan.measure(drifting, "")
                        .findTight(LookPlan.looks(drifting, ""))
                        .orElseThrow())
                .startsWith("Within its ± the pulse may leave");
    }

    @Test
    void steadyLight_dimmed_saysWhatADimmerMayLeave() {
        String dimmed = steady("pulse_rate: 100 Hz, depth: 30 %", "24 fps", "180 deg")
                .replace("61 mm]}", "61 mm], level: 40 %}");
        assertThat(LookPlan.measure(dimmed, "")
                        .findCaution(LookPlan.looks(dimmed, ""))
                        .orElseThrow())
                .startsWith("It is dimmed to 40 %: a dimmer that switches leaves up to");
        String off = dimmed.replace("level: 40 %", "level: 0 %");
        assertThat(LookPlan.margin(off)).isEqualTo(3);
        assertThat(standing(off, "")).isEqualTo("key is off.");
    }

    @Test
    void steadyLight_listsCleanerSettings() {
        SteadyLight steady = (SteadyLight) LookPlan.measure(steady("pulse_rate: 100 Hz", "24 fps", "180 deg"), "");
        assertThat(steady.listCleaner())
                .containsExactly(
                        new SteadyLight.Cleaner("shutter", "172.8 deg", "2 whole pulses an exposure"),
                        new SteadyLight.Cleaner("rate", "25 fps", "frames are then alike"),
                        new SteadyLight.Cleaner("rate", "50 fps", "frames are then alike"));
    }

    @Test
    void comparisons_areJudgedOnce_inTheFirstLook() {
        var plan = LookPlan.plan(looks("matched: [white, green]"));
        var line = plan.shots().getFirst().wants().getFirst();
        assertThat(LookMeasures.isJudgedIn(line, "white", false)).isTrue();
        assertThat(LookMeasures.isJudgedIn(line, "green", true)).isFalse();
        var cuts = LookPlan.plan(looks("flash_safe: cuts"))
                .shots()
                .getFirst()
                .wants()
                .getFirst();
        assertThat(LookMeasures.isJudgedIn(cuts, "green", true)).isTrue();
        assertThat(LookMeasures.isJudgedIn(cuts, "white", false)).isFalse();
    }
}
