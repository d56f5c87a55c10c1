package plumeline.search;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/// Climbs from one start to the nearest place where the least share can't be raised further, then raises the next.
///
/// Each step solves a linear programme in a box of trusted moves; the box grows where the prediction was right and
/// shrinks where it was not (sequential linear programming with a trust region; the answer of a max–min problem usually
/// lies at a corner of as many parts as there are free marks, where such steps converge quickly).
final class Climb {
    private static final int STEPS = 40;
    private static final int MOST_CUTS = 6;
    /// How many steps in a row may fail to rise above the best place.
    private static final int PATIENCE = 5;
    static final int ROUNDS = 4;
    static final int[] NONE = {};
    private static final double LEVEL_TOLERANCE = 2e-3;
    /// So many steps in a row that had to be shortened mean that no longer ones will come.
    private static final int TURNED_BACK = 3;
    /// Where steps shrink and this many of them, each as good as is promised, wouldn't be enough, more are no use.
    private static final int PROSPECT = 15;
    /// A step that promises less than this share is not worth taking.
    private static final double GAIN = 5e-4;
    /// A last digit of a margin, in any unit.
    private static final double DIGIT = 1e-7;
    /// The share that what must hold keeps, so that it doesn't fail by a last digit.
    private static final double HELD = 1e-3;
    /// What a lost share of a settled part costs.
    private static final double FINE = 20;

    private final List<Axis> axes;
    private final Margins margins;
    private final int[] free;
    private Slopes here;
    /// Slopes at the last places that were tried and not taken.
    private final Deque<Slopes> cuts = new ArrayDeque<>();
    /// What each settled part must keep, as a share; NaN while it is still being raised.
    private final double[] kept;
    private final Count count;

    /// What is made large: the least share (margin in placing errors), or the least margin in the parts' own units.
    enum Count {
        SHARES,
        UNITS
    }

    private Climb(List<Axis> axes, Margins margins, double[] start, int[] held, Count count) {
        this.axes = axes;
        this.margins = margins;
        this.free = freeAxes(axes);
        this.here = Slopes.at(axes, margins, clamped(axes, start));
        this.kept = new double[here.margins.length];
        Arrays.fill(kept, Double.NaN);
        for (int part : held) {
            kept[part] = count == Count.UNITS ? 0 : HELD;
        }
        this.count = count;
    }

    /// Climbs in shares one round, or as many as raise anything.
    static Slopes from(List<Axis> axes, Margins margins, double[] start, int rounds) {
        Climb climb = new Climb(axes, margins, start, NONE, Count.SHARES);
        for (int round = 0; round < rounds && climb.anyRaised(); round++) {
            climb.raise(Search.LOOSE);
            climb.here = Slopes.at(axes, margins, climb.here.values);
            if (round + 1 < rounds) {
                climb.settle();
            }
        }
        return climb.here;
    }

    /// Climbs until nothing that is raised fails any more.
    static double[] untilHeld(List<Axis> axes, Margins margins, double[] start, int[] held) {
        Climb climb = new Climb(axes, margins, start, held, Count.SHARES);
        climb.raise(0);
        return climb.here.values;
    }

    /// Raises the least margin of what isn't held, in the parts' own units, until nothing fails.
    static double[] inUnits(List<Axis> axes, Margins margins, double[] start, int[] held) {
        Climb climb = new Climb(axes, margins, start, held, Count.UNITS);
        climb.raise(0);
        return climb.here.values;
    }

    /// By what a part's margin is divided where it is raised.
    private double scale(Slopes at, int part) {
        return count == Count.UNITS ? 1 : at.feel[part];
    }

    private double counted(Slopes at, int part, double margin) {
        if (count == Count.SHARES) {
            return at.share(part, margin);
        }
        return at.isFlat(part) ? Search.LOOSE : Math.min(margin, Search.LOOSE);
    }

    /// Gives the least share at a place, by slopes taken there.
    static double height(List<Axis> axes, Margins margins, double[] values) {
        Slopes slopes = Slopes.at(axes, margins, values);
        return slopes.least(slopes.margins);
    }

