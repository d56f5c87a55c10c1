package plumeline.ink;

/// A value with the interval that holds it four times in five.
///
/// @param value the value, in the unit that the name of what gives it says
/// @param low the low end, same unit
/// @param high the high end, same unit
public record Estimate(double value, double low, double high) {
    /// Adds something that is known.
    ///
    /// @param more what is added, same unit
    /// @return the sum
    public Estimate plus(double more) {
        return new Estimate(value + more, low + more, high + more);
    }

    /// Multiplies by something that is known.
    ///
    /// @param factor the factor, > 0
    /// @return the product
    public Estimate times(double factor) {
        return new Estimate(value * factor, low * factor, high * factor);
    }

    /// Raises what lies under a bound.
    ///
    /// @param bound the bound, same unit
    /// @return the value and its ends, none under the bound
    public Estimate atLeast(double bound) {
        return new Estimate(Math.max(value, bound), Math.max(low, bound), Math.max(high, bound));
    }

    /// Puts another value into the interval.
    ///
    /// @param other the value, same unit
    /// @return the value, with an interval that holds it
    Estimate withValue(double other) {
        return new Estimate(other, Math.min(low, other), Math.max(high, other));
    }

    /// Gives how often it lies between two bounds, its logarithm being spread normally to either side by itself.
    ///
    /// @param from the lower bound, same unit
    /// @param to the upper bound, same unit
    /// @return share of takes, 0 to 1
    public double odds(double from, double to) {
        return Math.max(0, oddsUnder(to) - oddsUnder(from));
    }

    /// Gives how often it is less than a bound.
    ///
    /// @param bound the bound, same unit
    /// @return share of takes, 0 to 1
    public double oddsUnder(double bound) {
        if (bound <= 0) {
            return 0;
        }
        double away = Math.log(bound / value);
        double end = away < 0 ? Math.log(value / low) : Math.log(high / value);
        if (end == 0) {
            return away < 0 ? 0 : 1;
        }
        return Gauss.below(Gauss.EIGHTY * away / end);
    }

    /// Adds what moves it by itself: the interval's ends and other ends of the same value, as a root sum of squares in
    /// logarithms.
    ///
    /// @param other the same value with another interval
    /// @return this value with both intervals
    public Estimate with(Estimate other) {
        var sum = new Sum();
        for (Estimate one : new Estimate[] {this, other}) {
            sum.add(one.low / one.value);
            sum.add(one.high / one.value);
        }
        return sum.of(value);
    }

    /// Widens the interval toward another's ends, as far as the other counts.
    ///
    /// @param other what may be true instead, same unit
    /// @param share how much it counts, 0 to 1
    /// @return this value; with all of the other's interval at 1
    Estimate covering(Estimate other, double share) {
        return new Estimate(
                value, low - share * Math.max(0, low - other.low), high + share * Math.max(0, other.high - high));
    }

    /// Adds up ratios that may each be off by themselves, upward and downward apart.
    static final class Sum {
        private double down;
        private double up;

        /// Something makes it so many times as much.
        void add(double ratio) {
            double log = Math.log(ratio);
            if (log < 0) {
                down += log * log;
            } else {
                up += log * log;
            }
        }

        /// Something makes it up to so many times as much or as little.
        void addBothWays(double ratio) {
            add(ratio);
            add(1 / ratio);
        }

        Estimate of(double value) {
            return new Estimate(value, value * Math.exp(-Math.sqrt(down)), value * Math.exp(Math.sqrt(up)));
        }
    }
}
