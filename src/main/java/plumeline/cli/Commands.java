package plumeline.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// Every command there is, and the pages that list them.
final class Commands {
    private Commands() {}

    /// All commands, in the order in which the help page lists them.
    static List<Command> listAll() {
        return List.of(new HelpCommand());
    }

    static Optional<Command> find(String name) {
        for (Command command : listAll()) {
            if (command.usage().name().equals(name)) {
                return Optional.of(command);
            }
        }
        return Optional.empty();
    }

    static Refusal unknown(String name) {
        var names = listAll().stream().map(command -> command.usage().name()).toList();
        return new Refusal(
                "there is no command " + name + "; there are " + String.join(", ", names),
                "Try plumeline " + nearest(name, names) + ".");
    }

    /// The help page.
    static String overview() {
        var text = new StringBuilder("plumeline: plans tabletop and product shots\n\n");
        for (Command command : listAll()) {
            Usage usage = command.usage();
            text.append("  ").append(usage.toLine()).append("\n      ").append(usage.summary());
            text.append('\n');
        }
        return text.append("  --version\n      Says which version this is.\n\n")
                .append("PLAN and FILE may be - for standard input.\n")
                .toString();
    }

    /// Pads to a column's width, with two spaces at least after a text that is longer.
    static String column(String text, int width) {
        return text + " ".repeat(Math.max(2, width - text.length()));
    }

    /// The word of the list that takes the fewest changed letters to get from the one given; the first of equals.
    static String nearest(String word, List<String> words) {
        String best = words.getFirst();
        int bestSteps = Integer.MAX_VALUE;
        for (String candidate : words) {
            int steps = steps(word, candidate);
            if (steps < bestSteps) {
                bestSteps = steps;
                best = candidate;
            }
        }
        return best;
    }

    private static int steps(String from, String to) {
        var row = new ArrayList<Integer>();
        for (int j = 0; j <= to.length(); j++) {
            row.add(j);
        }
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row.set(0, i);
            for (int j = 1; j <= to.length(); j++) {
                int changed = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                diagonal = row.get(j);
                row.set(j, Math.min(changed, Math.min(row.get(j), row.get(j - 1)) + 1));
            }
        }
        return row.getLast();
    }
}
