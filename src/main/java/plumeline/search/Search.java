package plumeline.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;

/// Margins in, marks with leeway out.
public final class Search {
    /// The share (margin in placing errors of everything at once) above which a part counts as loose and is left alone.
    public static final double LOOSE = 1000;

    /// How many starts besides the given ones are looked at before climbing.
    private static final int SCATTERED = 32;

    private static final int CLIMBED_GIVEN = 3;
    private static final int CLIMBED_SCATTERED = 1;

    /// By which share a later start must be better than an earlier one to be preferred.
    private static final double BETTER = 0.02;

    /// Places whose least shares differ by less than this share of the highest are compared in full: curvature inside
    /// the placing errors can turn them round.
    private static final double ALIKE = 0.2;

    private Search() {}

    /// Finds where the free axes should stand so that everything may be off together by as many placing errors as can
    /// be; ties go to the next tightest part, then to the least way from the first seed. Free axes end on whole
    /// steps. Locked axes never move.
    ///
    /// The least share is raised from several starts (the given seeds, then a fixed scatter over the free ranges)
    /// by sequential linear programming; a local optimum of the best start is what it finds, not a proven global
    /// one.
    ///
    /// @param axes the marks
    /// @param margins the parts' margins
    /// @param seeds starts that the caller thinks are good, the likeliest first, each a value an axis; may be empty
    /// @return a value an axis, in the axes' order
    public static double[] solve(List<Axis> axes, Margins margins, List<double[]> seeds) {
        double[] as = values(axes);
        if (axes.stream().noneMatch(Axis::isFree) || margins.at(as).length == 0) {
            return onSteps(axes, as);
        }
        Felt felt = Felt.of(axes, margins, seeds.isEmpty() ? as : seeds.getFirst());
        List<Slopes> tops = new ArrayList<>();
        for (double[] start : promising(felt, as, seeds)) {
            tops.add(Climb.from(felt.axes, felt.margins, start, 1));
        }
        double[] best = highest(felt, tops).values;
        best = Climb.from(felt.axes, felt.margins, best, Climb.ROUNDS).values;
        best = Home.nearest(felt.axes, felt.margins, best, felt.part(seeds.isEmpty() ? as : seeds.getFirst()));
        return onSteps(axes, felt.whole(Steps.settle(felt.axes, felt.margins, best)));
    }

    /// The place that bears most; an earlier one where a later one is hardly better. To first order where that tells,
    /// else by what everything may be off in truth.
    private static Slopes highest(Felt felt, List<Slopes> tops) {
        double most =
                tops.stream().mapToDouble(top -> top.least(top.margins)).max().orElse(0);
        List<Slopes> near = tops.stream()
                .filter(top -> top.least(top.margins) >= most - ALIKE * Math.abs(most))
                .toList();
        Slopes best = near.getFirst();
        double height = near.size() > 1 ? Together.at(felt.axes, felt.margins, best.values) : 0;
        for (Slopes top : near.subList(1, near.size())) {
            double reached = Together.at(felt.axes, felt.margins, top.values);
            if (reached > height * (1 + BETTER)) {
                best = top;
                height = reached;
            }
        }
        return best;
    }

    /// Finds a place where no part fails, any such place; else the best that it came to.
    ///
    /// @param axes the marks
    /// @param margins the parts' margins
    /// @param seeds starts that the caller thinks are good, each a value an axis; may be empty
    /// @return a value an axis, in the axes' order, free ones not stepped
    public static double[] hold(List<Axis> axes, Margins margins, List<double[]> seeds) {
        double[] as = values(axes);
        Felt felt = Felt.of(axes, margins, as);
        double[] best = felt.part(as);
        double height = Margins.least(felt.margins.at(best));
        for (double[] start : promising(felt, as, seeds)) {
            double[] top = Climb.untilHeld(felt.axes, felt.margins, start, Climb.NONE);
            double reached = Margins.least(felt.margins.at(top));
            if (reached > height) {
                best = top;
                height = reached;
            }
            if (height >= 0) {
                break;
            }
        }
        return felt.whole(best);
    }

    /// The few best of the given starts, where the axes stand, and a scatter.
    private static List<double[]> promising(Felt felt, double[] as, List<double[]> seeds) {
        Slopes scale = Slopes.at(felt.axes, felt.margins, felt.part(seeds.isEmpty() ? as : seeds.getFirst()));
        List<double[]> given = new ArrayList<>();
        seeds.forEach(seed -> given.add(felt.part(seed)));
        given.add(felt.part(as));
        List<double[]> starts = new ArrayList<>(best(given, felt.margins, scale, CLIMBED_GIVEN));
        starts.addAll(best(Scatter.over(felt.axes, SCATTERED), felt.margins, scale, CLIMBED_SCATTERED));
        return starts;
    }

