package plumeline.quantity;

/// The `±` of a quantity: a 95 % half-width.
public sealed interface Spread {
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
