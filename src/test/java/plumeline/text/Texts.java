package plumeline.text;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/// Texts for the tests of this package.
final class Texts {
    private Texts() {}

    static Document read(String text) {
        return Document.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml");
    }

    static Node root(String text) {
        Document document = read(text);
        if (!document.problems().isEmpty()) {
            throw new AssertionError(document.problems());
        }
        return document.findRoot().orElseThrow();
    }

    /// The example plan of the project; the tests run in the project's folder.
    static String example() {
        try {
            return Files.readString(Path.of(System.getProperty("plumeline.root", "."), "examples", "fernhollow.yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<String> said(List<Problem> problems) {
        return problems.stream().map(Problem::toText).toList();
    }
}
