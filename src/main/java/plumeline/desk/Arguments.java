package plumeline.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/// The arguments after a command's name, sorted into plain ones and options. `-` alone is a plain argument (standard
/// input); after `--` everything is. A value follows its option as the next word or after `=`; where an option takes
/// words, all that come before the next one that begins with `--` are its value, joined by spaces.
///
/// @param plain the plain arguments
/// @param options each option's values by its name
public record Arguments(List<String> plain, Map<String, List<String>> options) {
    /// Copies what it holds.
    public Arguments {
        plain = List.copyOf(plain);
        options = Map.copyOf(options);
    }

    /// Tells whether an option was given.
    ///
    /// @param option the option, with its hyphens
    /// @return whether it was
    public boolean has(String option) {
        return options.containsKey(option);
    }

    /// Finds an option's value.
    ///
    /// @param option the option, with its hyphens
    /// @return its first value; empty where it was not given
    public Optional<String> findValue(String option) {
        return listValues(option).stream().findFirst();
    }

    /// The values of an option that may be given again, in the order given.
    ///
    /// @param option the option, with its hyphens
    /// @return the values; none where it was not given
    public List<String> listValues(String option) {
        return options.getOrDefault(option, List.of());
    }

    /// Sorts words by what a command takes.
    ///
    /// @param usage what the command takes
    /// @param words the words after the command's name
    /// @return the arguments
    /// @throws Refusal where what was typed or what was read is at fault
    public static Arguments read(Usage usage, List<String> words) throws Refusal {
        var plain = new ArrayList<String>();
        var options = new TreeMap<String, List<String>>();
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
    private static int readOption(Usage usage, List<String> words, int index, Map<String, List<String>> options)
            throws Refusal {
        String word = words.get(index);
        int equals = word.indexOf('=');
        String name = equals < 0 ? word : word.substring(0, equals);
        var found = usage.findOption(name);
        if (found.isEmpty()) {
            throw unknownOption(usage, name);
        }
        Usage.Takes takes = found.get().takes();
        if (takes == Usage.Takes.NOTHING && equals >= 0) {
            throw new Refusal(name + " takes no value", "Give " + name + " alone.");
        }
        int taken = equals >= 0 ? 0 : count(takes, words, index + 1);
        if (found.get().takesValue() && equals < 0 && taken == 0) {
            throw new Refusal(name + " has no value", "Give " + found.get().toText() + ".");
        }
        String value = equals >= 0
                ? word.substring(equals + 1)
                : String.join(" ", words.subList(index + 1, index + 1 + taken));
        List<String> values = options.computeIfAbsent(name, _ -> new ArrayList<>());
        if (!values.isEmpty() && takes != Usage.Takes.WORDS) {
            throw new Refusal(name + " is given twice", "Give it once.");
        }
        values.add(value);
        return taken;
    }

    /// How many of the words from an index on an option takes.
    private static int count(Usage.Takes takes, List<String> words, int from) {
        return switch (takes) {
            case NOTHING -> 0;
            case WORD -> Math.min(1, words.size() - from);
            case WORDS -> {
                int end = from;
                while (end < words.size() && !words.get(end).startsWith("--")) {
                    end++;
                }
                yield end - from;
            }
        };
    }

    private static Refusal unknownOption(Usage usage, String name) {
        if (usage.options().isEmpty()) {
            return new Refusal(usage.name() + " has no option " + name, "Leave it out.");
        }
        var names = usage.options().stream().map(Usage.Option::name).toList();
        return new Refusal(
                usage.name() + " has no option " + name + "; it has " + String.join(", ", names),
                Refusal.attempt("", name, names, "Type: plumeline help " + usage.name()));
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
