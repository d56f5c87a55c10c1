package plumeline.mirror;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;
import plumeline.roots.Roots;

/// Where a function of one number is over 0, as stretches. It is looked at in even steps, and finer where it turns back
/// before 0 between them, so that a stretch thinner than a step is found where the function falls off beside it.
public final class Spans {
    private static final int FINER = 40;

    /// Between two steps a function comes back by no more than so many times what it changes from step to step.
    private static final double COMES_BY = 4;

    /// Values from here on are no angles between neighbours: the function jumps.
    private static final double JUMPS = 0.9;

    /// A value counts as nothing from here on.
    private static final double NEAR = 1e-13;

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private Spans() {}

    /// A stretch.
    ///
    /// @param from where it begins
    /// @param to where it ends, not below
    public record Span(double from, double to) {
        /// Gives its middle.
        ///
        /// @return halfway
        public double middle() {
            return (from + to) / 2;
        }

        boolean touches(Span other) {
            return from <= other.to && to >= other.from;
        }
    }

    /// Finds where a function is over 0.
    ///
    /// @param function continuous where it may turn back between two steps
    /// @param from where to look from
    /// @param to where to look to, not below
    /// @param steps even steps to look in
    /// @return the stretches, in order
    public static List<Span> over(DoubleUnaryOperator function, double from, double to, int steps) {
        double[] at = new double[steps + 1];
        double[] value = new double[steps + 1];
        List<Known> known = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            at[i] = i == steps ? to : from + (to - from) * i / steps;
            value[i] = function.applyAsDouble(at[i]);
            known.add(new Known(at[i], value[i] > 0));
        }
        for (int i = 0; i <= steps; i++) {
            double before = value[Math.max(0, i - 1)];
            double behind = value[Math.min(steps, i + 1)];
            double side = value[i] > 0 ? -1 : 1;
            double changes = Math.max(Math.abs(value[i] - before), Math.abs(value[i] - behind));
            boolean isTurn = side * value[i] >= side * before && side * value[i] >= side * behind;
            if (isTurn && Math.abs(value[i]) < COMES_BY * changes) {
                double turn =
                        peak(x -> side * function.applyAsDouble(x), at[Math.max(0, i - 1)], at[Math.min(steps, i + 1)]);
                known.add(new Known(turn, function.applyAsDouble(turn) > 0));
            }
        }
        if (known.size() > at.length) {
            known.sort(Comparator.comparingDouble(Known::at));
        }
        return spans(function, known);
    }

    /// Whether a function is over 0 at a place.
    private record Known(double at, boolean isOver) {}

    /// The most that a function comes to.
    static double most(DoubleUnaryOperator function, double from, double to, int steps) {
        return function.applyAsDouble(highest(function, from, to, steps));
    }

    /// Where a function is highest.
    static double highest(DoubleUnaryOperator function, double from, double to, int steps) {
        double step = (to - from) / steps;
        double best = from;
        double high = function.applyAsDouble(from);
        for (int i = 1; i <= steps; i++) {
            double at = from + i * step;
            double there = function.applyAsDouble(at);
            best = there > high ? at : best;
            high = Math.max(high, there);
        }
        double above = 2 * high;
        double turn =
                peak(at -> function.applyAsDouble(at) - above, Math.max(from, best - step), Math.min(to, best + step));
        return function.applyAsDouble(turn) > high ? turn : best;
    }

    /// Where a function is highest between two ends, or first found to be over 0.
    private static double peak(DoubleUnaryOperator function, double from, double to) {
        double low = from;
        double high = to;
        for (int i = 0; i < FINER; i++) {
            double one = high - GOLDEN * (high - low);
            double other = low + GOLDEN * (high - low);
            double atOne = function.applyAsDouble(one);
            double atOther = function.applyAsDouble(other);
            if (atOne > 0 || atOther > 0) {
                return atOne > 0 ? one : other;
            }
            if (atOne > atOther) {
                high = other;
            } else {
                low = one;
            }
        }
        return (low + high) / 2;
    }

    /// Where something holds, by places between which it begins or ends at most once.
    static List<Span> where(DoublePredicate holds, SortedSet<Double> places) {
        return spans(
                at -> holds.test(at) ? 1 : -1,
                places.stream()
                        .map(place -> new Known(place, holds.test(place)))
                        .toList());
    }

    /// Where a function goes through 0 between two places; by halving where it jumps.
    ///
    /// @param was whether it is over 0 at the first
    static double border(DoubleUnaryOperator function, boolean was, double from, double to) {
        DoubleUnaryOperator falling = was ? function : x -> -function.applyAsDouble(x);
        double high = falling.applyAsDouble(from);
        double low = falling.applyAsDouble(to);
        boolean isSmooth = high > 0 && low < 0 && high < JUMPS && low > -JUMPS;
        OptionalDouble found =
                isSmooth ? Roots.falsePosition(falling, from, high, to, low, NEAR) : OptionalDouble.empty();
        return found.orElseGet(() -> Roots.end(x -> function.applyAsDouble(x) > 0 == was, from, to));
    }

    /// @param known in order
    private static List<Span> spans(DoubleUnaryOperator function, List<Known> known) {
        List<Span> spans = new ArrayList<>();
        double before = known.getFirst().at();
        double begins = before;
        boolean isOver = known.getFirst().isOver();
        for (Known place : known) {
            if (place.isOver() != isOver) {
                boolean was = isOver;
                double border = border(function, was, before, place.at());
                if (was) {
                    spans.add(new Span(begins, border));
                }
                begins = border;
                isOver = !was;
            }
            before = place.at();
        }
        if (isOver) {
            spans.add(new Span(begins, before));
        }
        return spans;
    }
}
