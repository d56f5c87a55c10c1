package plumeline.roots;

import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;

/// Where something of one number turns, between two ends that lie on either side of it.
public final class Roots {
    /// A span is a millionth of a millionth of itself after so many halvings.
    private static final int HALVINGS = 40;

    private static final int MOST_STEPS = 100;

    private Roots() {}

    /// Finds where a function that falls goes through nothing: false position, the weight of an end that stays halved.
    ///
    /// **Source:** the Illinois method, from memory of Dowell and Jarratt, BIT 11 (1971) 168.
    ///
    /// @param function the function
    /// @param low an end at which it is > 0
    /// @param atLow its value there
    /// @param high the other end, at which it is ≤ 0
    /// @param atHigh its value there
    /// @param near a value counts as nothing from here on, in the function's unit, > 0
    /// @return the place; empty where the function jumps over nothing
    public static OptionalDouble falsePosition(
            DoubleUnaryOperator function, double low, double atLow, double high, double atHigh, double near) {
        double before = low;
        double behind = high;
        double above = atLow;
        double below = atHigh;
        int stays = 0;
        for (int i = 0; i < MOST_STEPS; i++) {
            double place = (before * below - behind * above) / (below - above);
            double there = function.applyAsDouble(place);
            if (Math.abs(there) <= near) {
                return OptionalDouble.of(place);
            }
            if (!Double.isFinite(there)) {
                return OptionalDouble.empty();
            }
            if (there > 0) {
                before = place;
                above = there;
                below /= stays > 0 ? 2 : 1;
                stays = 1;
            } else {
                behind = place;
                below = there;
                above /= stays < 0 ? 2 : 1;
                stays = -1;
            }
        }
        return OptionalDouble.empty();
    }

    /// Finds where something ends that holds from one end on, by halving.
    ///
    /// @param holds tells whether it still holds
    /// @param from the end at which it holds; not asked
    /// @param to the other end, on either side; not asked
    /// @return the first place, to a millionth of a millionth of the span, at which it doesn't; `to` where it holds
    /// throughout
    public static double end(DoublePredicate holds, double from, double to) {
        double near = from;
        double far = to;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = near + (far - near) / 2;
            if (holds.test(middle)) {
                near = middle;
            } else {
                far = middle;
            }
        }
        return far;
    }
}
