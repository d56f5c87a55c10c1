package plumeline.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.geom.Pinhole;
import plumeline.geom.Point;
import plumeline.geom.Vec;

/// What each axis of a move does to the shot, half way and at its end.
final class AxesTest {
    private static Scene at(double seconds, String move) {
        Stage stage = Staged.stage(
                "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 48 mm], aim: ahead, focus: hero}",
                Staged.HERO,
                "moves: {one: {" + move + ", in: 2 s, profile: even}}",
                "frames: 96");
        return stage.laid(stage.startValues()).sceneAt(seconds);
    }

    @Test
    void pan_turnsClockwise_tiltLooksUp() {
        assertThat(at(1, "axis: pan, by: 20 deg").aim().turnRadians()).isCloseTo(Math.toRadians(10), within(1e-12));
        assertThat(at(2, "axis: tilt, by: 20 deg").aim().tiltRadians()).isCloseTo(Math.toRadians(20), within(1e-12));
        assertThat(at(1, "axis: tilt, by: -20 deg").aim().turnRadians()).isZero();
    }

    /// A camera rolled clockwise sees what was to the right higher up.
    @Test
    void roll_turnsThePictureTheOtherWay() {
        Scene rolled = at(2, "axis: roll, by: 90 deg");
        Point right = new Pinhole(rolled.aim()).project(new Vec(0.06, 0, 0.048));
        assertThat(right.x()).isCloseTo(0, within(1e-12));
        assertThat(right.y()).isCloseTo(0.1, within(1e-12));
        Point slant = new Pinhole(at(1, "axis: roll, by: 60 deg").aim()).project(new Vec(0.06, 0, 0.048));
        assertThat(slant.x()).isCloseTo(0.1 * Math.cos(Math.PI / 6), within(1e-12));
        assertThat(slant.y()).isCloseTo(0.05, within(1e-12));
    }

    @Test
    void lift_goesUp() {
        assertThat(at(1, "by: [0 mm, 0 mm, 100 mm]").aim().eye().z()).isCloseTo(0.098, within(1e-12));
    }

    /// The picture's scale stays that of the start; what is sharp moves on.
    @Test
    void focus_movesWhatIsSharp_notTheScale() {
        Scene before = at(0, "axis: focus, by: 200 mm");
        Scene after = at(2, "axis: focus, by: 200 mm");
        assertThat(before.picture().focusMetres()).isCloseTo(0.6, within(1e-12));
        assertThat(after.picture().focusMetres()).isCloseTo(0.8, within(1e-12));
        assertThat(after.picture().imageMetres()).isEqualTo(before.picture().imageMetres());
    }

    /// From 50 to 70 mm at 0.6 m the thin lens's picture grows from 50·600/550 to 70·600/530.
    @Test
    void zoom_changesTheScale() {
        assertThat(at(2, "axis: zoom, by: 20 mm").picture().imageMetres()).isCloseTo(0.07 * 0.6 / 0.53, within(1e-9));
        assertThat(at(0, "axis: zoom, by: 20 mm").picture().imageMetres()).isCloseTo(0.05 * 0.6 / 0.55, within(1e-9));
    }

    /// Half way between keys at 0 and 100 % from rest to rest, a cubic is half way.
    @ParameterizedTest
    @CsvSource({"0, 0", "1, 0.5", "2, 1", "3, 1", "0.5, 0.15625"})
    void keys_arePassedByAMonotoneCubic(double seconds, double share) {
        Stage stage = Staged.stage(
                "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 48 mm], aim: ahead, focus: hero}",
                Staged.HERO,
                "moves: {one: {by: [100 mm, 0 mm], keys: [[0 s, 0 %], [2 s, 100 %]]}}",
                "frames: 96");
        Scene scene = stage.laid(stage.startValues()).sceneAt(seconds);
        assertThat(scene.aim().eye().x()).isCloseTo(0.1 * share, within(1e-12));
        assertThat(stage.endSeconds("one")).isEqualTo(2);
    }

    /// Seven segments: 600 mm in 4 s by 400 mm/s² and 800 mm/s³ peak at 200 mm/s; a quarter of the time on 50 mm are
    /// done.
    @Test
    void sCurve_usesItsMachinesJerk() {
        Stage stage = Staged.stage(
                "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 48 mm], aim: ahead, focus: hero}",
                Staged.HERO,
                "moves: {one: {machine: jerked, by: [600 mm, 0 mm], in: 4 s, profile: s-curve}}",
                "frames: 96");
        assertThat(stage.findRun(0, stage.startValues()).orElseThrow().peakSpeed())
                .isCloseTo(0.2, within(1e-9));
        assertThat(stage.laid(stage.startValues()).sceneAt(1).aim().eye().x()).isCloseTo(0.1, within(1e-9));
    }

    /// A mode that uses half of the sensor's width shows half of the picture, its pixels as wide as they are.
    @Test
    void aModesCrop_narrowsThePicture() {
        Scene whole = Staged.start(Staged.CAMERA, Staged.HERO);
        Scene cropped = Staged.start(Staged.CAMERA.replace("aim: hero", "aim: hero, rate: 100 fps"), Staged.HERO);
        assertThat(cropped.picture().widthMetres()).isCloseTo(whole.picture().widthMetres() / 2, within(1e-12));
        assertThat(cropped.picture().heightMetres()).isCloseTo(whole.picture().heightMetres() / 2, within(1e-12));
        assertThat(cropped.picture().pixelMetres()).isCloseTo(whole.picture().pixelMetres(), within(1e-12));
    }

    /// At 200 % twelve screen frames are a second on the table; a release by frames goes by the same map.
    @Test
    void aStartInFrames_isScreenTime() {
        Stage stage = Staged.stage(
                "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 48 mm], aim: ahead, focus: hero}",
                Staged.HERO,
                "moves: {one: {by: [100 mm, 0 mm], in: 1 s, start: 12 frames}}",
                "speed: 200 %",
                "frames: 48");
        assertThat(stage.startSeconds(0)).isCloseTo(1, within(1e-12));
        assertThat(stage.endSeconds("one")).isCloseTo(2, within(1e-12));
        assertThat(stage.scene(stage.startValues(), 18).aim().eye().x()).isCloseTo(0.05, within(1e-12));
    }
}
