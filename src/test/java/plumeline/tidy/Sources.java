package plumeline.tidy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/// The source files of the tree under test.
final class Sources {
    static final Path ROOT = Path.of(System.getProperty("basedir", "")).toAbsolutePath();
    static final Path MAIN = ROOT.resolve("src/main/java");
    static final Path TEST = ROOT.resolve("src/test/java");

    private Sources() {}

    /// A file's path from the root, and its lines.
    record Source(Path path, List<String> lines) {
        Source {
            lines = List.copyOf(lines);
        }

        String at(int line) {
            return ROOT.relativize(path) + ":" + line;
        }

        String name() {
            return String.valueOf(path.getFileName());
        }

        /// The room: the first folder under `plumeline`.
        String room() {
            String folder = folder();
            int slash = folder.indexOf('/');
            return slash < 0 ? folder : folder.substring(0, slash);
        }

        /// The package's folder under `plumeline`: a room's own, or one of its subjects' below it, `ask/water`.
        String folder() {
            String text = path.toString().replace('\\', '/');
            String inside = text.substring(text.indexOf("/java/plumeline/") + "/java/plumeline/".length());
            int slash = inside.lastIndexOf('/');
            return slash < 0 ? "" : inside.substring(0, slash);
        }

        String text() {
            return String.join("\n", lines);
        }
    }

    /// All Java files below a folder, in order of their names.
    static List<Source> list(Path folder) {
        try (var paths = Files.walk(folder)) {
            var sources = new ArrayList<Source>();
            for (Path path :
                    paths.filter(p -> p.toString().endsWith(".java")).sorted().toList()) {
                sources.add(new Source(path, Files.readAllLines(path)));
            }
            return sources;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Source> listAll() {
        var all = new ArrayList<>(list(MAIN));
        all.addAll(list(TEST));
        return all;
    }
}
