package plumeline.pace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumeline.plan.Plan;

class CouplingTest {
    private static Coupling of(String camera, String more) {
        Plan plan = PacePlan.read(PacePlan.plan(camera, more, "whole_frames: shot"));
        return Coupling.of(PacePlan.stage(plan), plan.film().rate());
    }

    /// 115 frames at 20 % are 0.958 s on the table.
    @Test
    void sentence_saysRateLightAndTheMovesTime() {
        Coupling coupling = of(
                "rate: 24 fps",
                "moves: {slide: {machine: slider, by: [50 mm, 0 mm], in: 0.96 s}}\n    speed: 20 %\n    frames: 115");
        assertThat(coupling.sentence()).isEqualTo("20 % needs 120 fps: 2.3 stops more light and slide in 0.96 s.");
    }

    /// Nothing so fast is in the list: the least that would do is named.
    @Test
    void sentence_whereNoModeIsEnough_saysTheLeast() {
        assertThat(of("rate: 24 fps", "speed: 8 %").sentence()).isEqualTo("8 % needs 300 fps: 3.6 stops more light.");
        assertThat(of("rate: 24 fps", "speed: 8 %").findEnough()).isEmpty();
    }

    /// 400 Mb/s for a second are 50 MB.
    @Test
    void recorded_saysTimeFramesAndData() {
        assertThat(of("rate: 120 fps", "speed: 20 %\n    frames: 120").recorded())
                .isEqualTo("120 frames of the film are 1 s on the table, 120 captured frames, 0.05 GB a take.");
        assertThat(of("rate: 48 fps", "speed: 50 %\n    frames: 48").recorded()).doesNotContain("GB");
    }

    @Test
    void realTime_needsNoWord() {
        assertThat(of("rate: 24 fps", "frames: 48").listNotes()).isEmpty();
    }

    /// One captured frame in five is shown at 100 %: 180 deg looks like 36.
    @Test
    void fastParts_smearAsWithANarrowerShutter() {
        assertThat(of("rate: 120 fps", "speed: [[0 frames, 100 %], [24 frames, 20 %]]\n    frames: 48")
                        .listNotes())
                .last()
                .isEqualTo("At 100 % it smears as with a shutter of 36 deg; 360 deg would look like 72 deg, 1 stop"
                        + " lighter.");
        assertThat(of("rate: 120 fps", "speed: 20 %\n    frames: 48").listNotes())
                .hasSize(1);
    }

    /// Half a second, then a ramp whose mean is 60 % of half a second: slow from 0.8 s to 1.6 s.
    @Test
    void window_isWhereItIsSlowest() {
        Coupling coupling = of(
                "rate: 120 fps",
                "speed: [[0 frames, 100 %], [12 frames, 100 %], [24 frames, 20 %], [120 frames, 20 %]]\n"
                        + "    frames: 120");
        assertThat(coupling.findWindow()).hasValueSatisfying(window -> {
            assertThat(window.fromSeconds()).isCloseTo(0.8, within(1e-9));
            assertThat(window.toSeconds()).isCloseTo(1.6, within(1e-9));
        });
        assertThat(of("rate: 120 fps", "speed: 20 %\n    frames: 48").findWindow())
                .isEmpty();
        assertThat(of(
                                "rate: 120 fps",
                                "speed: [[0 frames, 100 %], [24 frames, 20 %], [48 frames, 100 %]]\n    frames: 48")
                        .findWindow())
                .isEmpty();
    }

    /// A frame that is held is meant: it needs no rate.
    @Test
    void held_isNoSpeed() {
        Coupling coupling = of(
                "rate: 24 fps",
                "speed: [[0 frames, 100 %], [24 frames, 100 %], [25 frames, 0 %], [48 frames, 0 %]]\n    frames: 48");
        assertThat(coupling.slowest()).isEqualTo(1);
        assertThat(coupling.leastRate()).isEqualTo(24);
    }

    /// Backward a shot begins with its end: its GO is its earliest instant.
    @Test
    void backward_countsFromItsEarliestInstant() {
        Coupling coupling = of("rate: 48 fps", "speed: -50 %\n    frames: 48");
        assertThat(coupling.slowest()).isEqualTo(0.5);
        assertThat(coupling.stage().lastSeconds()).isCloseTo(1, within(1e-12));
        assertThat(coupling.stage().retime().realSeconds(0)).isCloseTo(1, within(1e-12));
    }

    /// A bean let go at 0.1 s from 61 mm lands 0.11 s later: long before the ramp is slow at 0.8 s.
    @Test
    void whatIsLetGoBeforeTheRamp_isSaid() {
        String ramp = "speed: [[0 frames, 100 %], [12 frames, 100 %], [24 frames, 20 %], [120 frames, 20 %]]\n"
                + "    frames: 120\n    release: {piece: bean, at: [0 mm, 0 mm, 61 mm], start: START}";
        Coupling early = of("rate: 120 fps", ramp.replace("START", "0.1 s"));
        assertThat(early.findMissed(early.stage().startValues()))
                .contains("What is let go 0.1 s after GO has landed by 0.21 s, but 20 % is played from 0.8 s to 1.6 s:"
                        + " let it go then, or move the ramp.");
        Coupling right = of("rate: 120 fps", ramp.replace("START", "0.9 s"));
        assertThat(right.findMissed(right.stage().startValues())).isEmpty();
    }

    /// 30 fps would do, the body has 48.
    @Test
    void sentence_whereTheBodyHasMore_saysBoth() {
        assertThat(of("rate: 24 fps", "speed: 80 %").sentence())
                .isEqualTo("80 % needs 30 fps at least, 48 fps of what the body has: 1 stop more light.");
    }
}
