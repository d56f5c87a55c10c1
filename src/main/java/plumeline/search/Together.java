package plumeline.search;

import java.util.List;

/// How far everything may be off at once: the largest k such that every mark may be off by k placing errors.
///
/// Each part is followed to the corner of the box of placing errors that hurts it most (by the signs of its slopes, taken
/// again at the corner until they stay), and the box is grown until that corner fails. Exact where a part changes steadily
/// with each mark inside the box, which parts are made for.
final class Together {
    private static final int TURNS = 4;

    private final List<Axis> axes;
    private final Margins margins;
    private final double[] values;

    private Together(List<Axis> axes, Margins margins, double[] values) {
        this.axes = axes;
        this.margins = margins;
        this.values = values;
    }

    static double at(List<Axis> axes, Margins margins, double[] values) {
        return new Together(axes, margins, values).find();
    }

    private double find() {
        Slopes here = Slopes.at(axes, margins, values);
        if (Margins.least(here.margins) < 0) {
            return 0;
        }
        double least = Search.LOOSE;
        for (int p : inOrderOfShare(here)) {
            double[] corner = new double[values.length];
            for (int a = 0; a < corner.length; a++) {
                corner[a] = -Math.signum(here.slope[p][a]) * axes.get(a).placingError();
            }
            least = Math.min(least, partLimit(p, corner, least));
        }
        return least;
    }

    private double partLimit(int part, double[] corner, double known) {
        double limit = known;
        for (int turn = 0; turn < TURNS; turn++) {
            limit = Math.min(limit, grow(part, corner, limit));
            if (!turnCorner(part, corner, limit)) {
                break;
            }
        }
        return limit;
    }

    /// Looks at the slopes at the corner and turns the axes whose sign has changed; tells whether any did.
    private boolean turnCorner(int part, double[] corner, double size) {
        double[] there = offset(corner, size);
        boolean turned = false;
        double[] moved = there.clone();
        for (int a = 0; a < corner.length; a++) {
            double error = axes.get(a).placingError();
            if (error == 0) {
                continue;
            }
            double probe = axes.get(a).probe();
            moved[a] = there[a] + probe;
            double up = margins.at(moved)[part];
            moved[a] = there[a] - probe;
            double down = margins.at(moved)[part];
            moved[a] = there[a];
            double worse = up < down ? error : up > down ? -error : corner[a];
            if (worse != corner[a] && Math.abs(up - down) > 1e-12) {
                corner[a] = worse;
                turned = true;
            }
        }
        return turned;
    }

    private double grow(int part, double[] corner, double known) {
        if (margins.at(offset(corner, known))[part] >= 0) {
            return known;
        }
        double low = 0;
        double high = known;
        for (int i = 0; i < 40 && high - low > 1e-4 * Math.max(high, 1e-2); i++) {
            double middle = (low + high) / 2;
            if (margins.at(offset(corner, middle))[part] >= 0) {
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

    private static int[] inOrderOfShare(Slopes here) {
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
