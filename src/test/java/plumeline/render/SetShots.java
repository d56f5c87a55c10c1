package plumeline.render;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import plumeline.jobs.Jobs;
import plumeline.jobs.Stop;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.plan.Shot;
import plumeline.scenery.Art;
import plumeline.solve.Solve;
import plumeline.stage.Frame;
import plumeline.stage.Stage;
import plumeline.text.Problem;
import plumeline.trace.Exposing;
import plumeline.trace.Plate;

/// Plans and pictures for the tests of this package.
final class SetShots {
    /// A shot of one thing, `hero`, 600 mm before the lens; `THINGS`, `KIT` and `SHOT` are put in.
    private static final String ONE = """
        plumeline: 1
        film: {rate: 25 fps}
        things:
          tin: {THINGS}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 24 mm, across: 3600 px}, iso: {base: 800}}}
          lenses: {fifty: {focal_length: 50 mm}}
          KIT
        shots:
          one:
            camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 40 mm], aim: ahead, f_number: 8}
            place: {hero: {thing: tin, at: [0 mm, 0 mm]}}
            SHOT
            frames: 10
        """;

    private SetShots() {}

    static Plan plan(String text) {
        var reading = Plans.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml");
        return reading.plan()
                .orElseThrow(() -> new AssertionError(
                        reading.problems().stream().map(Problem::toText).collect(Collectors.joining("\n"))));
    }

    static ShotSet one(String things, String kit, String shot, Map<String, Art> art) {
        return set(ONE.replace("THINGS", things).replace("KIT", kit).replace("SHOT", shot), art);
    }

    private static ShotSet set(String text, Map<String, Art> art) {
        Plan plan = plan(text);
        Stage stage = Stage.of(plan, plan.shots().getFirst());
        return ShotSet.of(plan, stage, stage.startValues(), new Props(art, Optional.empty()));
    }

    /// The same, the shot's own `place` instead, if it has one.
    static ShotSet placed(String things, String kit, String shot, Map<String, Art> art) {
        String text =
                shot.contains("place:") ? ONE.replace("place: {hero: {thing: tin, at: [0 mm, 0 mm]}}\n    ", "") : ONE;
        return set(text.replace("THINGS", things).replace("KIT", kit).replace("SHOT", shot), art);
    }

    static ShotSet placed(String things, String kit, String shot) {
        return placed(things, kit, shot, Map.of());
    }

    static ShotSet one(String things, String kit, String shot) {
        return one(things, kit, shot, Map.of());
    }

    /// A shot of the example, solved.
    static ShotSet example(String name) throws IOException {
        Plan plan = plan(Files.readString(Path.of("examples/fernhollow.yaml")));
        Shot shot = plan.findShot(name).orElseThrow();
        double[] values = shot.marks().stream().anyMatch(mark -> mark.isFree())
                ? Solve.film(plan, List.of(name), List.of())
                        .shots()
                        .getFirst()
                        .posed()
                        .values()
                : Stage.of(plan, shot).startValues();
        return ShotSet.of(plan, Stage.of(plan, shot), values, Props.NONE);
    }

    static Plate draft(ShotSet set, int width, int height) throws IOException {
        return exposed(set, width, height, 1, 2);
    }

    static Plate exposed(ShotSet set, int width, int height, int samples, int threads) throws IOException {
        Plate plate = new Plate(width, height);
        Window window = new Window(Frame.WHOLE, width, height);
        Render.expose(
                Render.instants(set, 0, set.shutterSeconds(), samples, window),
                plate,
                new Exposing.Rays(0, samples, samples, 7),
                Jobs.Threads.each(threads),
                share -> {},
                new Stop());
        return plate;
    }
}