    private void raise(double enough) {
        double[] box = new double[free.length];
        for (int i = 0; i < free.length; i++) {
            Axis axis = axes.get(free[i]);
            box[i] = Math.min((axis.high() - axis.low()) / 4, 40 * Math.max(axis.placingError(), axis.step()));
        }
        Slopes best = here;
        double height = merit(here, here.margins);
        int lower = 0;
        int shrunk = 0;
        for (int step = 0;
                step < STEPS && !isEnough(best, height, enough) && lower < PATIENCE && !isSmall(box);
                step++) {
            double now = merit(here, here.margins);
            double[] move = bestMove(box, now);
            if (move.length == 0 && free.length > 0) {
                shrink(box, 0.25);
                continue;
            }
            double predicted = merit(here, predictedMargins(move)) - now;
            boolean isHopeless = enough < Search.LOOSE
                    && shrunk >= TURNED_BACK
                    && count == Count.SHARES
                    && now + PROSPECT * predicted < enough;
            if (predicted < GAIN || isHopeless) {
                break;
            }
            double width = box[0];
            if (take(move, box, now, predicted)) {
                double there = merit(here, here.margins);
                lower = there > height + GAIN ? 0 : lower + 1;
                if (there > height) {
                    best = here;
                    height = there;
                }
            }
            shrunk = box[0] < width ? shrunk + 1 : 0;
        }
        here = best;
    }

    /// Takes a step where it gains what was predicted, counted in the placing errors felt before it: what is felt
    /// changes along the way, so that a step may look worse at its end and still lead on. Tells whether it was
    /// taken.
    private boolean take(double[] move, double[] box, double now, double predicted) {
        double[] there = here.values.clone();
        for (int i = 0; i < free.length; i++) {
            there[free[i]] = Math.clamp(
                    there[free[i]] + move[i],
                    axes.get(free[i]).low(),
                    axes.get(free[i]).high());
        }
        double[] marginsThere = margins.at(there);
        double gained = merit(here, marginsThere) - now;
        if (gained > 0.1 * predicted) {
            here = movedTo(there, marginsThere);
            shrink(box, gained > 0.7 * predicted ? 2 : 1);
            return true;
        }
        // Another piece of some part took over on the way: remember how it runs, so that the next step minds it.
        cuts.addLast(movedTo(there, marginsThere));
        if (cuts.size() > MOST_CUTS) {
            cuts.removeFirst();
        }
        shrink(box, 0.5);
        return false;
    }

    private Slopes movedTo(double[] there, double[] marginsThere) {
        Slopes.Differences differences = count == Count.UNITS ? Slopes.Differences.CENTRAL : Slopes.Differences.FORWARD;
        return here.movedTo(axes, margins, there, marginsThere, differences);
    }

    private double[] bestMove(double[] box, double now) {
        Programme programme = programme(box, Math.min(now, 0) - 1);
        for (int p = 0; p < here.margins.length; p++) {
            if (!Double.isNaN(kept[p])) {
                programme.hold(here.margins[p], freeSlope(p), floor(p, box));
            } else if (!here.isFlat(p)) {
                programme.raise(here.margins[p], freeSlope(p), scale(here, p));
            } else if (here.margins[p] >= 0) {
                programme.hold(here.margins[p], freeSlope(p), 0);
            }
        }
        for (Slopes cut : cuts) {
            mind(programme, cut);
        }
        return programme.best(Search.LOOSE);
    }

    /// What a settled part must keep at the end of a step; where it has lost some, half of what the box could give it
    /// back.
    private double floor(int part, double[] box) {
        double gain = 0;
        for (int i = 0; i < free.length; i++) {
            gain += Math.abs(here.slope[part][free[i]]) * box[i];
        }
        double level = kept[part] * here.feel[part];
        return Math.min(here.margins[part] + gain / 2, here.isFlat(part) ? DIGIT : level);
    }

    /// Adds the pieces of parts that run as they did at a place that was tried and not taken.
    private void mind(Programme programme, Slopes cut) {
        for (int p = 0; p < here.margins.length; p++) {
            double[] slope = new double[free.length];
            double margin = cut.margins[p];
            for (int i = 0; i < free.length; i++) {
                slope[i] = cut.slope[p][free[i]];
                margin += slope[i] * (here.values[free[i]] - cut.values[free[i]]);
            }
            boolean isAnother = margin >= here.margins[p] && !here.isFlat(p);
            if (isAnother && Double.isNaN(kept[p])) {
                programme.raise(margin, slope, scale(here, p));
            } else if (isAnother) {
                programme.hold(margin, slope, Math.min(here.margins[p], kept[p] * here.feel[p]));
            }
        }
    }

    private Programme programme(double[] box, double baseShare) {
        double[] low = new double[free.length];
        double[] high = new double[free.length];
        for (int i = 0; i < free.length; i++) {
            Axis axis = axes.get(free[i]);
            low[i] = Math.max(-box[i], axis.low() - here.values[free[i]]);
            high[i] = Math.min(box[i], axis.high() - here.values[free[i]]);
        }
        return new Programme(low, high, baseShare);
    }

