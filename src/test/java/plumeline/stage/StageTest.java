package plumeline.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumeline.geom.Body;
import plumeline.geom.Pinhole;
import plumeline.geom.Vec;
import plumeline.optics.TankView;
import plumeline.plan.When;

/// The conventions of the plan's contract: where things stand, which way they turn, what counts as the focus.
final class StageTest {
    @Test
    void turn_ofAThing_isClockwiseSeenFromAbove() {
        Body box = Staged.start(Staged.CAMERA, "place: {hero: {thing: box, at: [10 mm, 20 mm], turn: 90 deg}}")
                .things()
                .getFirst();
        // A face towards the camera (−y) goes to camera left (−x).
        checkVec(box.place(new Vec(0, -0.010, 0)), 0, 0.020, 0);
    }

    @Test
    void tilt_ofAThing_leansItsTopToCameraRightAboutItsMiddle() {
        Body tin = Staged.start(Staged.CAMERA, "place: {hero: {thing: tin, at: [0 mm, 0 mm], tilt: 90 deg}}")
                .things()
                .getFirst();
        checkVec(tin.place(new Vec(0, 0, 0.096)), 0.048, 0, 0.048);
        checkVec(tin.place(new Vec(0, 0, 0)), -0.048, 0, 0.048);
    }

    @Test
    void turn_ofALeaningThing_followsTheLean() {
        Body tin = Staged.start(
                        Staged.CAMERA, "place: {hero: {thing: tin, at: [0 mm, 0 mm], tilt: 90 deg, turn: 90 deg}}")
                .things()
                .getFirst();
        // To camera right, then clockwise: towards the camera.
        checkVec(tin.place(new Vec(0, 0, 0.096)), 0, -0.048, 0.048);
    }

    @Test
    void aim_byAngles_turnsClockwiseAndTiltsUp() {
        Vec turned = forward("turn: 90 deg");
        checkVec(turned, 1, 0, 0);
        Vec tilted = forward("tilt: 30 deg");
        checkVec(tilted, 0, Math.sqrt(0.75), 0.5);
    }

    @Test
    void aim_ahead_isLevelAndFacesAwayFromTheCamera() {
        checkVec(forward("aim: ahead"), 0, 1, 0);
    }

    @Test
    void aim_atAThing_goesThroughItsMiddle() {
        Scene scene = Staged.start(
                "camera: {body: main, lens: fifty, at: [-300 mm, -400 mm, 548 mm], aim: hero}", Staged.HERO);
        // The middle is 300 mm right, 400 mm on and 500 mm down: 500 level, 45 deg down.
        assertThat(Math.toDegrees(scene.aim().turnRadians())).isEqualTo(Math.toDegrees(Math.atan2(3, 4)), within(1e-9));
        assertThat(Math.toDegrees(scene.aim().tiltRadians())).isEqualTo(-45, within(1e-9));
    }

    @Test
    void focus_untold_isTheAimedThingsMiddleAndStays() {
        Stage stage = Staged.stage(
                Staged.CAMERA,
                Staged.HERO,
                "moves: {slide: {machine: slider, by: [0 mm, 200 mm], in: 2 s, profile: even}}",
                "frames: 49");
        assertThat(Staged.at(stage, 0).picture().focusMetres()).isEqualTo(0.6, within(1e-12));
        assertThat(Staged.at(stage, 48).aim().eye().y()).isEqualTo(-0.4, within(1e-12));
        assertThat(Staged.at(stage, 48).picture().focusMetres()).isEqualTo(0.6, within(1e-12));
    }

    @Test
    void focus_aimedAhead_isTheMiddleNearestTheLensPoint_asDepthAlongTheAxis() {
        Scene scene = Staged.start(
                "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 48 mm], aim: ahead}",
                "place: {far: {thing: tin, at: [0 mm, 100 mm]}, near: {thing: tin, at: [300 mm, -100 mm]}}");
        // The near one's middle is at hypot(300, 500) = 583 < 700 mm; its depth is 500 mm.
        assertThat(scene.picture().focusMetres()).isEqualTo(0.5, within(1e-12));
    }

