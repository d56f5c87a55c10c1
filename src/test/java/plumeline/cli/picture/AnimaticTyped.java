package plumeline.cli.picture;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import plumeline.cli.Main;
import plumeline.desk.Console;
import plumeline.desk.Outcome;

/// A short film of all that a cut may do, and `animatic` typed for it.
abstract class AnimaticTyped {
    static final String PLAN = """
        plumeline: 1
        film: {rate: 24 fps, title: Held and turned}
        deliver:
          wide: {ratio: "16:9"}
          phone: {ratio: "9:16", keep_out: {bottom: 20 %}}
          plain: {ratio: "16:9", textless: yes}
          short: {ratio: "1:1", cut: [{shot: turned, frames: 7}]}
        things: {can: {diameter: 60 mm, height: 110 mm, body: opaque, reflects: 40 %}}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
          lenses: {fifty: {focal_length: 50 mm}}
          machines: {slider: {travel: 900 mm, speed: 900 mm/s, acceleration: 9000 mm/s2}}
        shots:
          held:
            camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], aim: ahead, focus: 600 mm, rate: 48 fps}
            place: {can: {thing: can, at: [0 mm, 0 mm]}}
            moves: {slide: {machine: slider, by: [100 mm, 0 mm], in: 2 s}}
            speed: [[0 frames, 100 %], [10 frames, 0 %], [16 frames, 0 %], [20 frames, -100 %]]
          looks:
            camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], aim: ahead, focus: 600 mm, rate: 120 fps}
            place: {can: {thing: can, at: [0 mm, 0 mm]}}
            moves: {slide: {machine: slider, by: [100 mm, 0 mm], in: 2 s}}
            speed: 20 %
            passes: {a: {}, b: {camera.f_number: 4}}
          turned:
            camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], aim: ahead, focus: 600 mm, rate: 24 fps}
            place: {can: {thing: can, at: [0 mm, 0 mm]}}
        titles: {turned: {en: Held and turned, de: Gehalten}}
        cut:
          - {shot: held, frames: 26}
          - {shot: looks, frames: 14, alternate: [a, b], each: 6, from: 3}
          - {shot: turned, frames: 10, reframe: {wide: [{at: 0 frames}, {at: 9 frames, scale: 150 %, turn: 10 deg}]}}
        """;

    @TempDir
    Path folder;

    Path plan = Path.of("");
    final ByteArrayOutputStream out = new ByteArrayOutputStream();
    final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @BeforeEach
    final void writePlan() throws IOException {
        plan = Files.writeString(folder.resolve("film.yaml"), PLAN);
    }

    static List<String> words(Path plan, String... more) {
        List<String> words = new ArrayList<>(List.of("animatic", plan.toString(), "--samples", "1"));
        words.addAll(List.of(more));
        return words;
    }

    final Outcome run(String... more) {
        return all(words(plan, more));
    }

    final Outcome all(List<String> words) {
        out.reset();
        err.reset();
        return Main.run(words, new Console(new ByteArrayInputStream(new byte[0]), out, err));
    }

    final String said() {
        return err.toString(UTF_8);
    }

    /// What lies in a folder whose name ends so.
    static List<Path> files(Path folder, String ending) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(file -> file.toString().endsWith(ending)).sorted().toList();
        }
    }
}
