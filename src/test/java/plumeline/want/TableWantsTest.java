package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import plumeline.plan.Plan;
import plumeline.quantity.PaperUnit;

/// Wants about the table and the kit, each against a sum done another way.
final class TableWantsTest {
    private static final String CAMERA =
            "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], aim: hero, f_number: 8}";
    private static final String PAIR =
            "place: {hero: {thing: tall, at: [0 mm, 0 mm]}, other: {thing: can, at: [40 mm, 90 mm]}}";

    @Test
    void clear_ofTwoCylinders_isTheWayBetweenAxesLessBothRadii() {
        double clearance = Math.hypot(40, 90) - 21 - 33;
        assertThat(Wanted.margin(CAMERA, PAIR, "wants: [{clear: hero}]")).isEqualTo(clearance, within(1e-6));
        assertThat(Wanted.margin(CAMERA, PAIR, "wants: [{clear: hero, by: 10 mm}]"))
                .isEqualTo(clearance - 10, within(1e-6));
    }

    @Test
    void clear_ofBodiesInEachOther_isNegative() {
        String into = PAIR.replace("[40 mm, 90 mm]", "[40 mm, 0 mm]");
        assertThat(Wanted.margin(CAMERA, into, "wants: [{clear: all}]")).isEqualTo(40 - 54, within(1e-3));
    }

    @Test
    void clear_ofACarriedThing_isWhereItPassesNearest() {
        String passing = PAIR.replace("[0 mm, 0 mm]", "[-160 mm, 0 mm]");
        String carried = "moves: {slide: {machine: slider, carries: hero, by: [400 mm, 0 mm], in: 2 s, profile: even}}";
        List<Double> frames = IntStream.range(0, 49).asDoubleStream().boxed().toList();
        for (String named : List.of("hero", "other", "all")) {
            // A frame carries it 8 mm on: one of them stands at the other's x, 90 mm before it.
            assertThat(Wanted.margin(frames, CAMERA, passing, carried, "frames: 49", "wants: [{clear: " + named + "}]"))
                    .isEqualTo(90 - 54, within(0.2));
        }
    }

    @Test
    void clear_withOneMemory_isWhatItIsWithout() {
        String boxes = "place: {hero: {thing: box, at: [0 mm, 0 mm], turn: 20 deg},"
                + " other: {thing: flacon, at: [-30 mm, 90 mm], tilt: 15 deg}}";
        String thick = CAMERA.replace("fifty", "thick");
        String lamp = "lights: {key: {light: tubes, at: [300 mm, -200 mm, 200 mm], aim: hero}}";
        String slide = "moves: {slide: {machine: slider, by: [-80 mm, 0 mm], in: 2 s, profile: even}}";
        Plan plan = Wanted.plan(thick, boxes, lamp, slide, "frames: 49", "wants: [{clear: all}]");
        var stage = Wanted.stage(plan);
        Want want = Wanted.want(plan);
        Recall one = new Recall();
        double[] values = stage.startValues();
        for (int step = 0; step < 3 * values.length; step++) {
            values[step % values.length] += 0.001;
            List<Double> frames = List.of(0.0, 24.0, 48.0);
            assertThat(want.parts(new Moments(stage, values, frames, one)))
                    .containsExactly(want.parts(new Moments(stage, values, frames, new Recall())));
        }
    }

    @Test
    void clear_camera_isTheLensPointsWayToTheNearestSurface() {
        // The can's axis stands 690 mm deep, 40 mm aside; nothing but things is near: the table isn't counted.
        assertThat(Wanted.margin(CAMERA, PAIR, "wants: [{clear: camera}]")).isEqualTo(600 - 21, within(1e-6));
        String near = CAMERA.replace("-600 mm, 59 mm", "-60 mm, 59 mm");
        assertThat(Wanted.margin(near, PAIR, "wants: [{clear: camera, by: 5 mm}]"))
                .isEqualTo(60 - 21 - 5, within(1e-6));
    }

    @Test
    void clear_camera_countsTheBarrel_andSaysWhereItReachesBelowTheTable() {
        String camera = "camera: {body: main, lens: thick, at: [0 mm, -600 mm, 59 mm], aim: hero}";
        String beside = "place: {hero: {thing: tall, at: [0 mm, 0 mm]}, other: {thing: can, at: [100 mm, -660 mm]}}";
        assertThat(Wanted.margin(camera, beside, "wants: [{clear: camera}]")).isEqualTo(100 - 40 - 33, within(1e-6));
        assertThat(Wanted.caution(camera, beside, "wants: [{clear: camera}]")).isEmpty();
        assertThat(Wanted.caution(
                        camera.replace("59 mm]", "28 mm]").replace("aim: hero", "aim: ahead"),
                        beside,
                        "wants: [{clear: all}]"))
                .contains("The lens reaches 12 mm below the table's top, which this want doesn't count.");
    }

