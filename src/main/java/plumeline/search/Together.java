package plumeline.search;

import java.util.List;

/// How far everything may be off at once: the largest k such that every mark may be off by k placing errors.
///
/// Each part is followed to the corner of the box of placing errors that hurts it most (first by the signs of its
/// slopes, then by turning single axes until none makes it worse), and the box is grown until that corner fails. Exact
/// where a part changes steadily with each mark inside the box, which parts are made for; a few further corners are
/// looked at for those that don't.
final class Together {
    private static final int TURNS = 4;
    private static final int CORNERS = 8;
    private static final double SAME = 1e-12;

    /// Steps on the way to a corner: none is shorter than a share of the way so far, nor the first longer than this
    /// many placing errors.
    private static final double STEP_SHARE = 0.2;

    private static final double LEAST_STEP = 0.01;
    private static final double FIRST_STEP = 1;

    private final List<Axis> axes;
    private final Margins margins;
    private final double[] values;
    private final Slopes here;

    private Together(List<Axis> axes, Margins margins, double[] values) {
        this.axes = axes;
        this.margins = margins;
        this.values = values;
        here = Slopes.at(axes, margins, values);
    }

    static double at(List<Axis> axes, Margins margins, double[] values) {
        return new Together(axes, margins, values).find();
    }

    private double find() {
        if (here.margins.length == 0) {
            return Search.LOOSE;
        }
        if (Margins.least(here.margins) < 0) {
            return 0;
        }
        double least = Search.LOOSE;
        for (int p : inOrderOfShare()) {
            double[] corner = new double[values.length];
            for (int a = 0; a < corner.length; a++) {
                corner[a] = -Math.signum(here.slope[p][a]) * axes.get(a).placingError();
            }
            least = Math.min(least, partLimit(p, corner, least));
        }
        return scattered(least);
    }

    private double partLimit(int part, double[] corner, double known) {
        Margins own = margins.only(new int[] {part});
        double limit = known;
        for (int turn = 0; turn < TURNS; turn++) {
            limit = Math.min(limit, grow(own, part, corner, limit));
            if (!turnCorner(own, corner, limit)) {
                break;
            }
        }
        return limit;
    }

    /// Looks from further corners too: a part that is the least of several things may have more than one bad corner.
    private double scattered(double known) {
        double limit = known;
        long bits = 0x9E3779B97F4A7C15L;
        for (int i = 0; i < CORNERS && limit > 0; i++) {
            bits = bits * 6364136223846793005L + 1442695040888963407L;
            double[] corner = new double[values.length];
            for (int a = 0; a < corner.length; a++) {
                corner[a] = ((bits >>> (20 + a % 40)) & 1) == 0
                        ? axes.get(a).placingError()
                        : -axes.get(a).placingError();
            }
            double[] there = margins.at(offset(corner, limit));
            int worst = 0;
            for (int p = 1; p < there.length; p++) {
                worst = here.share(p, there[p]) < here.share(worst, there[worst]) ? p : worst;
            }
            limit = Math.min(limit, partLimit(worst, corner, limit));
        }
        return limit;
    }

    /// Turns each axis whose other side is worse for the part at the corner; tells whether any was turned.
    private boolean turnCorner(Margins own, double[] corner, double size) {
        double now = own.at(offset(corner, size))[0];
        boolean turned = false;
        for (int a = 0; a < corner.length; a++) {
            double error = axes.get(a).placingError();
            double before = corner[a];
            for (double way : before == 0 ? new double[] {error, -error} : new double[] {-before}) {
                double kept = corner[a];
                corner[a] = way;
                double there = error == 0 ? now : own.at(offset(corner, size))[0];
                if (there < now - SAME) {
                    now = there;
                    turned = true;
                } else {
                    corner[a] = kept;
                }
            }
        }
        return turned;
    }

    /// The first size at which a part fails on the way to a corner. Walked from where the marks are set, in steps as
    /// long as the margin there lasts by its slopes, twice as far at most: beyond a failure things may have passed
    /// each other and hold again.
    private double grow(Margins own, int part, double[] corner, double known) {
        double low = 0;
        double margin = here.margins[part];
        while (low < known) {
            double lasts = here.feel[part] > 0 ? margin / here.feel[part] : Search.LOOSE;
            double step = Math.clamp(lasts, STEP_SHARE * low + LEAST_STEP, Math.max(low, FIRST_STEP));
            double next = Math.min(known, low + step);
            margin = own.at(offset(corner, next))[0];
            if (margin < 0) {
                return failing(own, corner, low, next);
            }
            low = next;
        }
        return known;
    }

    /// The size at which a part begins to fail, between one at which it holds and one at which it doesn't.
    private double failing(Margins own, double[] corner, double holds, double fails) {
        double low = holds;
        double high = fails;
        for (int i = 0; i < 40 && high - low > 1e-4 * Math.max(high, 1e-2); i++) {
            double middle = (low + high) / 2;
            if (own.at(offset(corner, middle))[0] >= 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private double[] offset(double[] corner, double size) {
        double[] there = values.clone();
        for (int a = 0; a < there.length; a++) {
            there[a] += corner[a] * size;
        }
        return there;
    }

    private int[] inOrderOfShare() {
        Integer[] order = new Integer[here.margins.length];
        for (int p = 0; p < order.length; p++) {
            order[p] = p;
        }
        java.util.Arrays.sort(
                order, (a, b) -> Double.compare(here.share(a, here.margins[a]), here.share(b, here.margins[b])));
        int[] parts = new int[order.length];
        for (int p = 0; p < parts.length; p++) {
            parts[p] = order[p];
        }
        return parts;
    }
}
