package plumeline.text;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/// Checks maps: known keys, names, dotted paths and words.
final class MapChecker {
    /// Up to so many known keys are listed in a message.
    private static final int FEW = 19;

    private final Checker checker;

    MapChecker(Checker checker) {
        this.checker = checker;
    }

    void checkKeys(Shape.Keys keys, Checker.At at) {
        if (at.node() instanceof Node.Mapping mapping) {
            Set<String> meant = checkEntries(keys.keys(), mapping, at);
            for (Shape.Rule rule : keys.rules()) {
                checkRule(rule, mapping, meant, at);
            }
        } else {
            checker.addForm(keys, at);
        }
    }

    /// Checks keys and values. Gives the missing keys that unknown ones are most likely meant to be: that the right key
    /// is missing is no second problem, and the value is checked as that key's.
    private Set<String> checkEntries(List<Shape.Key> keys, Node.Mapping mapping, Checker.At at) {
        Set<String> meant = new HashSet<>();
        for (Node.Entry entry : mapping.entries()) {
            Optional<Shape.Key> key = find(keys, entry.key());
            if (key.isPresent()) {
                checkValue(key.get(), entry, at);
            } else {
                addUnknown(names(keys), entry, at, "");
                Optional<Shape.Key> near =
                        Nearest.find(entry.key(), names(keys)).flatMap(name -> find(keys, name));
                if (near.isPresent()
                        && mapping.find(near.get().name()).isEmpty()
                        && meant.add(near.get().name())) {
                    checkValue(near.get(), entry, at);
                }
            }
        }
        for (Shape.Key key : keys) {
            boolean missing = mapping.find(key.name()).isEmpty() && !meant.contains(key.name());
            if (key.need() == Shape.Need.REQUIRED && missing) {
                String attempt = key.hint().isEmpty()
                        ? "Add `" + key.name() + ": " + checker.example(key.shape(), Paths.join(at.path(), key.name()))
                                + "`."
                        : "Try " + key.hint() + ".";
                checker.add(
                        at.keyPlace(),
                        Paths.join(at.path(), key.name()),
                        "P-KEY-02",
                        "missing",
                        Phrases.of(key.shape()),
                        attempt);
            }
        }
        return meant;
    }

    private void checkValue(Shape.Key key, Node.Entry entry, Checker.At at) {
        checker.check(
                key.shape(),
                new Checker.At(
                        entry.value(), Paths.join(at.path(), entry.key()), entry.keyPlace(), key.hint(), key.code()));
    }

    private static Optional<Shape.Key> find(List<Shape.Key> keys, String name) {
        for (Shape.Key key : keys) {
            if (key.name().equals(name)) {
                return Optional.of(key);
            }
        }
        return Optional.empty();
    }

    private static List<String> names(List<Shape.Key> keys) {
        List<String> names = new ArrayList<>();
        for (Shape.Key key : keys) {
            names.add(key.name());
        }
        return names;
    }

    private void addUnknown(List<String> known, Node.Entry entry, Checker.At at, String before) {
        String word =
                entry.key().substring(Math.min(before.length(), entry.key().length()));
        String allowed = known.isEmpty()
                ? "left out: no key is known here"
                : known.size() <= FEW
                        ? (known.size() == 1 ? "" : "one of ") + Phrases.join(known, "or")
                        : "a key known here";
        String attempt = Nearest.find(word, known)
                .map(near -> "Try " + before + near + ".")
                .orElse("Leave it out, or see `" + checker.keysShownBy() + "` for the keys known here.");
        checker.add(
                entry.value().place(),
                Paths.join(at.path(), entry.key()),
                "P-KEY-01",
                "not a known key",
                allowed,
                attempt);
    }

