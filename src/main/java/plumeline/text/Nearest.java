package plumeline.text;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/// The known word that a misspelt one most likely means.
public final class Nearest {
    private static final int LONGEST = 64;

    private Nearest() {}

    /// Finds the nearest known word: fewest letters put in, left out, changed or swapped with a neighbour; case and `-`
    /// against `_` count for nothing. Ties go to the first. Nothing is found where more than a third of the letters
    /// (at least one) would have to change, unless one word begins with the other.
    ///
    /// @param word as written
    /// @param words the known ones
    /// @return the nearest, where one is near enough
    public static Optional<String> find(String word, Collection<String> words) {
        String folded = fold(word);
        String best = "";
        int least = Integer.MAX_VALUE;
        if (folded.isEmpty() || folded.length() > LONGEST) {
            return Optional.empty();
        }
        for (String known : words) {
            String other = fold(known);
            int distance = distance(folded, other);
            int letters = Math.max(folded.length(), other.length());
            boolean begins = Math.min(folded.length(), other.length()) >= 3
                    && (other.startsWith(folded) || folded.startsWith(other));
            if (distance < least && (distance <= Math.max(1, letters / 3) || begins)) {
                least = distance;
                best = known;
            }
        }
        return least == Integer.MAX_VALUE ? Optional.empty() : Optional.of(best);
    }

    /// Lists the nearest known names, those of parts with dots between compared part by part: a part that is missing or
    /// too much counts as one letter.
    ///
    /// @param name as written
    /// @param names the known ones
    /// @param most so many at most
    /// @return the nearest first; ties as they are known
    public static List<String> list(String name, Collection<String> names, int most) {
        String folded = fold(name.length() > LONGEST ? name.substring(0, LONGEST) : name);
        return names.stream()
                .sorted(Comparator.comparingInt(known -> partsDistance(folded, fold(known))))
                .limit(most)
                .toList();
    }

    private static int partsDistance(String a, String b) {
        String[] some = a.split("\\.", -1);
        String[] others = b.split("\\.", -1);
        int distance = Math.abs(some.length - others.length);
        for (int i = 0; i < Math.min(some.length, others.length); i++) {
            distance += distance(some[i], others[i]);
        }
        return distance;
    }

    private static String fold(String word) {
        return word.toLowerCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
    }

    private static int distance(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                cost[i][j] = i == 0 || j == 0 ? i + j : step(cost, a, b, i, j);
            }
        }
        return cost[a.length()][b.length()];
    }

    private static int step(int[][] cost, String a, String b, int i, int j) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int best = Math.min(cost[i - 1][j - 1] + change, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, 1 + cost[i - 2][j - 2]) : best;
    }
}
