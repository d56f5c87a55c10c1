package plumeline.text;

import java.util.List;
import java.util.Optional;

/// A text read into a tree, with everything that is wrong with the text itself.
public final class Document {
    private final String file;
    private final String text;
    private final List<Node> root;
    private final List<Problem> problems;

    Document(String file, String text, List<Node> root, List<Problem> problems) {
        this.file = file;
        this.text = text;
        this.root = root;
        this.problems = List.copyOf(problems);
    }

    /// What to do with `true`, `false` and `null`.
    public enum Mode {
        /// Each is a problem that says what to write instead, as plans and questions want it.
        REFUSE_TRUE_AND_NULL,
        /// Each is a scalar with that text.
        KEEP_TRUE_AND_NULL
    }

    /// Reads YAML or JSON. Never throws on bad input and never takes long: a text beyond 1 MiB, 40 levels or 50,000
    /// nodes is refused.
    ///
    /// @param bytes the text in UTF-8
    /// @param file its name, as messages say it
    /// @return the tree, where there is one, and all problems of the text
    public static Document read(byte[] bytes, String file) {
        return read(bytes, file, Mode.REFUSE_TRUE_AND_NULL);
    }

    /// Reads YAML or JSON, with a choice of what `true`, `false` and `null` are.
    ///
    /// @param bytes the text in UTF-8
    /// @param file its name, as messages say it
    /// @param mode what to do with `true`, `false` and `null`
    /// @return the tree, where there is one, and all problems of the text
    public static Document read(byte[] bytes, String file, Mode mode) {
        return new DocumentReader(bytes, file, mode).read();
    }

    /// Gives the name it was read under.
    ///
    /// @return the file's name
    public String file() {
        return file;
    }

    /// Gives the decoded text, a byte order mark included. Places are offsets into it.
    ///
    /// @return the text; empty where the bytes were no text
    public String text() {
        return text;
    }

    /// Gives the tree, where the text could be read to its end.
    ///
    /// @return the root
    public Optional<Node> findRoot() {
        return root.isEmpty() ? Optional.empty() : Optional.of(root.getFirst());
    }

    /// Lists all that is wrong with the text itself, in the order of the text.
    ///
    /// @return the problems; none where the text is well-formed
    public List<Problem> problems() {
        return problems;
    }
}
