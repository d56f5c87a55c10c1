package plumeline.cli;

import java.util.List;
import java.util.Optional;

/// What a command takes: its name, a line on what it does, its plain arguments (how many at least and at most) and
/// options.
record Usage(String name, String summary, String plain, int least, int most, List<Option> options) {
    /// An option; `value` names what follows it, and is empty for a bare flag.
    record Option(String name, String value, String summary) {
        boolean takesValue() {
            return !value.isEmpty();
        }

        String toText() {
            return takesValue() ? name + " " + value : name;
        }
    }

    Usage {
        options = List.copyOf(options);
    }

    static Option flag(String name, String summary) {
        return new Option(name, "", summary);
    }

    static Option valued(String name, String value, String summary) {
        return new Option(name, value, summary);
    }

    Optional<Option> findOption(String name) {
        for (Option option : options) {
            if (option.name().equals(name)) {
                return Optional.of(option);
            }
        }
        return Optional.empty();
    }

    /// The line that is typed: `solve PLAN [--json] [--shot NAME]`.
    String toLine() {
        var line = new StringBuilder(name);
        if (!plain.isEmpty()) {
            line.append(' ').append(plain);
        }
        for (Option option : options) {
            line.append(" [").append(option.toText()).append(']');
        }
        return line.toString();
    }

    /// The command's own help: the line, what it does, an option a line.
    String toText() {
        var text = new StringBuilder("plumeline ")
                .append(toLine())
                .append("\n  ")
                .append(summary)
                .append('\n');
        for (Option option : options) {
            text.append("  ").append(Commands.column(option.toText(), 16));
            text.append(option.summary()).append('\n');
        }
        return text.toString();
    }
}
