package plumeline.text;

import plumeline.quantity.Kind;
import plumeline.quantity.Quantities;
import plumeline.quantity.Quantity;
import plumeline.quantity.Reading;

/// What the text of a mark says: a quantity, `free`, or `free between A and B`.
public sealed interface MarkText {
    /// It is given.
    ///
    /// @param quantity the value
    record Given(Quantity quantity) implements MarkText {}

    /// It is free without bounds.
    record Unbounded() implements MarkText {}

    /// It is free between two values.
    ///
    /// @param low the lower
    /// @param high the higher, > low
    record Between(Quantity low, Quantity high) implements MarkText {}

    /// It says none of these.
    ///
    /// @param given as it follows "is"
    /// @param allowed as it follows "must be"
    /// @param attempt a whole sentence that says what to try
    record Refused(String given, String allowed, String attempt) implements MarkText {}

    /// Reads a mark.
    ///
    /// @param written its text
    /// @param kind what it measures
    /// @return what it says
    static MarkText read(String written, Kind kind) {
        String text = written.strip();
        if (!text.equals("free") && !text.startsWith("free ")) {
            return switch (Quantities.read(text, kind)) {
                case Reading.Read(Quantity quantity) -> new Given(quantity);
                case Reading.Refused refused ->
                    new Refused(refused.given(), refused.allowed() + ", or free", refused.attempt());
            };
        }
        String rest = text.substring(4).strip();
        if (rest.isEmpty()) {
            return new Unbounded();
        }
        int and = rest.indexOf(" and ");
        if (rest.startsWith("between ") && and > 0) {
            Reading low = Quantities.read(rest.substring(8, Math.max(8, and)), kind);
            Reading high = Quantities.read(rest.substring(and + 5), kind);
            if (low instanceof Reading.Read(Quantity least) && high instanceof Reading.Read(Quantity most)) {
                return bounded(text, least, most);
            }
        }
        return new Refused(
                text.length() > 60 ? text.substring(0, 60) + "…" : text,
                kind.allowed() + ", free, or free between A and B",
                "Try free between " + kind.example() + " and a greater one.");
    }

    private static MarkText bounded(String text, Quantity low, Quantity high) {
        if (low.si() < high.si()) {
            return new Between(low, high);
        }
        return new Refused(
                text,
                "free between a lower and a higher value",
                low.si() == high.si()
                        ? "Try " + low.valueText() + "."
                        : "Try free between " + high.valueText() + " and " + low.valueText() + ".");
    }
}