    @Test
    void focus_onAnotherThingOrAtADistance_isThat() {
        String place = "place: {hero: {thing: tin, at: [0 mm, 0 mm]}, back: {thing: tin, at: [80 mm, 150 mm]}}";
        String camera = "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 48 mm], aim: hero, focus: ";
        assertThat(Staged.start(camera + "back}", place).picture().focusMetres())
                .isEqualTo(0.75, within(1e-12));
        assertThat(Staged.start(camera + "820 mm}", place).picture().focusMetres())
                .isEqualTo(0.82, within(1e-12));
    }

    @Test
    void held_upright_swapsTheSidesAndKeepsThePixels() {
        Scene scene = Staged.start(
                "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 48 mm], aim: hero, held: upright}", Staged.HERO);
        assertThat(scene.picture().widthMetres()).isEqualTo(0.02025, within(1e-15));
        assertThat(scene.picture().heightMetres()).isEqualTo(0.036, within(1e-15));
        assertThat(scene.picture().pixelMetres()).isEqualTo(0.036 / 3840, within(1e-15));
    }

    @Test
    void pixels_areThoseOfTheModeOfTheShotsRate() {
        Scene scene = Staged.start(
                "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 48 mm], aim: hero, rate: 240 fps}", Staged.HERO);
        assertThat(scene.picture().pixelMetres()).isEqualTo(0.036 / 1920, within(1e-15));
    }

    @Test
    void slide_trapezoid_standsWhereTheLawOfMotionSays() {
        Stage stage = Staged.stage(Staged.CAMERA, Staged.HERO, SLIDE, "speed: 200 %");
        // By hand: v = 800 − √520000 mm/s, ramps of v/200 s; two real seconds a screen second.
        double v = 800 - Math.sqrt(520_000);
        double ramp = v / 200;
        assertThat(xAt(stage, 3)).isEqualTo(-100 * 0.25 * 0.25, within(1e-6));
        assertThat(xAt(stage, 24)).isEqualTo(-v * (2 - ramp / 2), within(1e-6));
        assertThat(xAt(stage, 48)).isEqualTo(-300, within(1e-6));
        assertThat(xAt(stage, 95)).isEqualTo(-600 + 100 / 144.0, within(1e-6));
        assertThat(xAt(stage, 96)).isEqualTo(-600, within(1e-6));
    }

    @Test
    void slide_withoutAProfile_isEven() {
        Stage stage = Staged.stage(
                Staged.CAMERA, Staged.HERO, "moves: {slide: {machine: slider, by: [120 mm, 60 mm], in: 2 s}}");
        assertThat(xAt(stage, 12)).isEqualTo(30, within(1e-9));
        assertThat(Staged.at(stage, 12).aim().eye().y() * 1e3).isEqualTo(-600 + 15, within(1e-9));
    }

    @Test
    void start_ofAMove_countsFramesOfTheScreenOrSecondsOfTheTable() {
        String byFrames = "moves: {slide: {machine: slider, by: [100 mm, 0 mm], in: 1 s, start: 12 frames}}";
        Stage frames = Staged.stage(Staged.CAMERA, Staged.HERO, byFrames);
        assertThat(xAt(frames, 12)).isZero();
        assertThat(xAt(frames, 24)).isEqualTo(50, within(1e-9));
        String bySeconds = byFrames.replace("12 frames", "0.25 s");
        assertThat(xAt(Staged.stage(Staged.CAMERA, Staged.HERO, bySeconds), 12)).isEqualTo(25, within(1e-9));
    }

    @Test
    void end_isTheLastFramePosedAtItsStart() {
        Stage stage = Staged.stage(
                Staged.CAMERA, Staged.HERO, "moves: {slide: {machine: slider, by: [240 mm, 0 mm], in: 1 s}}");
        assertThat(stage.frames()).isEqualTo(24);
        assertThat(stage.frameOf(new When.End())).isEqualTo(23);
        assertThat(xAt(stage, stage.frameOf(new When.End()))).isEqualTo(230, within(1e-9));
    }

