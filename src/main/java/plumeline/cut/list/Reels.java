package plumeline.cut.list;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/// Reel names as the oldest readers take them: up to eight capital letters and digits, each reel another, none of those
/// that mean black, bars or an auxiliary source.
///
/// **Source:** common practice of edit decision lists by SMPTE ST 258.
final class Reels {
    private static final int MOST_LETTERS = 8;
    private static final Set<String> RESERVED = Set.of("BL", "BLACK", "BARS", "AX");

    private final Map<Reel, String> names = new LinkedHashMap<>();

    /// What frames come from.
    ///
    /// @param name what it is called
    /// @param of the take that it was called after, its file where it has one: another take of that name is another
    ///     reel; empty where the crew wrote the name, which then is one reel whatever takes are on it
    record Reel(String name, String of) {}

    private Reels() {}

    static Reels of(List<Reel> reels) {
        Reels all = new Reels();
        Set<String> taken = new HashSet<>(RESERVED);
        // A name that already is one keeps its place, whatever comes before it, and what is written before the rest.
        for (Reel reel : reels) {
            if (reel.of().isEmpty()) {
                all.keep(reel, taken);
            }
        }
        reels.forEach(reel -> all.keep(reel, taken));
        for (Reel reel : reels) {
            if (!all.names.containsKey(reel)) {
                all.names.put(reel, free(letters(reel.name()), taken));
            }
        }
        return all;
    }

    private void keep(Reel reel, Set<String> taken) {
        String name = reel.name();
        if (isReel(name) && !names.containsKey(reel) && taken.add(name)) {
            names.put(reel, name);
        }
    }

    private static boolean isReel(String name) {
        return name.matches("[A-Z0-9][A-Z0-9_-]{0," + (MOST_LETTERS - 1) + "}");
    }

    private static String letters(String reel) {
        String kept = Plain.of(reel).toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "");
        return kept.substring(0, Math.min(MOST_LETTERS, kept.length()));
    }

    private static String free(String letters, Set<String> taken) {
        String stem = letters.isEmpty() ? "REEL" : letters;
        String name = stem;
        for (int i = 2; !taken.add(name); i++) {
            String number = Integer.toString(i);
            name = stem.substring(0, Math.min(stem.length(), MOST_LETTERS - number.length())) + number;
        }
        return name;
    }

    /// The name of a reel in the list.
    String name(Reel reel) {
        String name = names.get(reel);
        if (name == null) {
            throw new IllegalArgumentException("no reel " + reel);
        }
        return name;
    }
}
