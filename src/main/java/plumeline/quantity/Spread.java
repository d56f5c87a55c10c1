package plumeline.quantity;

/// The `±` of a quantity: a 95 % half-width.
public sealed interface Spread {
    /// Standard deviations in the 95 % half-width of a normal spread (its quantile at 0.975).
    double NINETY_FIVE_DEVIATIONS = 1.959963984540054;

    /// 80 % half-width over 95 % half-width of a normal spread (its quantiles at 0.9 and 0.975).
    double EIGHTY_OVER_NINETY_FIVE = 1.2815515655446004 / NINETY_FIVE_DEVIATIONS;

    /// No spread was written. That is no promise that there is none.
    record None() implements Spread {}

    /// A spread in a unit: `± 1 mm`. Offsets of units (degC) do not count in it.
    ///
    /// @param digits as written
    /// @param value in its unit, ≥ 0
    /// @param unit a unit of the quantity's kind
    record Absolute(String digits, double value, Unit unit) implements Spread {}

    /// A spread in per cent of the value: `± 15 %`.
    ///
    /// @param digits as written
    /// @param percent ≥ 0
    record OfValue(String digits, double percent) implements Spread {}
}
