package plumeline.plume;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import plumeline.flow.Dye;
import plumeline.flow.Grid;
import plumeline.flow.Workers;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.stage.Stage;
import plumeline.text.Problem;

/// Small plans with ink, for the tests of this package.
final class Poured {
    static final String TANK = "tank: {tank: glass, at: [0 mm, 0 mm], water: 160 mm}";
    static final String CAMERA =
            "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 60 mm], aim: tin, rate: 50 fps}";
    static final String PLACE = "place: {tin: {thing: tin, at: [0 mm, 20 mm, 8 mm]}}";
    static final String RELEASE =
            "release: {ink: rose, volume: 3 ml, bore: 4 mm, squeeze_time: 0.2 s, at: [0 mm, -5 mm, 150 mm],"
                    + " start: 0.1 s}";

    private static final String HEAD = """
        plumeline: 1
        film: {rate: 25 fps}
        things:
          tin: {diameter: 40 mm, height: 60 mm, body: opaque}
          sheet: {width: 40 mm, depth: 2 mm, height: 50 mm}
          brick: {width: 40 mm, depth: 20 mm, height: 50 mm}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
          lenses: {fifty: {focal_length: 50 mm}}
          machines: {slider: {travel: 600 mm, speed: 800 mm/s}}
          tanks:
            glass: {inside: [120 mm, 100 mm, 200 mm], pane: 8 mm, temperature: 20 degC}
            brine: {inside: [120 mm, 100 mm, 200 mm], pane: 8 mm, temperature: 20 degC, salt: 5 %}
            hot: {inside: [120 mm, 100 mm, 200 mm], pane: 8 mm, temperature: 41 degC}
            hot_brine: {inside: [120 mm, 100 mm, 200 mm], pane: 8 mm, temperature: 41 degC, salt: 3 %}
            hot_weighed: {inside: [120 mm, 100 mm, 200 mm], pane: 8 mm, temperature: 41 degC, density: 1.01 g/ml}
          inks:
            rose: {density: 1.06 g/ml, strength: 100 /cm}
            unknown: {density: 1.06 g/ml}
            unweighed: {strength: 100 /cm}
            loose: {density: 1.06 g/ml ± 0.008 g/ml, strength: 100 /cm}
            syrup: {density: 1.3 g/ml}
        shots:
          one:
            frames: 30
        """;

    private Poured() {}

    static Stage stage(String... lines) {
        String text = HEAD + "    " + String.join("\n    ", lines) + "\n";
        var reading = Plans.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml");
        Plan plan = reading.plan()
                .orElseThrow(() -> new AssertionError(
                        reading.problems().stream().map(Problem::toText).collect(Collectors.joining("\n"))));
        return Stage.of(plan, plan.shots().getFirst());
    }

    static Stage stage() {
        return stage(CAMERA, TANK, PLACE, RELEASE);
    }

    static InkReading read(String... lines) {
        Stage stage = stage(lines);
        return InkShots.read(stage, stage.startValues());
    }

    static InkShot shot(Stage stage) {
        return ((InkReading.Ready) InkShots.read(stage, stage.startValues())).shot();
    }

    static InkRun.Task task(int run) {
        return tries(stage(), new InkCourse(0.01, 1, new InkCourse.Until.Time(0.6)))
                .task(run);
    }

    static InkTries tries(Stage stage, InkCourse course) {
        List<Double> values = Arrays.stream(stage.startValues()).boxed().toList();
        return new InkTries(stage, values, shot(stage), course);
    }

    /// A whole run's film.
    static byte[] film(InkRun.Task task, Workers workers) {
        var bytes = new ByteArrayOutputStream();
        bytes.writeBytes(task.head().toBytes());
        InkRun run = InkRun.start(task, workers);
        while (!run.isOver()) {
            bytes.writeBytes(run.next().toBytes());
        }
        bytes.writeBytes(DyeFilm.end(run.frames()));
        return bytes.toByteArray();
    }

    static DyeFilm read(byte[] film) throws IOException {
        return DyeFilm.read(source(film)).orElseThrow();
    }

    /// Bytes in memory.
    static DyeFilm.Source source(byte[] bytes) {
        return new DyeFilm.Source() {
            @Override
            public long size() {
                return bytes.length;
            }

            @Override
            public ByteBuffer read(long at, int length) {
                return ByteBuffer.wrap(Arrays.copyOfRange(bytes, (int) at, (int) at + length));
            }
        };
    }

    /// A record of so many runs.
    static InkRecord record(Stage stage, int runs) throws IOException {
        InkShot shot = shot(stage);
        Viewing viewing = Viewing.of(stage, stage.startValues(), shot);
        List<InkRecord.Run> all = new ArrayList<>();
        for (int run = 1; run <= runs; run++) {
            all.add(viewing.look(read(film(task(run), Workers.alone()))));
        }
        return new InkRecord(InkRecord.Head.of(shot, task(1).course(), viewing), viewing.subjects(), all);
    }

    /// A frame with the same share in every cell, or in those only that a test picks.
    static DyeFrame frame(int number, Grid grid, java.util.function.IntPredicate where, float share) {
        float[] shares = new float[grid.nx() * grid.ny() * grid.nz()];
        IntStream.range(0, shares.length).filter(where).forEach(n -> shares[n] = share);
        return DyeFrame.of(number, Dye.of(grid, shares));
    }
}
