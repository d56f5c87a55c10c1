package plumeline.plan;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import plumeline.text.Problem;

/// Plan texts for the tests of this package.
final class Texts {
    static final Path EXAMPLE = Path.of("examples/fernhollow.yaml");
    static final Path PLANS = Path.of("src/test/resources/plans");

    /// A plan that reads, with a place for more keys of the shot at its end.
    static final String SMALL = """
        plumeline: 1
        film: {rate: 24 fps}
        things:
          tin: {diameter: 76 mm, height: 96 mm}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
          lenses: {fifty: {focal_length: 50 mm}}
          lights: {strip: {panel: [300 mm, 1200 mm]}}
          machines:
            slider: {travel: 600 mm, repeats: 0.1 mm}
            plate: {speed: 12 rpm, repeats: 0.2 deg}
            bare: {travel: 600 mm}
        shots:
          one:
            camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], aim: hero}
            place: {hero: {thing: tin, at: [0 mm, 0 mm]}}
        """;

    private Texts() {}

    static String text(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Path> list(String folder) {
        try (var paths = Files.list(PLANS.resolve(folder))) {
            return paths.sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Plans.Reading read(String text) {
        return Plans.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml");
    }

    static Plan plan(String text) {
        var reading = read(text);
        if (!reading.problems().isEmpty()) {
            throw new AssertionError(String.join(
                    "\n", reading.problems().stream().map(Problem::toText).toList()));
        }
        return reading.plan().orElseThrow();
    }

    static Plan example() {
        return plan(text(EXAMPLE));
    }

    /// Adds lines to the only shot of the small plan.
    static String adding(String... lines) {
        return SMALL + "    " + String.join("\n    ", lines) + "\n";
    }

    /// Replaces text that must be there.
    static String replacing(String before, String after) {
        if (!SMALL.contains(before)) throw new AssertionError(before);
        return SMALL.replace(before, after);
    }

    static Shot shot(String text) {
        return plan(text).shots().getFirst();
    }
}