    @Test
    void clear_tank_isItsFivePanes_openAbove() {
        String tank = "tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}";
        String hung = "place: {hero: {thing: tall, at: [150 mm, 0 mm, 100 mm], lines: 1}}";
        assertThat(Wanted.margin(CAMERA, hung, tank, "wants: [{clear: tank}]")).isEqualTo(54, within(1e-6));
        assertThat(Wanted.margin(CAMERA, hung, tank, "wants: [{clear: all}]")).isEqualTo(54, within(1e-6));
        // A lamp wider than the tank hangs 700 − 600 − 308 mm over its rim: housing 1200 mm high about its middle.
        String lamp = "lights: {key: {light: strip, at: [0 mm, 30 mm, 1000 mm], turn: 90 deg}}";
        assertThat(Wanted.margin(CAMERA, hung, tank, lamp, "wants: [{clear: key}]"))
                .isEqualTo(1000 - 600 - 308, within(1e-6));
        assertThat(Wanted.never(CAMERA, hung, "wants: [{clear: tank}]")).contains("The shot has no tank.");
    }

    @Test
    void clear_countsLamps() {
        String lamp = "lights: {key: {light: strip, at: [0 mm, 150 mm, 700 mm], turn: 180 deg}}";
        // The housing is behind the face.
        String one = "place: {hero: {thing: tall, at: [0 mm, 0 mm]}}";
        assertThat(Wanted.margin(CAMERA, one, lamp, "wants: [{clear: hero}]")).isEqualTo(150 - 21, within(1e-6));
    }

    @Test
    void clear_inATank_isToItsWallsFromInside() {
        String tank = "tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}";
        String hung = "place: {hero: {thing: tall, at: [150 mm, 0 mm, 100 mm], lines: 1}}";
        // Inside 450 mm wide: 225 − 150 − 21; floor at 8 mm.
        assertThat(Wanted.margin(CAMERA, hung, tank, "wants: [{clear: hero}]")).isEqualTo(54, within(1e-6));
        String low = hung.replace("[150 mm, 0 mm, 100 mm]", "[0 mm, 0 mm, 20 mm]");
        assertThat(Wanted.margin(CAMERA, low, tank, "wants: [{clear: hero}]")).isEqualTo(12, within(1e-6));
    }

    @Test
    void clear_besideATank_isToItsOutside() {
        String tank = "tank: {tank: glass, at: [0 mm, 400 mm]}";
        String one = "place: {hero: {thing: tall, at: [0 mm, 0 mm]}}";
        // The tank's outer front is 400 − 150 − 8.
        assertThat(Wanted.margin(CAMERA, one, tank, "wants: [{clear: hero}]")).isEqualTo(242 - 21, within(1e-6));
    }

    @Test
    void reaches_countsFromTheSensorMark_byDefaultAnImageDistanceBehind() {
        double fromSensor = 600 + Plain.image(50, 600);
        assertThat(Wanted.margin(CAMERA, PAIR, "wants: [{reaches: camera}]")).isLessThan(fromSensor);
        String near = CAMERA.replace("-600", "-280");
        assertThat(focusMargin(near)).isEqualTo(280 + Plain.image(50, 280) - 350, within(1e-6));
        String measured = near.replace("f_number: 8", "f_number: 8, sensor_behind: 95 mm");
        assertThat(focusMargin(measured)).isEqualTo(280 + 95 - 350, within(1e-6));
    }

    /// Pulled from 600 mm to 300 mm the lens comes nearer than it focuses.
    @Test
    void reaches_countsWhereTheFocusIsPulledTo() {
        Plan plan = Wanted.plan(
                CAMERA,
                PAIR,
                "moves: {pull: {axis: focus, by: -300 mm, in: 1 s}}",
                "frames: 48",
                "wants: [{reaches: camera}]");
        var stage = Wanted.stage(plan);
        var moments = new Moments(stage, stage.startValues(), java.util.List.of(0.0, 47.0), new Recall());
        assertThat(Wanted.want(plan).parts(moments)[0]).isEqualTo(300 + Plain.image(50, 300) - 350, within(1e-6));
    }

