package plumeline.render;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/// Sentences on what was taken for what isn't written; what is said of several is said once.
final class Told {
    /// A sentence about names.
    private record Sentence(String before, String after) {}

    private final Map<Sentence, Set<String>> names = new LinkedHashMap<>();

    /// Says something of one.
    ///
    /// @param before what comes before its name
    /// @param name its name
    /// @param after what follows, full stop included
    void add(String before, String name, String after) {
        names.computeIfAbsent(new Sentence(before, after), _ -> new LinkedHashSet<>())
                .add(name);
    }

    /// Says something of none.
    void add(String sentence) {
        add(sentence, "", "");
    }

    List<String> sentences() {
        List<String> all = new ArrayList<>();
        names.forEach((sentence, of) -> all.add(sentence.before() + list(List.copyOf(of)) + sentence.after()));
        return all;
    }

    private static String list(List<String> names) {
        return names.size() < 2
                ? String.join("", names)
                : String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.getLast();
    }
}
