package plumeline.want;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.stage.Stage;
import plumeline.text.Problem;

/// Wants of small plans judged where the marks are, for the tests of this package.
final class Wanted {
    private static final String HEAD = """
        plumeline: 1
        film: {rate: 24 fps}
        deliver:
          wide: {ratio: "16:9"}
          phone: {ratio: "9:16", keep_out: {top: 14 %, bottom: 20 %, right: 12 %}}
          square: {ratio: "1:1"}
        things:
          can: {diameter: 66 mm, height: 122 mm}
          tall: {diameter: 42 mm, height: 118 mm, body: opaque}
          weighed: {diameter: 42 mm, height: 118 mm, mass: 197 g, displaces: 133.5 ml}
          floater: {diameter: 42 mm, height: 118 mm, mass: 120 g, displaces: 133.5 ml}
          light: {diameter: 42 mm, height: 118 mm, mass: 135 g, displaces: 133.5 ml}
          near: {diameter: 42 mm, height: 118 mm, mass: 135 g ± 2 g, displaces: 133.5 ml ± 0.5 ml}
          unpushed: {diameter: 42 mm, height: 118 mm, mass: 197 g}
          opened: {diameter: 42 mm, height: 118 mm, mass: 197 g, displaces: 133.5 ml, closed: no}
          unweighed: {diameter: 42 mm, height: 118 mm, displaces: 133.5 ml}
          glass: {diameter: 42 mm, height: 118 mm, body: clear}
          box: {width: 60 mm, depth: 20 mm, height: 100 mm}
          flacon: {profile: [[0 mm, 21 mm], [90 mm, 21 mm], [90 mm, 10 mm], [118 mm, 10 mm]]}
        kit:
          cameras:
            main:
              sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}
              modes: [{rate: 24 fps}, {rate: 120 fps}]
          lenses:
            fifty: {focal_length: 50 mm, nearest: 350 mm, f_numbers: [2, 22]}
            macro: {focal_length: 100 mm, nearest: 300 mm, f_numbers: [2.8, 32]}
            thick: {focal_length: 50 mm, barrel: {diameter: 80 mm, length: 120 mm}}
          lights: {strip: {panel: [300 mm, 1200 mm]}, tubes: {tube: [600 mm, 30 mm]}}
          machines: {slider: {travel: 900 mm, repeats: 0.1 mm}, head: {speed: 20 deg/s, repeats: 0.02 deg}}
          tanks: {glass: {inside: [450 mm, 300 mm, 300 mm], pane: 8 mm}}
        shots:
          one:
        """;

    private static final List<Double> ENDS = List.of(0.0);

    private Wanted() {}

    static Plan plan(String... lines) {
        return read(HEAD + "    " + String.join("\n    ", lines) + "\n");
    }

    static Plan read(String text) {
        var reading = Plans.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml");
        return reading.plan()
                .orElseThrow(() -> new AssertionError(
                        reading.problems().stream().map(Problem::toText).collect(Collectors.joining("\n"))));
    }

    static Want want(Plan plan) {
        return want(plan, (_, _, _) -> Optional.empty());
    }

    static Want want(Plan plan, Wants.Elsewhere elsewhere) {
        WantLine line = plan.shots().getFirst().wants().getFirst();
        return Wants.of(line, plan, stage(plan), elsewhere);
    }

    static Stage stage(Plan plan) {
        return Stage.of(plan, plan.shots().getFirst());
    }

    /// The margin of the first want of a shot of these lines, marks as written.
    static double margin(String... lines) {
        Plan plan = plan(lines);
        return least(plan, want(plan), ENDS);
    }

    /// The same over some frames of a moving shot.
    static double margin(List<Double> frames, String... lines) {
        Plan plan = plan(lines);
        return least(plan, want(plan), frames);
    }

    static double least(Plan plan, Want want, List<Double> frames) {
        Stage stage = stage(plan);
        Moments moments = new Moments(stage, stage.startValues(), frames, new Recall());
        return Arrays.stream(want.parts(moments)).min().orElseThrow();
    }

    static Optional<String> lack(String... lines) {
        Plan plan = plan(lines);
        Stage stage = stage(plan);
        return want(plan).findLack(new Moments(stage, stage.startValues(), ENDS, new Recall()));
    }

    static Optional<String> caution(String... lines) {
        Plan plan = plan(lines);
        return want(plan).findCaution(start(plan));
    }

    /// Why the first want is unknown whatever the marks.
    static Optional<String> never(String... lines) {
        return want(plan(lines)).findUnknown();
    }

    /// Why the first want is unknown with the marks as written.
    static Optional<String> unknown(String... lines) {
        Plan plan = plan(lines);
        return want(plan).findUnknown(start(plan));
    }

    static Optional<String> standing(PaperUnit papers, String... lines) {
        Plan plan = plan(lines);
        return want(plan).findStanding(start(plan), papers);
    }

    /// The margin that is said of the first want, which may be less than all its parts'.
    static double said(String... lines) {
        Plan plan = plan(lines);
        Want want = want(plan);
        return want.margin(want.parts(start(plan)));
    }

    static Moments start(Plan plan) {
        Stage stage = stage(plan);
        return new Moments(stage, stage.startValues(), ENDS, new Recall());
    }

    static String[] with(String[] lines, String more) {
        List<String> all = new ArrayList<>(List.of(lines));
        all.add(more);
        return all.toArray(String[]::new);
    }
}
