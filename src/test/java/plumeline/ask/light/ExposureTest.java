package plumeline.ask.light;

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

/// The question `exposure`.
final class ExposureTest {
    /// ISO 800, 240 fps, 180 deg, close focus 0.32 stop: f/8 needs about 12,000 lx, f/5.6 5,900, f/4 3,000 (a crew's
    /// sheet).
    @Test
    void slowMotion_needsWhatCrewsSay() {
        String rest = "iso: 800\nrate: 240 fps\nmagnification: 0.116\nlight: {lux: 4000 lx, at: 1 m}\ndistance: 1 m\n";
        assertThat(number(answer("exposure", rest + "f_number: 8"), "needed")).isCloseTo(12000, within(200.0));
        assertThat(number(answer("exposure", rest + "f_number: 5.6"), "needed")).isCloseTo(5900, within(100.0));
        assertThat(number(answer("exposure", rest + "f_number: 4"), "needed")).isCloseTo(3000, within(50.0));
    }

    /// f/4, 1/50 s, ISO 800 with C 330 needs 330 lx (worked example); a 250 cd lamp gives 6.94 lx at 6 m (a physics
    /// text's example).
    @Test
    void workedExamples() {
        Answer answer = answer(
                "exposure",
                "light: {candela: 250 cd}\ndistance: 6 m\niso: 800\nf_number: 4\nrate: 25 fps\nconstant: 330");
        assertThat(number(answer, "needed")).isCloseTo(330, within(1e-6));
        assertThat(number(answer, "illuminance")).isCloseTo(6.944, within(5e-4));
        assertThat(number(answer, "margin")).isCloseTo(Math.log(6.9444 / 330) / Math.log(2), within(1e-4));
        assertThat(number(answer, "distance_for_exact")).isCloseTo(1000 * Math.sqrt(250.0 / 330), within(1e-3));
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
    }

    /// A panel of 0.6 by 0.9 m and 5000 cd/m² gives 2265.24 lx 1 m before its middle (four corner factors); turned by
    /// 60 deg half as much, as long as all of it is over the patch; nearly edge on far more than a point would.
    @Test
    void panel_isExactNearby() {
        double lumens = 5000 * Math.PI * 0.54;
        String rest = "light: {panel: [600 mm, 900 mm], lumens: " + lumens
                + " lm}\ndistance: 1 m\niso: 800\nt_number: 4\nrate: 25 fps\n";
        Answer facing = answer("exposure", rest);
        assertThat(number(facing, "illuminance")).isCloseTo(2265.24, within(0.02));
        Answer turned = answer("exposure", rest + "incidence: 60 deg");
        assertThat(number(turned, "illuminance")).isCloseTo(0.5 * 2265.24, within(0.02));
        Answer edgeOn = answer("exposure", rest + "incidence: 88 deg");
        assertThat(number(edgeOn, "illuminance")).isBetween(2 * 2265.24 * Math.cos(Math.toRadians(88)), 0.2 * 2265.24);
        double exact = number(facing, "distance_for_exact");
        Answer there = answer("exposure", rest.replace("distance: 1 m", "distance: " + exact + " mm"));
        assertThat(number(there, "margin")).isCloseTo(0, within(1e-6));
    }

    @Test
    void intervals_haveNoLightBelowNothing() {
        Answer answer = answer(
                "exposure",
                "light: {candela: 900 cd}\ndistance: 1 m\nincidence: 89 deg ± 5 deg\niso: 800\nf_number: 4\n"
                        + "rate: 25 fps");
        assertThat(spread(answer, "illuminance").low()).isZero();
        assertThat(answer.toJson()).doesNotContain("Infinity").doesNotContain("NaN");
    }

    /// Short by 0.06 stop: the verdict fails, and the sentences don't call it right.
    @Test
    void aLittleTooLittle_isSaid() {
        Answer answer =
                answer("exposure", "light: {candela: 240 cd}\ndistance: 1 m\niso: 800\nf_number: 4\nrate: 25 fps");
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(answer.notes().because()).noneMatch(text -> text.contains("just right"));
        assertThat(answer.notes().attempts()).anyMatch(text -> text.startsWith("Set the light 980 mm"));
    }

    @Test
    void tooLittleAtAnyDistance_isSaid_andWhatCannotBeIsRefused() {
        Answer dim = answer(
                "exposure",
                "light: {panel: [300 mm, 300 mm], lumens: 10 lm}\ndistance: 1 m\niso: 100\nf_number: 22\n"
                        + "rate: 100 fps");
        assertThat(dim.getValue("distance_for_exact")).isEqualTo(new Value.Word("none"));
        assertThat(problems(
                        "exposure",
                        "light: {candela: 250 cd}\ndistance: 6 m\niso: 800\nf_number: 4\nrate: 25 fps\n"
                                + "shutter: 1/10 s"))
                .hasSize(1);
        assertThat(problems(
                        "exposure",
                        "light: {candela: 250 cd, lux: 4 lx}\ndistance: 6 m\niso: 800\nf_number: 4\nrate: 25 fps"))
                .isNotEmpty();
    }

    private static final String SHORT =
            "light: {candela: 1000 cd}\ndistance: 1 m\niso: 400\nf_number: 8\nrate: 25 fps\nshutter: 90 deg";