    private void checkRule(Shape.Rule rule, Node.Mapping mapping, Set<String> meant, Checker.At at) {
        switch (rule) {
            case Shape.Rule.ExactlyOne(List<List<String>> groups) -> checkExactlyOne(groups, mapping, meant, at);
            case Shape.Rule.AtMostOne(List<String> keys) -> {
                List<String> there = present(keys, mapping);
                if (there.size() > 1) {
                    addRule(
                            at,
                            "given " + Phrases.join(there, "and"),
                            "given at most one of " + Phrases.join(keys, "and"),
                            "Keep one of them.");
                }
            }
            case Shape.Rule.AtLeastOne(List<String> keys) -> {
                if (present(keys, mapping).isEmpty() && keys.stream().noneMatch(meant::contains)) {
                    addRule(
                            at,
                            "given none of " + Phrases.join(keys, "and"),
                            "given at least one of them",
                            "Add " + keys.getFirst() + ".");
                }
            }
            case Shape.Rule.Needs(String key, String other) -> {
                if (mapping.find(key).isPresent() && mapping.find(other).isEmpty() && !meant.contains(other)) {
                    addRule(at, "given " + key + " without " + other, "given both or neither", "Add " + other + ".");
                }
            }
        }
    }

    private void checkExactlyOne(List<List<String>> groups, Node.Mapping mapping, Set<String> meant, Checker.At at) {
        List<String> all = new ArrayList<>();
        List<String> phrases = new ArrayList<>();
        for (List<String> group : groups) {
            phrases.add(Phrases.join(group, "and"));
            for (String key : group) {
                if (!all.contains(key)) {
                    all.add(key);
                }
            }
        }
        List<String> there = present(all, mapping);
        List<String> likely = new ArrayList<>(all);
        likely.removeIf(key -> !there.contains(key) && !meant.contains(key));
        for (List<String> group : groups) {
            if (likely.size() == group.size() && likely.containsAll(group)) {
                return;
            }
        }
        String allowed = "given " + String.join(", or ", phrases);
        String given =
                there.isEmpty() ? "given none of " + Phrases.join(all, "and") : "given " + Phrases.join(there, "and");
        addRule(at, given, allowed, there.isEmpty() ? "Add " + phrases.getFirst() + "." : completed(groups, there));
    }

    /// What is lacking of the choice that was begun; where parts of several are there, that one must be taken.
    private static String completed(List<List<String>> groups, List<String> there) {
        for (List<String> group : groups) {
            if (group.containsAll(there)) {
                List<String> lacking = new ArrayList<>(group);
                lacking.removeAll(there);
                return "Add " + Phrases.join(lacking, "and") + ".";
            }
        }
        return "Keep one of these choices.";
    }

    private static List<String> present(List<String> keys, Node.Mapping mapping) {
        List<String> there = new ArrayList<>();
        for (String key : keys) {
            if (mapping.find(key).isPresent()) {
                there.add(key);
            }
        }
        return there;
    }

    private void addRule(Checker.At at, String given, String allowed, String attempt) {
        checker.add(at, "P-KEY-03", given, allowed, attempt);
    }

    void checkNamed(Shape.Named named, Checker.At at) {
        if (!(at.node() instanceof Node.Mapping mapping)) {
            checker.addForm(named, at);
            return;
        }
        for (Node.Entry entry : mapping.entries()) {
            String path = Paths.join(at.path(), entry.key());
            if (!Check.isName(entry.key())) {
                checker.add(
                        entry.value().place(),
                        path,
                        "P-NAME-01",
                        "named \"" + Checker.shown(entry.key()) + "\"",
                        "named with a-z, 0-9, _ and - only",
                        "Try " + toName(entry.key()) + ".");
            }
            checker.check(named.value(), new Checker.At(entry.value(), path, entry.keyPlace(), "", ""));
        }
    }

    private static String toName(String text) {
        StringBuilder name = new StringBuilder();
        for (char c : text.toLowerCase(Locale.ROOT).toCharArray()) {
            boolean good = c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '_' || c == '-';
            if (name.length() < 40) {
                name.append(good ? c : '_');
            }
        }
        return name.isEmpty() ? "name" : name.toString();
    }

