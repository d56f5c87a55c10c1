package plumeline.pace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.tidy.Outside;

/// A thin lens pictures at 1/9 what is ten focal lengths away (any handbook of optics); speed by exposure is the smear,
/// and half a frame's travel is what the best whole-frame slip leaves between two passes (common practice).
@Outside(source = "thin lens equation; common practice of the trade for smear and registration", kind = "formula")
class PaceOutsideTest {
    private static final double PX = PacePlan.PIXELS_PER_MM;

    @ParameterizedTest
    @CsvSource({"24, 180 deg, 40", "24, 1/100 s, 40", "120, 180 deg, 10", "48, 90 deg, 75"})
    void smear_isSpeedByExposure(double rate, String shutter, double speed) {
        double exposure =
                shutter.endsWith("deg") ? Double.parseDouble(shutter.replace(" deg", "")) / 360 / rate : 1.0 / 100;
        String text = PacePlan.plan(
                "rate: " + rate + " fps, shutter: " + shutter,
                "moves: {slide: {machine: slider, by: [" + speed + " mm, 0 mm], in: 1 s}}",
                "smear: hero, under: 50 px, when: start");
        assertThat(PacePlan.margin(text)).isCloseTo(50 - speed * exposure * PX, within(0.01));
    }

    /// 12 rpm are 72 deg/s: 33 mm from the axis the surface goes 41.5 mm/s.
    @Test
    void smear_ofATurn_isThatOfItsSurface() {
        String text = PacePlan.plan(
                "rate: 24 fps, shutter: 180 deg",
                "moves: {turn: {machine: plate, carries: hero, by: 72 deg, in: 1 s}}",
                "smear: hero, under: 20 px, when: start");
        assertThat(PacePlan.margin(text)).isCloseTo(20 - Math.toRadians(72) * 33 / 48 * PX, within(0.01));
    }

    /// A falling bean is let go 200 mm above the lens's height; the picture is 182.25 mm high there, so it leaves at
    /// 291 mm under the hand with √(2 · 9.81 · 0.291) = 2.39 m/s, air hardly slowing a gram.
    @Test
    void smear_ofAPiece_isThatAtThePicturesLowerEdge() {
        String text = PacePlan.plan(
                "rate: 240 fps, shutter: 180 deg",
                "release: {piece: bean, at: [0 mm, 0 mm, 261 mm]}",
                "smear: bean, under: 100 px");
        double px = 1920 / 18.0 / 9;
        double lowest = 200 + 20.25 / 2 / 2 * 9;
        double speed = Math.sqrt(2 * 9810 * Math.min(lowest, 261));
        assertThat(100 - PacePlan.margin(text)).isCloseTo(speed / 480 * px, within(0.6));
    }

    /// 50 mm/s at 24 frames a second: up to 1.042 mm; triggered nothing of it; 0.1 mm that the slider repeats comes to
    /// it.
    @ParameterizedTest
    @CsvSource({"24, 50, no", "24, 50, yes", "120, 10, no", "48, 5, no"})
    void passes_lieApartByHalfAFramesTravelAndWhatRepeats(double rate, double speed, String triggered) {
        String text = PacePlan.plan(
                "rate: " + rate + " fps",
                "moves: {slide: {machine: slider, by: [" + speed + " mm, 0 mm], in: 1 s, triggered: " + triggered
                        + "}}\n    passes: {one: {}, other: {}}",
                "registers: [one, other], within: 30 px, when: start");
        double half = triggered.equals("yes") ? 0 : speed / rate / 2;
        assertThat(30 - PacePlan.margin(text)).isCloseTo((half + 0.1) * PX, within(0.01));
    }

    /// Brief arithmetic: 600 mm in 8 s with 200 mm/s² peaks at (1600 − √(1600² − 4 · 200 · 600)) / 2 = 78.9 mm/s.
    @ParameterizedTest
    @CsvSource({
        "'by: [-600 mm, 0 mm], in: 8 s, profile: trapezoid', 0",
        "'by: [-500 mm, 0 mm], in: 8 s, profile: trapezoid', 16.667",
        "'by: [-300 mm, 0 mm], in: 4 s, profile: even', 6.25",
        "'by: [-570 mm, 0 mm], in: 7.6 s, profile: even', 0.3125",
        "'by: [-600 mm, 0 mm], in: 8 s, profile: even', -4.6875",
        "'by: [-600 mm, 0 mm], in: 4 s, profile: trapezoid', -150",
        "'by: [-200 mm, 0 mm], in: 5 s, profile: smooth', 6.25",
        "'by: [-20 mm, 0 mm], in: 0.5 s, profile: trapezoid', -60"
    })
    void moves_useSharesOfTheirLimits(String move, double margin) {
        String text =
                PacePlan.plan("rate: 24 fps", "moves: {slide: {machine: slider, " + move + "}}", "reachable: slide");
        assertThat(PacePlan.margin(text)).isCloseTo(margin, within(0.02));
    }