    private static List<double[]> best(List<double[]> starts, Margins margins, Slopes scale, int count) {
        IdentityHashMap<double[], Double> heights = new IdentityHashMap<>();
        List<double[]> sorted = new ArrayList<>();
        for (double[] start : starts) {
            if (sorted.stream().noneMatch(other -> Arrays.equals(other, start))) {
                sorted.add(start);
                heights.put(start, scale.least(margins.at(start)));
            }
        }
        sorted.sort(Comparator.comparingDouble(start -> -heights.getOrDefault(start, 0.0)));
        return sorted.subList(0, Math.min(count, sorted.size()));
    }

    /// Raises the least margin of some parts, in their own unit, until they hold or as far as the others
    /// allow.
    ///
    /// @param axes the marks
    /// @param margins the parts' margins
    /// @param held the parts that must go on holding, by index; the others are raised
    /// @param start where to start, a value an axis
    /// @return a value an axis, free ones on whole steps; where stepping breaks something held, it is broken there
    /// too
    public static double[] raise(List<Axis> axes, Margins margins, int[] held, double[] start) {
        Felt felt = Felt.of(axes, margins, start);
        double[] top = Climb.inUnits(felt.axes, felt.margins, felt.part(start), held);
        return onSteps(axes, felt.whole(Steps.raise(felt.axes, felt.margins, top, held)));
    }

    /// Gives the least share (margin in placing errors of everything at once) at a place.
    ///
    /// @param axes the marks
    /// @param margins the parts' margins
    /// @param values where the marks stand
    /// @return the least share, at most [#LOOSE], negative where a part fails
    public static double height(List<Axis> axes, Margins margins, double[] values) {
        return Climb.height(axes, margins, values);
    }

    /// Tells whether moving any free axis changes any failing part.
    ///
    /// @param axes the marks
    /// @param margins the parts' margins
    /// @param values where the marks stand
    /// @return false where the parts that fail are deaf to every free axis
    public static boolean feelsFree(List<Axis> axes, Margins margins, double[] values) {
        double[] here = margins.at(values);
        double[] moved = values.clone();
        for (int a = 0; a < values.length; a++) {
            Axis axis = axes.get(a);
            if (axis.isFree()) {
                for (double share = 0; share <= 1; share += 0.25) {
                    moved[a] = axis.low() + share * (axis.high() - axis.low());
                    double[] there = margins.at(moved);
                    for (int p = 0; p < here.length; p++) {
                        if (here[p] < 0 && Math.abs(there[p] - here[p]) > 1e-9) {
                            return true;
                        }
                    }
                }
                moved[a] = values[a];
            }
        }
        return false;
    }

    /// Raises some parts until they hold too, while the others stay at zero or above.
    ///
    /// @param axes the marks
    /// @param margins the parts' margins
    /// @param held the parts that must go on holding, by index
    /// @param start where to start, a value an axis
    /// @return a value an axis, free ones not stepped
    public static double[] mend(List<Axis> axes, Margins margins, int[] held, double[] start) {
        Felt felt = Felt.of(axes, margins, start);
        return felt.whole(Climb.untilHeld(felt.axes, felt.margins, felt.part(start), held));
    }

    /// Gives the connected interval round an axis's value in which no part fails, the others as set; see [Leeway].
    ///
    /// @param axes the marks
    /// @param margins the parts' margins, all of which hold at `values`
    /// @param values where the marks stand
    /// @param axis which axis to move
    /// @return both sides; zero where a part fails already
    public static Leeway leeway(List<Axis> axes, Margins margins, double[] values, int axis) {
        Axis moved = axes.get(axis);
        if (!Felt.isFelt(moved, axis, margins, values)) {
            return new Leeway(new Leeway.Side.Endless(), new Leeway.Side.Endless());
        }
        return new Leeway(Edge.find(moved, margins, values, axis, -1), Edge.find(moved, margins, values, axis, 1));
    }

    /// Gives how far everything may be off together, in placing errors.
    ///
    /// @param axes the marks, locked ones too
    /// @param margins the parts' margins
    /// @param values where the marks stand
    /// @return the number of placing errors, 0 where a part fails, at most [#LOOSE]
    public static double together(List<Axis> axes, Margins margins, double[] values) {
        Felt felt = Felt.of(axes, margins, values);
        return Together.at(felt.axes, felt.margins, felt.part(values));
    }

    /// Gives where the axes stand.
    ///
    /// @param axes the marks
    /// @return a value an axis
    public static double[] values(List<Axis> axes) {
        double[] values = new double[axes.size()];
        for (int a = 0; a < values.length; a++) {
            values[a] = axes.get(a).value();
        }
        return values;
    }

    /// Brings free axes to the nearest whole step inside their range.
    ///
    /// @param axes the marks
    /// @param values a value an axis
    /// @return a value an axis
    public static double[] onSteps(List<Axis> axes, double[] values) {
        return Steps.snapped(axes, values);
    }
}
