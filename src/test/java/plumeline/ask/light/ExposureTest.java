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
}
