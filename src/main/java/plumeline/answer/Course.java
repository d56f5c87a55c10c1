package plumeline.answer;

import java.util.function.DoubleUnaryOperator;

/// How a value follows its inputs, which decides how its interval is made.
public sealed interface Course {
    /// Smoothly: its slope tells what a ± does.
    record Straight() implements Course {}

    /// Smoothly, but for one turn, as what can't be less than 0. The value of the item is one without the turn; from it
    /// follows what is answered, `at + slope·(value − at)`, for its interval's ends too.
    ///
    /// @param at where it turns, in the value's unit
    /// @param below slope of what is answered where the value is less, dimensionless
    /// @param above slope of what is answered where the value is more, dimensionless
    record Bent(double at, double below, double above) implements Course, DoubleUnaryOperator {
        @Override
        public double applyAsDouble(double value) {
            return at + (value < at ? below : above) * (value - at);
        }
    }

    /// It may jump, as what tips does: its interval is what it comes to at the ends of its inputs' intervals.
    record Jumping() implements Course {}

    /// By a law that has an interval of its own, whatever its inputs; what these do is added to it, both as shares.
    ///
    /// @param low low end of the law's 80 % interval, in the value's unit, > 0
    /// @param high high end, > 0
    record OfLaw(double low, double high) implements Course {
        double down(double value, double half) {
            return value / Math.exp(Math.hypot(Math.log(value / low), half / value));
        }

        double up(double value, double half) {
            return value * Math.exp(Math.hypot(Math.log(high / value), half / value));
        }
    }

    /// Its interval stands as it is, the inputs' ± counted.
    record Whole() implements Course {}
}
