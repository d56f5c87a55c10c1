package plumeline.text;

import java.util.ArrayList;
import java.util.List;

/// Replaces spans of a text and touches nothing else.
public final class Edit {
    private Edit() {}

    /// One span and what comes in its place.
    ///
    /// @param place the span; its offsets count into the whole text, a byte order mark included
    /// @param text what comes there
    public record Replacement(Place place, String text) {}

    /// Replaces spans, and proves that everything between them is as it was.
    ///
    /// @param text the whole text
    /// @param replacements in any order; they may not overlap
    /// @return the new text
    /// @throws IllegalArgumentException where spans overlap or leave the text
    public static String replace(String text, List<Replacement> replacements) {
        List<Replacement> sorted = new ArrayList<>(replacements);
        sorted.sort((a, b) -> Integer.compare(a.place().start(), b.place().start()));
        StringBuilder edited = new StringBuilder();
        int at = 0;
        for (Replacement replacement : sorted) {
            if (replacement.place().start() < at || replacement.place().end() > text.length()) {
                throw new IllegalArgumentException(
                        "cannot replace " + replacement.place() + ": it overlaps another span or leaves the text");
            }
            edited.append(text, at, replacement.place().start()).append(replacement.text());
            at = replacement.place().end();
        }
        edited.append(text, at, text.length());
        checkRest(text, edited, sorted);
        return edited.toString();
    }

    /// Walks both texts once more, independently of how the new one was put together.
    private static void checkRest(String text, CharSequence edited, List<Replacement> sorted) {
        int old = 0;
        int now = 0;
        for (Replacement replacement : sorted) {
            while (old < replacement.place().start()) {
                checkSame(text.charAt(old++), edited.charAt(now++), old);
            }
            old = replacement.place().end();
            now += replacement.text().length();
        }
        while (old < text.length()) {
            checkSame(text.charAt(old++), edited.charAt(now++), old);
        }
        if (now != edited.length()) {
            throw new IllegalStateException("the edit left " + (edited.length() - now) + " characters over");
        }
    }

    private static void checkSame(char before, char after, int at) {
        if (before != after) {
            throw new IllegalStateException("the edit touched character " + at);
        }
    }
}
