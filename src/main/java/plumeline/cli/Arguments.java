package plumeline.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/// The arguments after a command's name, sorted into plain ones and options. `-` alone is a plain argument (standard
/// input); after `--` everything is. A value follows its option as the next word or after `=`.
record Arguments(List<String> plain, Map<String, String> options) {
    Arguments {
        plain = List.copyOf(plain);
        options = Map.copyOf(options);
    }

    boolean has(String option) {
        return options.containsKey(option);
    }

    Optional<String> findValue(String option) {
        return Optional.ofNullable(options.get(option));
    }

    static Arguments read(Usage usage, List<String> words) throws Refusal {
        var plain = new ArrayList<String>();
        var options = new TreeMap<String, String>();
        boolean optionsOver = false;
        for (int i = 0; i < words.size(); i++) {
            String word = words.get(i);
            if (optionsOver || word.equals("-") || !word.startsWith("-")) {
                plain.add(word);
            } else if (word.equals("--")) {
                optionsOver = true;
            } else {
                i += readOption(usage, words, i, options);
            }
        }
        checkCount(usage, plain);
        return new Arguments(plain, options);
    }

    /// Reads the option at an index; returns how many words more than itself it took.
    private static int readOption(Usage usage, List<String> words, int index, Map<String, String> options)
            throws Refusal {
        String word = words.get(index);
        int equals = word.indexOf('=');
        String name = equals < 0 ? word : word.substring(0, equals);
        var found = usage.findOption(name);
        if (found.isEmpty()) {
            throw unknownOption(usage, name);
        }
        boolean takesValue = found.get().takesValue();
        if (!takesValue && equals >= 0) {
            throw new Refusal(name + " takes no value", "Give " + name + " alone.");
        }
        if (takesValue && equals < 0 && index + 1 == words.size()) {
            throw new Refusal(name + " has no value", "Give " + found.get().toText() + ".");
        }
        boolean valueIsNext = takesValue && equals < 0;
        String value = valueIsNext ? words.get(index + 1) : word.substring(equals + 1);
        if (options.put(name, takesValue ? value : "") != null) {
            throw new Refusal(name + " is given twice", "Give it once.");
        }
        return valueIsNext ? 1 : 0;
    }

    private static Refusal unknownOption(Usage usage, String name) {
        if (usage.options().isEmpty()) {
            return new Refusal(usage.name() + " has no option " + name, "Leave it out.");
        }
        var names = usage.options().stream().map(Usage.Option::name).toList();
        return new Refusal(
                usage.name() + " has no option " + name + "; it has " + String.join(", ", names),
                Commands.attempt("", name, names, "Type: plumeline help " + usage.name()));
    }

    private static void checkCount(Usage usage, List<String> plain) throws Refusal {
        if (plain.size() < usage.least()) {
            throw new Refusal(usage.name() + " needs " + usage.plain(), "Type: plumeline " + usage.toLine());
        }
        if (plain.size() > usage.most()) {
            throw new Refusal(
                    usage.name() + " was given too much: " + plain.get(usage.most()),
                    "Type: plumeline " + usage.toLine());
        }
    }
}
