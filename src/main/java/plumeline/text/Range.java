package plumeline.text;

import plumeline.quantity.Kind;
import plumeline.quantity.Quantities;
import plumeline.quantity.Quantity;
import plumeline.quantity.Unit;

/// What values a quantity may have. Bounds are kept in SI and said in the user's unit.
///
/// @param lowSi the low bound in SI; −∞ where there is none
/// @param low whether the low bound itself is allowed
/// @param highSi the high bound in SI; ∞ where there is none
/// @param high whether the high bound itself is allowed
public record Range(double lowSi, Bound low, double highSi, Bound high) {
    /// Whether a bound is allowed itself.
    public enum Bound {
        /// The bound is allowed.
        CLOSED,
        /// The bound is not allowed.
        OPEN
    }

    /// Any value.
    public static final Range ANY =
            new Range(Double.NEGATIVE_INFINITY, Bound.OPEN, Double.POSITIVE_INFINITY, Bound.OPEN);
    /// Greater than 0.
    public static final Range POSITIVE = new Range(0, Bound.OPEN, Double.POSITIVE_INFINITY, Bound.OPEN);
    /// 0 or more.
    public static final Range NOT_NEGATIVE = new Range(0, Bound.CLOSED, Double.POSITIVE_INFINITY, Bound.OPEN);

    /// Relative slack, so that a bound written in another unit still counts as the bound.
    private static final double SLACK = 1e-12;

    /// Allows values from one to another, both included.
    ///
    /// @param low as text: `0 %`
    /// @param high as text: `100 %`
    /// @return the range
    public static Range between(String low, String high) {
        return new Range(si(low), Bound.CLOSED, si(high), Bound.CLOSED);
    }

    /// Allows values greater than one and up to another, which is included.
    ///
    /// @param low as text: `0 deg`
    /// @param high as text: `360 deg`
    /// @return the range
    public static Range above(String low, String high) {
        return new Range(si(low), Bound.OPEN, si(high), Bound.CLOSED);
    }

    /// Allows values greater than this one.
    ///
    /// @param low as text
    /// @return the range
    public static Range above(String low) {
        return new Range(si(low), Bound.OPEN, Double.POSITIVE_INFINITY, Bound.OPEN);
    }

    /// Allows this value and greater ones.
    ///
    /// @param low as text
    /// @return the range
    public static Range atLeast(String low) {
        return new Range(si(low), Bound.CLOSED, Double.POSITIVE_INFINITY, Bound.OPEN);
    }

    /// Allows this value and smaller ones.
    ///
    /// @param high as text
    /// @return the range
    public static Range atMost(String high) {
        return new Range(Double.NEGATIVE_INFINITY, Bound.OPEN, si(high), Bound.CLOSED);
    }

    private static double si(String text) {
        return Quantities.get(text).si();
    }

    /// Tells whether an SI value is allowed.
    ///
    /// @param si the value
    /// @return true where it is
    public boolean allows(double si) {
        double slackLow = Double.isInfinite(lowSi) ? 0 : Math.abs(lowSi) * SLACK;
        double slackHigh = Double.isInfinite(highSi) ? 0 : Math.abs(highSi) * SLACK;
        boolean aboveLow = low == Bound.CLOSED ? si >= lowSi - slackLow : si > lowSi + slackLow;
        boolean belowHigh = high == Bound.CLOSED ? si <= highSi + slackHigh : si < highSi - slackHigh;
        return aboveLow && (belowHigh || Double.isInfinite(highSi));
    }

    /// Says what is allowed, in the user's unit: `greater than 0 mm`, `from 0 % to 100 %`.
    ///
    /// @param unit the unit to say it in
    /// @return the phrase, as it follows "must be"
    public String toText(Unit unit) {
        boolean noHigh = Double.isInfinite(highSi);
        if (Double.isInfinite(lowSi)) {
            return noHigh ? "any value" : (high == Bound.CLOSED ? "at most " : "less than ") + text(highSi, unit);
        }
        if (noHigh) {
            return low == Bound.OPEN ? "greater than " + text(lowSi, unit) : text(lowSi, unit) + " or more";
        }
        if (low == Bound.CLOSED && high == Bound.CLOSED) {
            return "from " + text(lowSi, unit) + " to " + text(highSi, unit);
        }
        return (low == Bound.OPEN ? "greater than " : "at least ")
                + text(lowSi, unit)
                + (high == Bound.OPEN ? " and less than " : " and at most ")
                + text(highSi, unit);
    }

    private static String text(double si, Unit unit) {
        return unit.kind() == Kind.NUMBER
                ? Quantity.of(si, Unit.NONE).toText()
                : Quantity.of(si, unit).valueText();
    }
}
