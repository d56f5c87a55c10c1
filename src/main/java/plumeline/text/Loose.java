package plumeline.text;

import java.util.Set;
import plumeline.quantity.Quantities;
import plumeline.quantity.Reading;

/// Values in which a run of spaces says no more than one space: quantities and marks. Texts keep theirs.
final class Loose {
    /// Keys whose values are the crew's own words, whatever they look like.
    private static final Set<String> TEXTS = Set.of("title", "titles", "sound", "recipe", "file", "art");

    private Loose() {}

    /// Tells whether what stands under a key may be loose.
    static boolean mayBe(String key) {
        return !TEXTS.contains(key);
    }

    /// Tells whether the spaces of a value may be drawn together without changing what it says.
    static boolean is(Node.Scalar scalar) {
        return !scalar.quoted() && is(scalar.text());
    }

    /// Draws runs of spaces and tabs together where they say nothing.
    static String tight(String text) {
        return is(text) ? drawn(text) : text;
    }

    /// Draws every run of spaces and tabs together.
    static String drawn(String text) {
        return text.replaceAll("[ \t]+", " ");
    }

    private static boolean is(String text) {
        if (text.indexOf(' ') < 0 && text.indexOf('\t') < 0) {
            return false;
        }
        String drawn = drawn(text);
        if (!drawn.startsWith("free between ")) {
            return isQuantity(text);
        }
        int and = drawn.indexOf(" and ");
        return and > 13 && isQuantity(drawn.substring(13, and)) && isQuantity(drawn.substring(and + 5));
    }

    private static boolean isQuantity(String text) {
        return Quantities.read(text) instanceof Reading.Read quantity && quantity.equals(Quantities.read(drawn(text)));
    }
}