    @Test
    void pan_keeps_looksAlongTheBisectorOfTheOutermostTangents() {
        Stage stage = Staged.stage(
                Staged.CAMERA,
                "place: {hero: {thing: tin, at: [0 mm, 0 mm]}, side: {thing: tin, at: [250 mm, 300 mm]}}",
                "moves:",
                "  slide: {machine: slider, by: [-200 mm, 0 mm], in: 4 s, profile: smooth}",
                "  pan: {machine: head, keeps: [hero, side]}",
                "frames: 97");
        double left = Math.atan2(200, 600) - Math.asin(38 / Math.hypot(200, 600));
        double right = Math.atan2(450, 900) + Math.asin(38 / Math.hypot(450, 900));
        assertThat(Staged.at(stage, 96).aim().turnRadians()).isEqualTo((left + right) / 2, within(1e-9));
        double startLeft = -Math.asin(38 / 600.0);
        double startRight = Math.atan2(250, 900) + Math.asin(38 / Math.hypot(250, 900));
        assertThat(Staged.at(stage, 0).aim().turnRadians()).isEqualTo((startLeft + startRight) / 2, within(1e-9));
    }

    @Test
    void pan_abouAPivotBehindTheLens_swingsTheLensPoint() {
        Stage stage = Staged.stage(
                "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 48 mm], aim: ahead, pivot: [0 mm, -100 mm]}",
                Staged.HERO,
                "moves: {pan: {machine: head, by: 90 deg, in: 1 s}}",
                "frames: 25");
        Scene scene = Staged.at(stage, 24);
        checkVec(scene.aim().eye(), 0.1, -0.7, 0.048);
        checkVec(scene.aim().forward(), 1, 0, 0);
    }

    @Test
    void pan_aboutAPivot_startsWhereTheCameraWasPut() {
        Stage stage = Staged.stage(
                "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 48 mm], turn: 90 deg, pivot: [0 mm, -80 mm]}",
                Staged.HERO,
                "moves: {pan: {machine: head, by: -90 deg, in: 1 s}}",
                "frames: 25");
        checkVec(Staged.at(stage, 0).aim().eye(), 0, -0.6, 0.048);
        // The axis is 80 mm behind a lens that faces +x; turned back to +y the lens is 80 mm before it.
        checkVec(Staged.at(stage, 24).aim().eye(), -0.08, -0.52, 0.048);
    }

    @Test
    void pan_keepsOne_turnsStraightToIt_howeverFarRound() {
        Stage stage = Staged.stage(
                "camera: {body: main, lens: fifty, at: [0 mm, 600 mm, 48 mm], turn: 180 deg}",
                Staged.HERO,
                "moves:",
                "  slide: {machine: slider, by: [200 mm, 0 mm], in: 1 s}",
                "  pan: {machine: head, keeps: [hero]}",
                "frames: 25");
        // From behind, 200 mm to table right: it looks towards −x and −y.
        checkVec(Staged.at(stage, 24).aim().forward(), -200 / Math.hypot(200, 600), -600 / Math.hypot(200, 600), 0);
    }

    @Test
    void plate_turnsWhatItCarriesAboutItsAxis() {
        Stage stage = Staged.stage(
                Staged.CAMERA,
                "place: {hero: {thing: box, at: [0 mm, 0 mm], turn: -30 deg}, other: {thing: box, at: [200 mm, 0 mm]}}",
                "moves: {turn: {machine: plate, carries: hero, by: 60 deg, in: 1 s, profile: even}}",
                "frames: 25");
        Scene scene = Staged.at(stage, 18);
        assertThat(Math.toDegrees(scene.things().get(0).pose().turnRadians())).isEqualTo(15, within(1e-9));
        assertThat(scene.things().get(1).pose().turnRadians()).isZero();
        assertThat(scene.aim().turnRadians()).isZero();
    }