    void checkOverrides(Shape.Overrides overrides, Checker.At at) {
        if (!(at.node() instanceof Node.Mapping mapping)) {
            checker.addForm(overrides, at);
            return;
        }
        for (Node.Entry entry : mapping.entries()) {
            switch (Targets.resolve(overrides.target(), entry.key())) {
                case Targets.Found(Shape.Key key) -> checkValue(key, entry, at);
                case Targets.Lost(String before, List<String> known) -> addUnknown(known, entry, at, before);
            }
        }
    }

    void checkOneWord(Shape.OneWord oneWord, Checker.At at) {
        if (!(at.node() instanceof Node.Mapping mapping)) {
            checker.addForm(oneWord, at);
            return;
        }
        List<Shape.Word> there = new ArrayList<>();
        List<String> known = new ArrayList<>();
        for (Shape.Word word : oneWord.words()) {
            known.add(word.subject().name());
            if (mapping.find(word.subject().name()).isPresent()) {
                there.add(word);
            }
        }
        if (there.isEmpty()) {
            checkWithoutWord(oneWord, known, mapping, at);
            return;
        }
        for (Shape.Word word : there) {
            List<Shape.Key> keys = keys(word, oneWord);
            if (names(keys).containsAll(subjects(there))) {
                checkEntries(keys, mapping, at);
                return;
            }
        }
        addRule(
                at,
                "given " + Phrases.join(subjects(there), "and"),
                "given only one of them",
                "Put each into a line of its own.");
        checkKnown(oneWord, mapping, at);
    }

    /// Takes a misspelt word for the nearest one and checks the rest as that word's.
    private void checkWithoutWord(Shape.OneWord oneWord, List<String> known, Node.Mapping mapping, Checker.At at) {
        Optional<Node.Entry> misspelt = oneWord.findMisspelt(mapping);
        if (misspelt.isEmpty()) {
            checker.add(
                    at,
                    "P-KEY-04",
                    "without " + oneWord.what(),
                    "given one of " + Phrases.join(known, "or"),
                    "Try " + checker.attempt(oneWord, at) + ".");
            checkKnown(oneWord, mapping, at);
            return;
        }
        Node.Entry entry = misspelt.get();
        addUnknown(known, entry, at, "");
        String meant = Nearest.find(entry.key(), known).orElseThrow();
        for (Shape.Word word : oneWord.words()) {
            if (word.subject().name().equals(meant)) {
                List<Shape.Key> further = new ArrayList<>(keys(word, oneWord));
                further.remove(word.subject());
                List<Node.Entry> rest = new ArrayList<>(mapping.entries());
                rest.remove(entry);
                checkValue(word.subject(), entry, at);
                checkEntries(further, new Node.Mapping(rest, mapping.place()), at);
            }
        }
    }

    /// Checks values where the word is in doubt: each as any of the words takes that key.
    private void checkKnown(Shape.OneWord oneWord, Node.Mapping mapping, Checker.At at) {
        for (Node.Entry entry : mapping.entries()) {
            Set<Shape> shapes = new LinkedHashSet<>();
            for (Shape.Word word : oneWord.words()) {
                find(keys(word, oneWord), entry.key()).ifPresent(key -> shapes.add(key.shape()));
            }
            if (!shapes.isEmpty()) {
                Shape shape = shapes.size() == 1 ? shapes.iterator().next() : new Shape.AnyOf(List.copyOf(shapes));
                checkValue(Shape.Key.optional(entry.key(), "", shape), entry, at);
            }
        }
    }

    private static List<String> subjects(List<Shape.Word> words) {
        List<String> names = new ArrayList<>();
        for (Shape.Word word : words) {
            names.add(word.subject().name());
        }
        return names;
    }

    static List<Shape.Key> keys(Shape.Word word, Shape.OneWord oneWord) {
        List<Shape.Key> keys = new ArrayList<>();
        keys.add(word.subject());
        keys.addAll(word.further());
        for (Shape.Key key : oneWord.common()) {
            if (find(keys, key.name()).isEmpty()) {
                keys.add(key);
            }
        }
        return keys;
    }
}
