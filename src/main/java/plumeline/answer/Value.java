package plumeline.answer;

import java.util.List;

/// One value of an answer.
public sealed interface Value {
    /// A number with its unit, nothing known of its spread.
    ///
    /// @param value the number, in the unit
    /// @param unit the unit; `1` for a bare number
    record Number(double value, String unit) implements Value {
        /// Checks that it is one.
        public Number {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("an answer of " + value + " " + unit);
            }
        }
    }

    /// A number whose inputs had a spread.
    ///
    /// @param value the number, in the unit
    /// @param unit the unit; `1` for a bare number
    /// @param low low end of the 80 % interval, in the unit
    /// @param high high end of the 80 % interval, in the unit
    record Spread(double value, String unit, double low, double high) implements Value {}

    /// A list of numbers of one unit.
    ///
    /// @param values the numbers, in the unit
    /// @param unit the unit; `1` for bare numbers
    record Numbers(List<Double> values, String unit) implements Value {
        /// Copies the list.
        public Numbers {
            values = List.copyOf(values);
        }
    }

    /// A flag or a name.
    ///
    /// @param text the word
    record Word(String text) implements Value {}
}