    private double[] freeSlope(int part) {
        double[] slope = new double[free.length];
        for (int i = 0; i < free.length; i++) {
            slope[i] = here.slope[part][free[i]];
        }
        return slope;
    }

    private double[] predictedMargins(double[] move) {
        double[] predicted = here.margins.clone();
        for (int p = 0; p < predicted.length; p++) {
            for (int i = 0; i < free.length; i++) {
                predicted[p] += here.slope[p][free[i]] * move[i];
            }
        }
        return predicted;
    }

    /// The least share among the parts still being raised, less a fine for every settled part that lost what it had.
    private double merit(Slopes scale, double[] at) {
        double least = Search.LOOSE;
        for (int p = 0; p < at.length; p++) {
            if (Double.isNaN(kept[p])) {
                least = Math.min(least, counted(scale, p, at[p]));
            }
        }
        return least - FINE * lost(scale, at);
    }

    /// What the settled parts have lost, in shares.
    private double lost(Slopes scale, double[] at) {
        double lost = 0;
        for (int p = 0; p < at.length; p++) {
            if (Double.isNaN(kept[p])) {
                continue;
            }
            // What no placing error moves has no share: it holds or it doesn't, but for a last digit.
            boolean isKept = scale.isFlat(p) && at[p] >= -DIGIT;
            lost += isKept ? 0 : Math.max(0, kept[p] - scale.share(p, at[p]));
        }
        return lost;
    }

    private boolean isEnough(Slopes best, double height, double enough) {
        return height >= enough && lost(best, best.margins) <= HELD / 2;
    }

    /// Settles the parts that stand at the least share and can't be raised alone, so that the next round raises the
    /// others.
    private void settle() {
        double least = merit(here, here.margins);
        boolean[] lowest = new boolean[kept.length];
        boolean[] stuck = new boolean[kept.length];
        boolean anyStuck = false;
        for (int p = 0; p < kept.length; p++) {
            lowest[p] = Double.isNaN(kept[p]) && here.share(p, here.margins[p]) <= least + LEVEL_TOLERANCE;
            stuck[p] = lowest[p] && (least >= Search.LOOSE || isStuck(p, least));
            anyStuck |= stuck[p];
        }
        for (int p = 0; p < kept.length; p++) {
            if (stuck[p] || (lowest[p] && !anyStuck)) {
                kept[p] = here.share(p, here.margins[p]) - LEVEL_TOLERANCE;
            }
        }
    }

    /// Tells whether a part can't be raised, to first order, while all others keep the least share.
    private boolean isStuck(int part, double least) {
        if (here.isFlat(part)) {
            return true;
        }
        double[] box = new double[free.length];
        for (int i = 0; i < free.length; i++) {
            box[i] = axes.get(free[i]).step() * 5;
        }
        Programme programme = programme(box, least - 1);
        for (int p = 0; p < here.margins.length; p++) {
            if (p == part) {
                programme.raise(here.margins[p], freeSlope(p), here.feel[p]);
            } else {
                double level = (Double.isNaN(kept[p]) ? least : kept[p]) * here.feel[p];
                programme.hold(here.margins[p], freeSlope(p), Math.min(here.margins[p], level));
            }
        }
        double[] move = programme.best(Search.LOOSE);
        if (move.length == 0) {
            return true;
        }
        double raised = here.share(part, predictedMargins(move)[part]);
        return raised < here.share(part, here.margins[part]) + 4 * LEVEL_TOLERANCE;
    }

    private boolean anyRaised() {
        for (double level : kept) {
            if (Double.isNaN(level)) {
                return free.length > 0;
            }
        }
        return false;
    }

    private boolean isSmall(double[] box) {
        for (int i = 0; i < free.length; i++) {
            if (box[i] > axes.get(free[i]).step() * 1e-3) {
                return false;
            }
        }
        return true;
    }

    private static void shrink(double[] box, double factor) {
        for (int i = 0; i < box.length; i++) {
            box[i] *= factor;
        }
    }

    private static int[] freeAxes(List<Axis> axes) {
        int[] all = new int[axes.size()];
        int count = 0;
        for (int a = 0; a < axes.size(); a++) {
            if (axes.get(a).isFree()) {
                all[count++] = a;
            }
        }
        return Arrays.copyOf(all, count);
    }

    private static double[] clamped(List<Axis> axes, double[] start) {
        double[] values = start.clone();
        for (int a = 0; a < values.length; a++) {
            values[a] = Math.clamp(values[a], axes.get(a).low(), axes.get(a).high());
        }
        return values;
    }
}
