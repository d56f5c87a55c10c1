package plumeline.quantity;

import java.math.BigDecimal;
import java.util.Optional;

/// A quantity as written: `4000 lx at 1 m ± 15 % typical`.
///
/// @param digits the number as written, with an ASCII minus sign and single spaces: `-2 5/8`
/// @param value the same as a double, in the written unit
/// @param unit the written unit
/// @param basis `at D`, or plain
/// @param spread the 95 % half-width, or none
/// @param origin where it comes from
public record Quantity(String digits, double value, Unit unit, Basis basis, Spread spread, Origin origin) {
    private static final Basis PLAIN = new Basis.Plain();
    private static final Spread NO_SPREAD = new Spread.None();

    /// Checks that the value is finite.
    public Quantity {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a quantity's value must be finite, is " + value);
        }
    }

    /// Makes a given quantity from an SI value, written in this unit to at most 12 significant digits.
    ///
    /// @param si the SI value, finite
    /// @param unit the unit to write it in
    /// @return the quantity, without spread
    public static Quantity of(double si, Unit unit) {
        double value = unit.ofSi(si);
        return new Quantity(Digits.shortest(value), value, unit, PLAIN, NO_SPREAD, Origin.GIVEN);
    }

    /// Makes a given quantity from a value in this unit, written to at most 12 significant digits.
    ///
    /// @param value in the unit, finite
    /// @param unit the unit
    /// @return the quantity, without spread
    public static Quantity ofValue(double value, Unit unit) {
        return new Quantity(Digits.shortest(value), value, unit, PLAIN, NO_SPREAD, Origin.GIVEN);
    }

    /// Gives the value in SI units (a share as a fraction of one; broadcast frame rates exactly).
    ///
    /// @return the SI value
    public double si() {
        return unit.kind() == Kind.RATE ? FrameRate.roundBroadcast(value) : unit.toSi(value);
    }

    /// Gives the number as it was typed.
    ///
    /// @return the value in the written unit; of a fraction such as `1/3` the nearest double
    public BigDecimal exactValue() {
        return digits.indexOf('/') < 0 ? new BigDecimal(digits) : BigDecimal.valueOf(value);
    }

    /// Gives the value in SI units as it was typed, for units that are a whole or decimal part of SI's: `0.1 s` is a
    /// tenth.
    ///
    /// @return the SI value; of a fraction such as `1/3` the nearest double
    public BigDecimal exactSi() {
        return exactValue().multiply(BigDecimal.valueOf(unit.factor()));
    }

    /// Gives the 95 % half-width in SI units.
    ///
    /// @return the half-width, ≥ 0; 0 where none was written
    public double halfWidthSi() {
        return switch (spread) {
            case Spread.None() -> 0;
            case Spread.Absolute absolute -> absolute.value() * absolute.unit().factor();
            case Spread.OfValue ofValue -> ofValue.percent() / 100 * Math.abs(si());
        };
    }

    /// Gives the 80 % half-width in SI units, taking the spread for a normal one.
    ///
    /// @return the half-width, ≥ 0; 0 where none was written
    public double eightyHalfWidthSi() {
        return Spread.EIGHTY_OVER_NINETY_FIVE * halfWidthSi();
    }

    /// Gives the standard deviation in SI units, taking the spread for a normal one.
    ///
    /// @return the deviation, ≥ 0; 0 where none was written
    public double deviationSi() {
        return halfWidthSi() / Spread.NINETY_FIVE_DEVIATIONS;
    }

    /// Tells whether a spread was written.
    ///
    /// @return true where it was
    public boolean hasSpread() {
        return !(spread instanceof Spread.None);
    }

    /// Gives what is measured.
    ///
    /// @return the unit's kind
    public Kind kind() {
        return unit.kind();
    }

    /// Gives the distance at which it holds, where one was written.
    ///
    /// @return the distance
    public Optional<Quantity> findAt() {
        return basis instanceof Basis.At(Quantity distance) ? Optional.of(distance) : Optional.empty();
    }

    /// Gives the same quantity with another SI value, in the same unit; basis, spread and origin stay. A spread in per
    /// cent becomes the half-width it had, so that it does not move with the value.
    ///
    /// @param si the new SI value, finite
    /// @return the quantity
    public Quantity withSi(double si) {
        double now = unit.ofSi(si);
        Spread kept = spread instanceof Spread.OfValue
                ? new Spread.Absolute(
                        Digits.shortest(halfWidthSi() / unit.factor()), halfWidthSi() / unit.factor(), unit)
                : spread;
        return new Quantity(Digits.shortest(now), now, unit, basis, kept, origin);
    }

    /// Gives the same quantity with another origin.
    ///
    /// @param other the origin
    /// @return the quantity
    public Quantity withOrigin(Origin other) {
        return new Quantity(digits, value, unit, basis, spread, other);
    }

    /// Writes it as a plan does: `4000 lx at 1 m ± 15 % typical`; the origin `given` is left out.
    ///
    /// @return text that reads back as an equal quantity
    public String toText() {
        StringBuilder text = new StringBuilder(valueText());
        if (basis instanceof Basis.At(Quantity distance)) {
            text.append(" at ").append(distance.valueText());
        }
        switch (spread) {
            case Spread.None() -> {}
            case Spread.Absolute absolute -> appendSpread(text, absolute.digits(), absolute.unit());
            case Spread.OfValue ofValue -> appendSpread(text, ofValue.digits(), Unit.PERCENT);
        }
        if (origin != Origin.GIVEN) {
            text.append(' ').append(origin.word());
        }
        return text.toString();
    }

    private static void appendSpread(StringBuilder text, String digits, Unit unit) {
        text.append(" ± ").append(digits);
        if (unit.kind() != Kind.NUMBER) {
            text.append(' ').append(unit.symbol());
        }
    }

    /// Writes value and unit only: `4000 lx`.
    ///
    /// @return the text
    public String valueText() {
        return unit.kind() == Kind.NUMBER ? digits : digits + " " + unit.symbol();
    }
}