    /// N²/t = E S / C by hand: at 1/100 s and ISO 400 f/8 needs 250·64·100/400 = 4000 lx, of which 1000 come: 2 stops
    /// short. Two stops are f/4, ISO 1600, 360 deg.
    @Test
    void exact_isInThirds_andHoldsOnceSet() {
        Answer answer = answer("exposure", SHORT);
        assertThat(number(answer, "margin")).isCloseTo(-2, within(1e-9));
        assertThat(number(answer, "f_number_for_exact")).isEqualTo(4);
        assertThat(number(answer, "iso_for_exact")).isEqualTo(1600);
        assertThat(number(answer, "shutter_for_exact")).isCloseTo(360, within(1e-9));
        for (String set : new String[] {"f_number: 8>f_number: 4", "iso: 400>iso: 1600", "90 deg>360 deg"}) {
            String[] change = set.split(">");
            Answer there = answer("exposure", SHORT.replace(change[0], change[1]));
            assertThat(there.verdict()).isEqualTo(Verdict.HOLDS);
            assertThat(number(there, "margin")).isBetween(-1e-9, 1.0 / 3);
        }
        assertThat(answer.notes().attempts())
                .contains("Set the shutter to 360 deg: what moves smears more; ask fall.")
                .anyMatch(text -> text.startsWith("Set f/4 instead of f/8"));
    }

    /// In between, the next third that gives enough; none where a frame is too short.
    @Test
    void exact_isNeverTooLittle() {
        for (int candela = 100; candela <= 20_000; candela += 731) {
            String text = SHORT.replace("1000 cd", candela + " cd");
            Answer answer = answer("exposure", text);
            String iso = "iso: " + (int) number(answer, "iso_for_exact");
            assertThat(number(answer("exposure", text.replace("iso: 400", iso)), "margin"))
                    .isBetween(-1e-9, 0.36);
            String stop = "f_number: " + number(answer, "f_number_for_exact");
            assertThat(number(answer("exposure", text.replace("f_number: 8", stop)), "margin"))
                    .isBetween(-1e-9, 0.46);
        }
        Answer dark = answer("exposure", SHORT.replace("1000 cd", "500 cd"));
        assertThat(dark.getValue("shutter_for_exact")).isEqualTo(new Value.Word("none"));
        Answer timed = answer("exposure", SHORT.replace("90 deg", "1/200 s").replace("1000 cd", "4000 cd"));
        assertThat(number(timed, "shutter_for_exact")).isCloseTo(0.01, within(1e-9));
    }

    /// Mid grey is pi K/C: 15.7 % with K 12.5 and C 250 (a general encyclopedia's page on light meters). White paper of
    /// 80 % lies log2(80/15.7) = 2.35 stops above it, less the 2 stops that the light is short.
    @Test
    void reflectance_saysWhereItLands() {
        Answer grey = answer("exposure", SHORT + "\nreflectance: 15.7 %");
        assertThat(number(grey, "lands")).isCloseTo(-2, within(0.005));
        Answer paper = answer("exposure", SHORT + "\nreflectance: 80 %\nlatitude: {over: 4 stops, under: 6 stops}");
        assertThat(number(paper, "lands")).isCloseTo(0.349, within(0.001));
        assertThat(number(paper, "to_clipping")).isCloseTo(3.651, within(0.001));
        assertThat(number(paper, "to_noise")).isCloseTo(6.349, within(0.001));
        assertThat(number(paper, "brightest_held")).isCloseTo(15.708 * 64, within(0.1));
        assertThat(number(paper, "darkest_held")).isCloseTo(15.708 / 16, within(0.001));
        Answer dome = answer("exposure", SHORT + "\nconstant: 330\nreflectance: 12 %");
        assertThat(number(dome, "lands")).isCloseTo(number(dome, "margin"), within(0.015));
    }

    /// Two stops over base leave two more over mid grey and two less under it.
    @Test
    void latitude_movesWithTheSensitivity_andClippingFails() {
        String bright = SHORT.replace("1000 cd", "16000 cd") + "\nreflectance: 80 %\n";
        Answer clips = answer("exposure", bright + "latitude: {over: 4 stops, under: 6 stops}");
        assertThat(number(clips, "lands")).isCloseTo(4.349, within(0.001));
        assertThat(number(clips, "to_clipping")).isCloseTo(-0.349, within(0.001));
        assertThat(clips.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(clips.notes().because()).anyMatch(text -> text.endsWith("it clips, by 0.3 stops."));
        Answer rated = answer("exposure", bright + "latitude: {over: 4 stops, under: 6 stops, base_iso: 100}");
        assertThat(number(rated, "to_clipping")).isCloseTo(1.651, within(0.001));
        assertThat(number(rated, "to_noise")).isCloseTo(8.349, within(0.001));
        assertThat(rated.verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void darkSurface_drowns() {
        Answer answer = answer(
                "exposure",
                SHORT.replace("1000 cd", "4000 cd") + "\nreflectance: 3 %\nlatitude: {over: 4 stops, under: 2 stops}");
        assertThat(number(answer, "lands")).isCloseTo(-2.389, within(0.001));
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(answer.notes().because()).anyMatch(text -> text.contains("it drowns in noise, by 0.4 stops"));
    }
}
