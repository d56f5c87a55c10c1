package plumeline.desk;

import java.util.List;
import java.util.Optional;

/// What a command takes: its name, a line on what it does, its plain arguments (how many at least and at most),
/// options, and whole lines to type as examples.
///
/// @param name its name as it is typed
/// @param summary a line on what it does
/// @param plain the plain arguments
/// @param least how many plain arguments at least
/// @param most how many plain arguments at most
/// @param options options
/// @param examples lines to type, without the program
public record Usage(
        String name, String summary, String plain, int least, int most, List<Option> options, List<String> examples) {
    /// A line that lists more options than this would not be read.
    private static final int MOST_LISTED = 6;

    /// An option; `value` names what follows it, and is empty for a bare flag.
    ///
    /// @param name its name as it is typed
    /// @param value what follows it, as the help page calls it
    /// @param summary a line on what it does
    /// @param takes what follows it
    public record Option(String name, String value, String summary, Takes takes) {
        /// Tells whether anything follows it.
        ///
        /// @return whether anything does
        public boolean takesValue() {
            return takes != Takes.NOTHING;
        }

        /// Writes it as it is typed.
        ///
        /// @return the text
        public String toText() {
            return takesValue() ? name + " " + value : name;
        }
    }

    /// What follows an option.
    public enum Takes {
        /// Nothing: a bare flag.
        NOTHING,
        /// The next word.
        WORD,
        /// All words up to the next option; may be given again.
        WORDS
    }

    /// Copies its lists.
    public Usage {
        options = List.copyOf(options);
        examples = List.copyOf(examples);
    }

    /// What a command takes, without examples.
    ///
    /// @param name its name as it is typed
    /// @param summary a line on what it does
    /// @param plain the plain arguments
    /// @param least how many plain arguments at least
    /// @param most how many plain arguments at most
    /// @param options options
    public Usage(String name, String summary, String plain, int least, int most, List<Option> options) {
        this(name, summary, plain, least, most, options, List.of());
    }

    /// Makes a bare flag.
    ///
    /// @param name its name as it is typed
    /// @param summary a line on what it does
    /// @return the option
    public static Option flag(String name, String summary) {
        return new Option(name, "", summary, Takes.NOTHING);
    }

    /// Makes an option that one word follows.
    ///
    /// @param name its name as it is typed
    /// @param value what follows it, as the help page calls it
    /// @param summary a line on what it does
    /// @return the option
    public static Option valued(String name, String value, String summary) {
        return new Option(name, value, summary, Takes.WORD);
    }

    /// Makes an option that words follow.
    ///
    /// @param name its name as it is typed
    /// @param value what follows it, as the help page calls it
    /// @param summary a line on what it does
    /// @return the option
    public static Option worded(String name, String value, String summary) {
        return new Option(name, value, summary, Takes.WORDS);
    }

    /// Finds an option by its name.
    ///
    /// @param name its name as it is typed
    /// @return the option; empty where the command has none of that name
    public Optional<Option> findOption(String name) {
        for (Option option : options) {
            if (option.name().equals(name)) {
                return Optional.of(option);
            }
        }
        return Optional.empty();
    }

    /// The line that is typed: `solve PLAN [--json] [--shot NAME]`.
    ///
    /// @return the line
    public String toLine() {
        var line = new StringBuilder(name);
        if (!plain.isEmpty()) {
            line.append(' ').append(plain);
        }
        if (options.size() > MOST_LISTED) {
            return line.append(" [OPTIONS]").toString();
        }
        for (Option option : options) {
            line.append(" [").append(option.toText()).append(']');
        }
        return line.toString();
    }

    /// The command's own help: the line, what it does, an option a line, examples.
    ///
    /// @return the text
    public String toText() {
        var text = new StringBuilder("plumeline ")
                .append(toLine())
                .append("\n  ")
                .append(summary)
                .append('\n');
        int width = options.stream()
                .mapToInt(option -> option.toText().length())
                .max()
                .orElse(0);
        for (Option option : options) {
            text.append("  ").append(Usage.column(option.toText(), Math.max(16, width + 2)));
            text.append(option.summary()).append('\n');
        }
        examples.forEach(
                example -> text.append("  $ ./plumeline ").append(example).append('\n'));
        return text.toString();
    }

    /// Pads to a column's width, with two spaces at least after a text that is longer.
    ///
    /// @param text what stands in the column
    /// @param width the column's width, letters
    /// @return the text and its spaces
    public static String column(String text, int width) {
        return text + " ".repeat(Math.max(2, width - text.length()));
    }
}
