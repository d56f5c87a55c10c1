package plumeline.cut.mask;

import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Stage;
import plumeline.text.Problem;

/// Small plans with something that hangs or is held, for the tests of this package.
final class Held {
    private static final String HEAD = """
        plumeline: 1
        film: {rate: 24 fps}
        things:
          flacon: {diameter: 42 mm, height: 118 mm}
        kit:
          cameras:
            main:
              sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}
              modes: [{rate: 24 fps}, {rate: 120 fps}, {rate: 240 fps, across: 1920 px, width: 18 mm}]
          lenses: {fifty: {focal_length: 50 mm}, macro: {focal_length: 100 mm}}
          machines:
            slider: {acceleration: 200 mm/s2, triggered: yes, repeats: 0.1 mm}
            loose: {acceleration: 200 mm/s2}
            plate: {speed: 60 rpm, triggered: yes}
            free: {triggered: yes}
            round: {triggered: yes}
            head: {speed: 90 deg/s, triggered: yes, repeats: 0.02 deg}
          tanks: {glass: {inside: [450 mm, 300 mm, 300 mm], pane: 8 mm}}
        shots:
          one:
        """;

    private Held() {}

    static Plan plan(String... lines) {
        return planWith("", "", lines);
    }

    /// The same with something else in its head.
    static Plan planWith(String given, String changed, String... lines) {
        String head = given.isEmpty() ? HEAD : HEAD.replace(given, changed);
        String text = head + "    " + String.join("\n    ", lines) + "\ncut:\n  - {shot: one, frames: 48}\n";
        var reading = Plans.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml");
        return reading.plan()
                .orElseThrow(() -> new AssertionError(
                        reading.problems().stream().map(Problem::toText).collect(Collectors.joining("\n")) + text));
    }

    static Masked masked(Plan plan) {
        Stage stage = Stage.of(plan, plan.shots().getFirst());
        return new Masked(
                "one",
                new ShotAnswer.Run("", stage),
                stage.startValues(),
                plan.film().rate());
    }

    static Masked masked(String... lines) {
        return masked(plan(lines));
    }
}
