package plumeline.search;

import java.util.List;

/// Margins and their slopes at one place, by differences.
///
/// The slopes along locked axes count only in how much a part feels placing errors; they change slowly, so a climb
/// takes them once a round and those along free axes at every step.
final class Slopes {
    /// Below this many units of margin a placing error, a part is taken not to feel the marks at all.
    private static final double FLAT = 1e-9;

    /// How slopes are taken: one-sided ones cost half and serve where parts are smooth.
    enum Differences {
        CENTRAL,
        FORWARD
    }

    final double[] values;
    final double[] margins;
    final double[][] slope;
    /// Change of each part when every mark is off by its placing error the worst way, to first order.
    final double[] feel;

    private Slopes(double[] values, double[] margins, double[][] slope, List<Axis> axes) {
        this.values = values;
        this.margins = margins;
        this.slope = slope;
        this.feel = new double[margins.length];
        for (int p = 0; p < margins.length; p++) {
            for (int a = 0; a < axes.size(); a++) {
                feel[p] += Math.abs(slope[p][a]) * axes.get(a).placingError();
            }
        }
    }

    /// Slopes along every axis.
    static Slopes at(List<Axis> axes, Margins of, double[] values) {
        double[] margins = of.at(values);
        double[][] slope = new double[margins.length][axes.size()];
        for (int a = 0; a < axes.size(); a++) {
            if (axes.get(a).isFree() || axes.get(a).placingError() > 0) {
                take(slope, a, axes.get(a), of, values);
            }
        }
        return new Slopes(values.clone(), margins, slope, axes);
    }

    /// Slopes at another place: along free axes taken there, along locked ones kept from here.
    Slopes movedTo(List<Axis> axes, Margins of, double[] there, double[] marginsThere, Differences differences) {
        double[][] next = new double[slope.length][];
        for (int p = 0; p < slope.length; p++) {
            next[p] = slope[p].clone();
        }
        for (int a = 0; a < axes.size(); a++) {
            if (axes.get(a).isFree()) {
                switch (differences) {
                    case CENTRAL -> take(next, a, axes.get(a), of, there);
                    case FORWARD -> takeForward(next, a, axes.get(a), of, there, marginsThere);
                }
            }
        }
        return new Slopes(there.clone(), marginsThere, next, axes);
    }

    private static void takeForward(
            double[][] slope, int a, Axis axis, Margins of, double[] values, double[] marginsThere) {
        double probe = values[a] + axis.probe() > axis.high() ? -axis.probe() : axis.probe();
        double[] moved = values.clone();
        moved[a] = values[a] + probe;
        double[] there = of.at(moved);
        for (int p = 0; p < slope.length; p++) {
            slope[p][a] = (there[p] - marginsThere[p]) / probe;
        }
    }

    private static void take(double[][] slope, int a, Axis axis, Margins of, double[] values) {
        double probe = axis.probe();
        double[] moved = values.clone();
        moved[a] = values[a] + probe;
        double[] up = of.at(moved);
        moved[a] = values[a] - probe;
        double[] down = of.at(moved);
        for (int p = 0; p < slope.length; p++) {
            slope[p][a] = (up[p] - down[p]) / (2 * probe);
        }
    }

    /// A part's margin counted in placing errors of everything at once; the quantity that solving makes large.
    double share(int part, double margin) {
        if (feel[part] < FLAT) {
            return margin >= 0 ? Search.LOOSE : -Search.LOOSE;
        }
        return Math.clamp(margin / feel[part], -Search.LOOSE, Search.LOOSE);
    }

    /// The least share of margins, counted in these slopes' placing errors.
    double least(double[] at) {
        double least = Search.LOOSE;
        for (int p = 0; p < at.length; p++) {
            least = Math.min(least, share(p, at[p]));
        }
        return least;
    }

    boolean isFlat(int part) {
        return feel[part] < FLAT;
    }
}
