package plumeline.stage;

import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.plan.Shot;
import plumeline.text.Problem;

/// Small plans staged, for the tests of this package.
final class Staged {
    private static final String HEAD = """
        plumeline: 1
        film: {rate: 24 fps}
        things:
          tin: {diameter: 76 mm, height: 96 mm}
          flacon: {profile: [[0 mm, 21 mm], [90 mm, 21 mm], [90 mm, 10 mm], [118 mm, 10 mm]]}
          box: {width: 60 mm, depth: 20 mm, height: 100 mm}
        kit:
          cameras:
            main:
              sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}
              modes: [{rate: 24 fps}, {rate: 240 fps, across: 1920 px},
                {rate: 100 fps, across: 1920 px, width: 18 mm}]
          lenses: {fifty: {focal_length: 50 mm}}
          lights: {strip: {panel: [300 mm, 1200 mm]}, tubes: {tube: [600 mm, 30 mm]}}
          machines:
            slider: {travel: 600 mm, speed: 80 mm/s, acceleration: 200 mm/s2, repeats: 0.1 mm}
            jerked: {speed: 200 mm/s, acceleration: 400 mm/s2, jerk: 800 mm/s3}
            plate: {speed: 12 rpm, repeats: 0.1 deg}
            head: {speed: 20 deg/s, repeats: 0.02 deg}
          tanks: {glass: {inside: [450 mm, 300 mm, 300 mm], pane: 8 mm}}
        shots:
          one:
        """;

    /// A level camera on the zero line, 600 mm before a tin at the zero mark.
    static final String CAMERA = "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 48 mm], aim: hero}";

    static final String HERO = "place: {hero: {thing: tin, at: [0 mm, 0 mm]}}";

    private Staged() {}

    /// Reads a plan with one shot of these lines.
    static Plan plan(String... lines) {
        String text = HEAD + "    " + String.join("\n    ", lines) + "\n";
        var reading = Plans.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml");
        return reading.plan()
                .orElseThrow(() -> new AssertionError(
                        reading.problems().stream().map(Problem::toText).collect(Collectors.joining("\n"))));
    }

    static Stage stage(String... lines) {
        Plan plan = plan(lines);
        return Stage.of(plan, plan.shots().getFirst());
    }

    static Stage pass(String pass, String... lines) {
        Plan plan = plan(lines);
        return Stage.of(plan, plan.shots().getFirst(), pass);
    }

    static Shot shot(Plan plan) {
        return plan.shots().getFirst();
    }

    static Scene start(String... lines) {
        return at(stage(lines), 0);
    }

    static Scene at(Stage stage, double frame) {
        return stage.scene(stage.startValues(), frame);
    }
}
