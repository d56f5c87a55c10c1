package plumeline.cli.ink;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import plumeline.cli.Main;
import plumeline.desk.Console;
import plumeline.desk.Outcome;

/// A plan with ink in a tank of a few hundred cells, and `ink` typed for it.
abstract class InkTyped {
    static final String PLAN = """
        plumeline: 1
        film: {title: Test, rate: 25 fps}
        things: {tin: {diameter: 40 mm, height: 60 mm, body: opaque}}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
          lenses: {fifty: {focal_length: 50 mm}}
          tanks: {glass: {inside: [120 mm, 100 mm, 200 mm], pane: 8 mm, temperature: 20 degC}}
          inks: {rose: {density: 1.06 g/ml, strength: 100 /cm}}
        shots:
          one:
            frames: 30
            camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 60 mm], aim: tin, rate: 50 fps}
            tank: {tank: glass, at: [0 mm, 0 mm], water: 160 mm}
            place: {tin: {thing: tin, at: [0 mm, 20 mm, 8 mm]}}
            release: {ink: rose, volume: 3 ml, bore: 4 mm, squeeze_time: 0.2 s, at: [0 mm, -20 mm, 150 mm]}
            wants:
              - {ink_reaches: tin, part: top, after: 0.6 s, within: 0.5 s}
              - {clear_until: tin, time: 0.01 s}
              - {veiled_by: tin, part: top, time: 1 s}
        """;

    @TempDir
    Path folder;

    Path plan = Path.of("");
    final ByteArrayOutputStream out = new ByteArrayOutputStream();
    final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @BeforeEach
    final void writePlan() throws IOException {
        plan = folder.resolve("film.yaml");
        Files.writeString(plan, PLAN);
    }

    final Outcome run(String... more) {
        return run(2, "1.2 s", more);
    }

    final Outcome run(int runs, String until, String... more) {
        List<String> words = new ArrayList<>(List.of("ink", plan.toString(), "one", "--cells", "15 mm"));
        words.addAll(List.of("--runs", "" + runs, "--until", until));
        words.addAll(List.of(more));
        return all(words);
    }

    final Outcome all(List<String> words) {
        out.reset();
        err.reset();
        return Main.run(words, console());
    }

    final Console console() {
        return new Console(new ByteArrayInputStream(new byte[0]), out, err);
    }

    final Path inks() throws IOException {
        try (var folders = Files.list(folder.resolve("film.ink"))) {
            return folders.findFirst().orElseThrow();
        }
    }

    final void checkRefused(String start, List<String> words) {
        assertThat(all(words)).isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8)).startsWith("plumeline: " + start);
        assertThat(out.size()).isZero();
    }
}