    /// The timeline's rate over the slowest speed: 20 % of 24 needs 120.
    @ParameterizedTest
    @CsvSource({
        "120, 20 %, 0",
        "120, '[[0 frames, 100 %], [12 frames, 100 %], [24 frames, 20 %]]', 0",
        "24, 50 %, -24",
        "240, 10 %, 0",
        "48, 100 %, 24",
        "24, 200 %, 12",
        "119.88, 20 %, -0.12"
    })
    void wholeFrames_areTheRateOverTheLeast(double rate, String speed, double margin) {
        String text =
                PacePlan.plan("rate: " + rate + " fps", "speed: " + speed + "\n    frames: 48", "whole_frames: shot");
        assertThat(PacePlan.margin(text)).isCloseTo(margin, within(2e-4));
    }

    /// 5 rpm at 25 frames a second, as brief B3 has it, would turn 36 deg in 30 frames; here 60 deg in 24 at 24.
    @ParameterizedTest
    @CsvSource({
        "-30 deg, 60 deg, 30, 24, 0",
        "-30 deg, 60 deg, 20, 10, 6",
        "-60 deg, 60 deg, 30, 12, 0",
        "0 deg, 360 deg, 30, 2, 0"
    })
    void labels_areReadWhileTheirMiddleIsNear(String turn, String by, int within, int wanted, double margin) {
        String text = PacePlan.plan(
                "rate: 24 fps",
                "turn: " + turn,
                "moves: {turn: {machine: plate, carries: hero, by: " + by + ", in: 1 s}}",
                "readable: hero, within: " + within + " deg, for: " + wanted + " frames");
        assertThat(PacePlan.margin(text)).isCloseTo(margin, within(1e-3));
    }

    /// At 24 frames a second the picture's width in seven seconds is 0.595 % a frame.
    @Test
    void judder_isTravelFromFrameToFrame() {
        String moves = "moves: {slide: {machine: slider, by: [48 mm, 0 mm], in: 1 s}}";
        assertThat(PacePlan.margin(
                        PacePlan.plan("rate: 24 fps", moves, "judder_free: hero, under: 30 px, when: start")))
                .isCloseTo(30 - 2 * PX, within(0.01));
        assertThat(PacePlan.margin(PacePlan.plan("rate: 24 fps", moves, "judder_free: hero, when: start")))
                .isCloseTo(100.0 / 168 - 100 * 2 * PX / 3840, within(1e-4));
        // 48 fps at 75 % shows one frame, then two: 1/48 s and 2/48 s of 48 mm/s.
        String uneven = PacePlan.plan(
                "rate: 48 fps", moves + "\n    speed: 75 %", "judder_free: hero, under: 30 px, when: 0 frames");
        assertThat(PacePlan.margin(uneven)).isCloseTo(30 - 2 * PX, within(0.01));
        assertThat(PacePlan.margin(uneven.replace("0 frames", "1 frames"))).isCloseTo(30 - PX, within(0.01));
    }

    @Test
    void still_isWhereItWasAtTheStart() {
        String text = PacePlan.plan(
                "rate: 24 fps",
                "moves: {slide: {machine: slider, by: [48 mm, 0 mm], in: 2 s}}",
                "holds_still: hero, under: 1000 px, when: 24 frames");
        assertThat(PacePlan.margin(text)).isCloseTo(1000 - 24 * PX, within(0.01));
    }

    /// A can that goes to camera right and turns clockwise seen from above, its front to camera left: the one takes off
    /// what the other gives, and the larger of middle and front counts.
    @Test
    void aWayAndATurn_addUpWithTheirSigns() {
        String moves = "moves: {way: {machine: slider, carries: hero, by: [20 mm, 0 mm], in: 1 s},"
                + " turn: {machine: plate, carries: hero, by: TURN deg, in: 1 s}}";
        double way = 20.0 / 48 * PX;
        double turn = Math.toRadians(72) * 33 / 48 * PX;
        for (int sign : new int[] {1, -1}) {
            String text = PacePlan.plan(
                    "rate: 24 fps",
                    moves.replace("TURN", Integer.toString(72 * sign)),
                    "smear: hero, under: 50 px, when: start");
            assertThat(50 - PacePlan.margin(text)).isCloseTo(Math.max(way, Math.abs(way - sign * turn)), within(0.05));
        }
    }

    /// Before it is let go a piece doesn't smear; a tenth of a second after it goes 0.98 m/s; a shot that is over then
    /// has it no faster.
    @Test
    void smear_ofAPiece_isWhatTheShotSees() {
        String release = "release: {piece: bean, at: [0 mm, 0 mm, 100 mm], start: 0.1 s}\n    frames: 48";
        String camera = "rate: 24 fps, shutter: 180 deg";
        double tenth = 981 * 0.1 * 10 / 1000;
        assertThat(PacePlan.margin(PacePlan.plan(camera, release, "smear: bean, under: 200 px, when: start")))
                .isCloseTo(200, within(1e-6));
        double there = tenth * 1000 / 48 * PX;
        assertThat(200 - PacePlan.margin(PacePlan.plan(camera, release, "smear: bean, under: 200 px, when: 0.2 s")))
                .isCloseTo(there, within(0.01 * there));
        String brief = PacePlan.plan(
                camera, release.replace("frames: 48", "frames: 24\n    speed: 20 %"), "smear: bean, under: 200 px");
        assertThat(200 - PacePlan.margin(brief)).isCloseTo(there, within(0.01 * there));
    }
}