    private static double focusMargin(String camera) {
        Plan plan = Wanted.plan(camera, PAIR, "wants: [{reaches: camera}]");
        var stage = Wanted.stage(plan);
        var moments = new Moments(stage, stage.startValues(), java.util.List.of(0.0), new Recall());
        return Wanted.want(plan).parts(moments)[0];
    }

    @Test
    void reaches_anFNumberOrAModeThatTheKitLacks_isALack() {
        String wants = "wants: [{reaches: camera}]";
        assertThat(Wanted.lack(CAMERA, PAIR, wants)).isEmpty();
        assertThat(Wanted.lack(CAMERA.replace("f_number: 8", "f_number: 1.4"), PAIR, wants)
                        .orElseThrow())
                .isEqualTo("fifty has f/2 to f/22, not f/1.4.");
        assertThat(Wanted.lack(CAMERA.replace("f_number: 8", "f_number: 8, rate: 60 fps"), PAIR, wants)
                        .orElseThrow())
                .isEqualTo("main has no mode of 60 fps; it has 24 fps, 120 fps.");
        assertThat(Wanted.lack(CAMERA.replace("f_number: 8", "f_number: 1.4, rate: 60 fps"), PAIR, wants)
                        .orElseThrow())
                .isEqualTo("fifty has f/2 to f/22, not f/1.4. main has no mode of 60 fps; it has 24 fps, 120 fps.");
        assertThat(Wanted.lack(CAMERA.replace("f_number: 8", "f_number: 8, rate: 120 fps"), PAIR, wants))
                .isEmpty();
    }

    @Test
    void reaches_beyondTheFNumbers_lacksWidthOfThePupil() {
        String wants = "wants: [{reaches: camera}]";
        double focus = 600 + Plain.image(50, 600) - 350;
        assertThat(Wanted.said(CAMERA, PAIR, wants)).isEqualTo(focus, within(1e-6));
        // Half a per cent past an engraved figure still counts as it.
        assertThat(Wanted.said(CAMERA.replace("f_number: 8", "f_number: 1.4"), PAIR, wants))
                .isEqualTo(50 / (2 * 0.995) - 50 / 1.4, within(1e-6));
        assertThat(Wanted.said(CAMERA.replace("f_number: 8", "f_number: 32"), PAIR, wants))
                .isEqualTo(50 / 32.0 - 50 / (22 * 1.005), within(1e-6));
        assertThat(Wanted.said(CAMERA.replace("f_number: 8", "f_number: 22.05"), PAIR, wants))
                .isEqualTo(focus, within(1e-6));
        assertThat(Wanted.said(CAMERA.replace("f_number: 8", "f_number: 8, rate: 60 fps"), PAIR, wants))
                .isZero();
        String near = CAMERA.replace("-600", "-280").replace("f_number: 8", "f_number: 8, rate: 60 fps");
        assertThat(Wanted.said(near, PAIR, wants)).isNegative();
    }

    @Test
    void reaches_ofALensWhoseNearestIsntTold_isUnknown() {
        String camera = CAMERA.replace("fifty", "thick");
        assertThat(Wanted.unknown(camera, PAIR, "wants: [{reaches: camera}]"))
                .contains("Not known: how near thick focuses. Give its `nearest`.");
        assertThat(Wanted.caution(camera, PAIR, "wants: [{reaches: camera}]"))
                .contains("Not checked, as the plan doesn't give them: thick's `f_numbers`.");
        assertThat(Wanted.unknown(CAMERA, PAIR, "wants: [{reaches: camera}]")).isEmpty();
    }

    @Test
    void clear_relaxed_isSaidInThePapersUnit() {
        for (PaperUnit papers : PaperUnit.values()) {
            Plan plan = Wanted.plan(CAMERA, PAIR, "wants: [{clear: hero}]");
            Clear clear = new Clear(
                    plan.shots().getFirst().wants().getFirst(),
                    List.of(new Air.Standing.Thing(0)),
                    0.0508,
                    java.util.Optional.empty(),
                    papers);
            assertThat(clear.listRelaxed(6.3, Wanted.start(plan)).getFirst().sentence())
                    .isEqualTo(
                            papers == PaperUnit.INCHES ? "by 1 3/4 in instead of 2 in." : "by 44 mm instead of 51 mm.");
        }
    }

    @Test
    void withoutAFact_theWantIsUnknownAndSaysWhich() {
        Plan plan = Wanted.plan(CAMERA, PAIR, "wants: [{sharp_enough: wide}]");
        assertThat(Wanted.want(plan).findUnknown())
                .contains("Not known: how many pixels wide has. Write its size: [1080 px, 1920 px].");
    }
}
