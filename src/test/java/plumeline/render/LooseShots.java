package plumeline.render;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import plumeline.flow.Workers;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.plume.DyeFilm;
import plumeline.plume.InkCourse;
import plumeline.plume.InkReading;
import plumeline.plume.InkRun;
import plumeline.plume.InkShots;
import plumeline.plume.InkTries;
import plumeline.stage.Stage;
import plumeline.text.Problem;

/// Small shots with something let go, for the tests of this package.
final class LooseShots {
    static final String CAMERA =
            "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 60 mm], aim: tin, rate: 50 fps}";
    static final String TANK = "tank: {tank: glass, at: [0 mm, 0 mm], water: 160 mm}";
    static final String TIN = "place: {tin: {thing: tin, at: [0 mm, 20 mm, 8 mm]}}";
    static final String INK = "release: {ink: rose, volume: 3 ml, bore: 4 mm, squeeze_time: 0.2 s,"
            + " at: [0 mm, -5 mm, 150 mm], start: 0.1 s}";

    private static final String HEAD = """
        plumeline: 1
        film: {rate: 25 fps}
        things: {tin: {diameter: 40 mm, height: 60 mm, body: opaque, mass: 40 g}}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
          lenses: {fifty: {focal_length: 50 mm}}
          tanks: {glass: {inside: [120 mm, 100 mm, 200 mm], pane: 8 mm, temperature: 20 degC}}
          inks:
            rose: {density: 1.06 g/ml, strength: 100 /cm, hue: 345 deg}
            plain: {density: 1.06 g/ml}
            green: {density: 1.03 g/ml, colour: "#20c040", front: [[0.40 s, 70 mm], [1.90 s, 188 mm]], spread: 0.20}
            heavy: {density: 1.03 g/ml, strength: 100 /cm}
          pieces:
            bead: {size: 4 mm, density: 2.5 g/ml, hue: 95 deg}
            die: {size: 6 mm, density: 1.2 g/ml, shape: cube}
            petal: {size: 8 mm, mass: 0.02 g, shape: disc}
            cork: {size: 5 mm, density: 0.3 g/ml}
        shots:
          one:
            frames: 60
        """;

    private LooseShots() {}

    static Stage stage(String... lines) {
        return stageOf(HEAD + "    " + String.join("\n    ", lines) + "\n", "one");
    }

    static Stage stageOf(String text, String shot) {
        var reading = Plans.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml");
        Plan plan = reading.plan()
                .orElseThrow(() -> new AssertionError(
                        reading.problems().stream().map(Problem::toText).collect(Collectors.joining("\n"))));
        return Stage.of(
                plan,
                plan.shots().stream()
                        .filter(each -> each.name().equals(shot))
                        .findFirst()
                        .orElseThrow());
    }

    /// What a simulation of coarse cells gives, 0.6 s of it.
    static DyeFilm film(Stage stage) throws IOException {
        var ink = ((InkReading.Ready) InkShots.read(stage, stage.startValues())).shot();
        var course = new InkCourse(0.01, 1, new InkCourse.Until.Time(0.6));
        var values = Arrays.stream(stage.startValues()).boxed().toList();
        InkRun.Task task = new InkTries(stage, values, ink, course).task(1);
        var out = new ByteArrayOutputStream();
        out.writeBytes(task.head().toBytes());
        InkRun run = InkRun.start(task, Workers.alone());
        while (!run.isOver()) {
            out.writeBytes(run.next().toBytes());
        }
        out.writeBytes(DyeFilm.end(run.frames()));
        byte[] bytes = out.toByteArray();
        return DyeFilm.read(new DyeFilm.Source() {
                    @Override
                    public long size() {
                        return bytes.length;
                    }

                    @Override
                    public ByteBuffer read(long at, int length) {
                        return ByteBuffer.wrap(Arrays.copyOfRange(bytes, (int) at, (int) at + length));
                    }
                })
                .orElseThrow();
    }

    static InkClouds law(Stage stage) {
        return InkClouds.of(stage, stage.startValues(), Props.NONE);
    }

    static Props props(DyeFilm film) {
        return new Props(java.util.Map.of(), Optional.of(film));
    }
}
