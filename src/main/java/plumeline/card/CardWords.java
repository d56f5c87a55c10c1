package plumeline.card;

import java.util.Locale;
import plumeline.quantity.Origin;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;

/// Small words that several cards use.
final class CardWords {
    private CardWords() {}

    static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    static String small(String words) {
        return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }

    /// A figure with the side that it is to; what is nothing has none.
    static String side(String figure, double si, String more, String less, String none) {
        return figure.matches("0(\\.0+)? .*") ? none : figure + " " + (si < 0 ? less : more);
    }

    /// A turn to a tenth, with its side seen from above.
    static String turned(double radians) {
        return side(Print.fineDegrees(Math.abs(radians)), radians, "clockwise", "anticlockwise", "0 deg");
    }

    static String origin(Quantity quantity) {
        return quantity.origin() == Origin.TYPICAL ? " (typical: measure yours)" : "";
    }
}