    @Test
    void pass_setsItsOwnAndFollowsTheRest() {
        String[] lines = {
            Staged.CAMERA.replace("-600 mm", "free"),
            Staged.HERO,
            "passes: {plain: {}, other: {place.hero.thing: box, place.hero.at.x: 25 mm}}"
        };
        Stage plain = Staged.pass("plain", lines);
        Stage other = Staged.pass("other", lines);
        assertThat(other.marks()).isEqualTo(plain.marks());
        double[] values = plain.startValues();
        for (int i = 0; i < values.length; i++) {
            values[i] = plain.marks().get(i).mark().path().equals("camera.y") ? -0.7 : values[i];
        }
        assertThat(plain.scene(values, 0).things().getFirst().pose().base().x()).isZero();
        Scene scene = other.scene(values, 0);
        assertThat(scene.things().getFirst().pose().base().x()).isEqualTo(0.025, within(1e-15));
        assertThat(scene.things().getFirst().solid().heightMetres()).isEqualTo(0.1, within(1e-15));
        assertThat(scene.aim().eye().y()).isEqualTo(-0.7, within(1e-15));
    }

    @Test
    void tank_isSeenThroughItsWallFromOutsideOnly() {
        String tank = "tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}";
        assertThat(Staged.start(Staged.CAMERA, Staged.HERO, tank).projection()).isInstanceOf(TankView.class);
        assertThat(Staged.start(Staged.CAMERA, Staged.HERO).projection()).isInstanceOf(Pinhole.class);
        String above = "camera: {body: main, lens: fifty, at: [0 mm, -60 mm, 800 mm], aim: hero}";
        assertThat(Staged.start(above, Staged.HERO, tank).projection()).isInstanceOf(Pinhole.class);
    }

    @Test
    void tank_wallsAndWaterStandOnItsOuterBase() {
        TankWalls walls = Staged.stage(
                        Staged.CAMERA, Staged.HERO, "tank: {tank: glass, at: [10 mm, 30 mm], water: 260 mm}")
                .findTank()
                .orElseThrow();
        checkVec(walls.inside().low(), -0.215, -0.12, 0.008);
        checkVec(walls.inside().high(), 0.235, 0.18, 0.308);
        checkVec(walls.outside().low(), -0.223, -0.128, 0);
        assertThat(walls.waterLineMetres()).isEqualTo(0.268, within(1e-12));
    }

    @Test
    void frames_areTheLongestUseInTheCut() {
        String cut = "\ncut: [{shot: one, frames: 36}, {shot: one, frames: 60}]";
        assertThat(Staged.stage(Staged.CAMERA, Staged.HERO, "frames: 300" + cut).frames())
                .isEqualTo(60);
    }

    @Test
    void frames_outsideTheCut_areItsOwnElseItsMovesElseOne() {
        String move = "moves: {slide: {machine: slider, by: [100 mm, 0 mm], in: 2 s, start: 0.5 s}}";
        assertThat(Staged.stage(Staged.CAMERA, Staged.HERO, move, "frames: 30").frames())
                .isEqualTo(30);
        assertThat(Staged.stage(Staged.CAMERA, Staged.HERO, move).frames()).isEqualTo(60);
        assertThat(Staged.stage(Staged.CAMERA, Staged.HERO, move, "speed: 50 %").frames())
                .isEqualTo(120);
        assertThat(Staged.stage(Staged.CAMERA, Staged.HERO).frames()).isEqualTo(1);
    }

    @Test
    void when_inSeconds_isRealTime() {
        Stage stage = Staged.stage(Staged.CAMERA, Staged.HERO, "speed: 20 %", "frames: 120");
        var plan = Staged.plan(
                Staged.CAMERA,
                Staged.HERO,
                "speed: 20 %",
                "frames: 120",
                "wants: [{fills: hero, height: 50 %, when: 0.6 s}]");
        assertThat(stage.frameOf(Staged.shot(plan).wants().getFirst().when())).isEqualTo(72, within(1e-6));
    }

    @Test
    void tilt_pastStraightUp_staysThere() {
        Stage stage = Staged.stage(
                "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 48 mm], turn: 0 deg, tilt: 5 deg}", Staged.HERO);
        double[] values = stage.startValues();
        int tilt =
                stage.marks().stream().map(mark -> mark.mark().path()).toList().indexOf("camera.tilt");
        values[tilt] += stage.marks().get(tilt).reachSi();
        assertThat(stage.scene(values, 0).aim().tiltRadians()).isEqualTo(Math.PI / 2, within(1e-12));
    }

