package plumeline.pace;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.plan.Shot;
import plumeline.plan.When;
import plumeline.stage.Gauge;
import plumeline.stage.Stage;

/// Small plans and what wants on moves and time measure, for the tests of this room.
final class PacePlan {
    /// A can of 66 mm, 1 m before a lens of 100 mm: 3840/36 · 1/9 px a millimetre at its middle, 11.852.
    static final String PLAN = """
        plumeline: 1
        film: {rate: 24 fps}
        things: {can: {diameter: 66 mm, height: 122 mm, body: opaque, label: {width: 60 mm, height: 60 mm}}}
        kit:
          cameras:
            main:
              sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}
              modes: [{rate: 24 fps}, {rate: 48 fps}, {rate: 120 fps, bit_rate: 400 Mb/s},
                {rate: 240 fps, across: 1920 px, width: 18 mm}]
          lenses: {macro: {focal_length: 100 mm, nearest: 300 mm}}
          machines:
            slider: {travel: 600 mm, speed: 80 mm/s, acceleration: 200 mm/s2, repeats: 0.1 mm}
            plate: {speed: 12 rpm, acceleration: 90 deg/s2, repeats: 0.1 deg}
            head: {speed: 20 deg/s, acceleration: 40 deg/s2, repeats: 0.02 deg}
          pieces: {bean: {size: 10 mm, mass: 0.6 g}}
        shots:
          one:
            camera: {body: main, lens: macro, at: [0 mm, -1000 mm, 61 mm], aim: ahead, focus: hero, CAMERA}
            place: {hero: {thing: can, at: [0 mm, 0 mm], TURN}}
            MORE
            wants: [{WANT}]
        """;

    /// Pixels a millimetre at the can's middle.
    static final double PIXELS_PER_MM = 3840 / 36.0 / 9;

    private PacePlan() {}

    static String plan(String camera, String more, String want) {
        return plan(camera, "turn: 0 deg", more, want);
    }

    static String plan(String camera, String turn, String more, String want) {
        return PLAN.replace("CAMERA", camera)
                .replace("TURN", turn)
                .replace("MORE", more)
                .replace("WANT", want);
    }

    static Plan read(String text) {
        var reading = Plans.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml");
        assertThat(reading.problems()).isEmpty();
        return reading.plan().orElseThrow();
    }

    static Stage stage(Plan plan) {
        Shot shot = plan.shots().getFirst();
        return shot.passes().isEmpty()
                ? Stage.of(plan, shot)
                : Stage.of(plan, shot, shot.passes().getFirst().name());
    }

    static Gauge.Reading<Paced> reading(String text) {
        Plan plan = read(text);
        return PaceMeasures.of(plan.shots().getFirst().wants().getFirst(), plan, stage(plan));
    }

    static Gauge<Paced> gauge(String text) {
        return ((Gauge.Reading.Of<Paced>) reading(text)).gauge();
    }

    /// The shot at the want's instant, its first frame for a whole shot.
    static Paced paced(String text) {
        Plan plan = read(text);
        When when = plan.shots().getFirst().wants().getFirst().when();
        return at(text, stage(plan).frameOf(when));
    }

    static Paced at(String text, double frame) {
        Stage stage = stage(read(text));
        Stage.Laid laid = stage.laid(stage.startValues());
        return new Paced(stage, Arrays.stream(stage.startValues()).boxed().toList(), laid.scene(frame), laid);
    }

    static double margin(String text) {
        return Arrays.stream(gauge(text).parts(paced(text))).min().orElseThrow();
    }

    static String standing(String text) {
        return gauge(text).standing(paced(text));
    }
}
