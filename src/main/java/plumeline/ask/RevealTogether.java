package plumeline.ask;

import java.util.List;
import java.util.stream.IntStream;
import plumeline.search.Axis;
import plumeline.search.Margins;
import plumeline.search.Search;

/// How far everything may be off at once, in placing errors, asked of those parts only that can be the first to fail.
///
/// By first differences most parts are many times looser than the tightest: these are only proven to hold where they
/// are
/// hurt most, and all are asked in full where that doesn't show it.
final class RevealTogether {
    private static final double LOOSER = 3;

    private final List<Axis> axes;
    private final Margins margins;
    private final double[] values;
    private final double[] here;
    private final double[][] slopes;

    private RevealTogether(List<Axis> axes, Margins margins, double[] values) {
        this.axes = axes;
        this.margins = margins;
        this.values = values.clone();
        here = margins.at(values);
        slopes = new double[here.length][axes.size()];
        for (int a = 0; a < axes.size(); a++) {
            double error = axes.get(a).placingError();
            double[] up = margins.at(moved(a, error));
            double[] down = margins.at(moved(a, -error));
            for (int p = 0; p < here.length; p++) {
                slopes[p][a] = (up[p] - down[p]) / 2;
            }
        }
    }

    static double of(List<Axis> axes, Margins margins, double[] values) {
        return new RevealTogether(axes, margins, values).find();
    }

    private double[] moved(int axis, double by) {
        double[] moved = values.clone();
        moved[axis] += by;
        return moved;
    }

    private double find() {
        double[] shares = new double[here.length];
        for (int p = 0; p < here.length; p++) {
            double most = 0;
            for (double slope : slopes[p]) {
                most += Math.abs(slope);
            }
            shares[p] = most > 0 ? here[p] / most : Double.POSITIVE_INFINITY;
        }
        double tightest = Margins.least(shares);
        int[] kept = IntStream.range(0, shares.length)
                .filter(p -> shares[p] <= LOOSER * tightest)
                .toArray();
        double together = Search.together(axes, margins.only(kept), values);
        for (int p = 0; p < shares.length; p++) {
            if (shares[p] > LOOSER * tightest && margins.at(corner(p, together))[p] < 0) {
                return Search.together(axes, margins, values);
            }
        }
        return together;
    }

    /// Everything off by so many placing errors, each way that hurts a part most.
    private double[] corner(int part, double size) {
        double[] corner = values.clone();
        for (int a = 0; a < corner.length; a++) {
            corner[a] -= size * Math.signum(slopes[part][a]) * axes.get(a).placingError();
        }
        return corner;
    }
}