    /// A lamp on a stand doesn't follow what moves; one on the machine goes with it, turned as it was; a level goes no
    /// lower than off, a tilt no farther than straight up.
    @Test
    void lamp_staysTurnedAsItWasSet() {
        String lights = "lights: {key: {light: strip, at: [400 mm, -300 mm, 300 mm], aim: hero},"
                + " kick: {light: strip, at: [-400 mm, 0 mm, 300 mm], aim: hero, level: free},"
                + " top: {light: strip, at: [0 mm, 0 mm, 900 mm], tilt: -80 deg}}";
        String moves =
                "moves: {slide: {machine: slider, by: [200 mm, 0 mm], in: 1 s, profile: even, carries: [hero, kick]}}";
        Stage stage = Staged.stage(Staged.CAMERA, Staged.HERO, lights, moves, "frames: 25");
        double[] values = stage.startValues();
        Scene first = stage.scene(values, 0);
        Scene last = stage.scene(values, 24);
        assertThat(last.beams().get(0)).isEqualTo(first.beams().get(0));
        assertThat(last.beams().get(1).aim().turnRadians())
                .isEqualTo(first.beams().get(1).aim().turnRadians());
        assertThat(last.beams().get(1).aim().eye().x())
                .isGreaterThan(first.beams().get(1).aim().eye().x() + 0.1);
        assertThat(first.beams().get(0).aim().tiltRadians()).isNegative();
        for (int i = 0; i < values.length; i++) {
            String path = stage.marks().get(i).mark().path();
            values[i] -= path.equals("kick.level") ? 2 : path.equals("top.tilt") ? 1 : 0;
        }
        assertThat(stage.scene(values, 0).beams().get(1).level()).isZero();
        assertThat(stage.scene(values, 0).beams().get(2).aim().tiltRadians()).isEqualTo(-Math.PI / 2);
    }

    @Test
    void lamp_untold_facesTheAimedThing_elseTheOneNearestTheLens() {
        String lights = "lights: {key: {light: strip, at: [400 mm, 0 mm, 300 mm]}}";
        Scene start = Staged.start(Staged.CAMERA, Staged.HERO, lights);
        // From camera right it faces −x: a quarter turn counter-clockwise.
        assertThat(Math.toDegrees(start.beams().getFirst().aim().turnRadians())).isEqualTo(-90, within(1e-9));
        Body lamp = start.lamps().getFirst();
        Vec face = start.beams().getFirst().aim().eye();
        assertThat(face.z()).isEqualTo(0.3, within(1e-12));
        assertThat(face.minus(lamp.middle()).dot(start.beams().getFirst().aim().forward()))
                .isEqualTo(0.025, within(1e-12));
        // The housing lies square to the way that it faces, down too: 400 mm aside, 252 mm down.
        assertThat(Math.toDegrees(Math.atan2(lamp.axis().x(), lamp.axis().z())))
                .isEqualTo(-Math.toDegrees(Math.atan2(0.252, 0.4)), within(1e-9));
        String ahead = "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 48 mm], aim: ahead}";
        Beam other = Staged.start(
                        ahead,
                        "place: {far: {thing: tin, at: [0 mm, 0 mm]}, near: {thing: tin, at: [400 mm, -300 mm]}}",
                        lights)
                .beams()
                .getFirst();
        assertThat(Math.abs(Math.toDegrees(other.aim().turnRadians()))).isEqualTo(180, within(1e-9));
    }

    private static final String SLIDE =
            "moves: {slide: {machine: slider, by: [-600 mm, 0 mm], in: 8 s, profile: trapezoid}}";

    private static double xAt(Stage stage, double frame) {
        return Staged.at(stage, frame).aim().eye().x() * 1e3;
    }

    private static Vec forward(String aim) {
        return Staged.start("camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 48 mm], " + aim + "}", Staged.HERO)
                .aim()
                .forward();
    }

    private static void checkVec(Vec vec, double x, double y, double z) {
        assertThat(vec.x()).isEqualTo(x, within(1e-12));
        assertThat(vec.y()).isEqualTo(y, within(1e-12));
        assertThat(vec.z()).isEqualTo(z, within(1e-12));
    }
}
