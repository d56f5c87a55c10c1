package plumeline.search;

import java.util.List;

/// Margins and their slopes at one place, by differences.
final class Slopes {
    /// Below this many units of margin a placing error, a part is taken not to feel the marks at all.
    private static final double FLAT = 1e-9;

    final double[] values;
    final double[] margins;
    final double[][] slope;
    /// Change of each part when every mark is off by its placing error the worst way, to first order.
    final double[] feel;

    private Slopes(double[] values, double[] margins, double[][] slope, double[] feel) {
        this.values = values;
        this.margins = margins;
        this.slope = slope;
        this.feel = feel;
    }

    static Slopes at(List<Axis> axes, Margins of, double[] values) {
        double[] margins = of.at(values);
        double[][] slope = new double[margins.length][axes.size()];
        double[] feel = new double[margins.length];
        double[] moved = values.clone();
        for (int a = 0; a < axes.size(); a++) {
            Axis axis = axes.get(a);
            if (!axis.isFree() && axis.placingError() == 0) {
                continue;
            }
            double probe = axis.probe();
            moved[a] = values[a] + probe;
            double[] up = of.at(moved);
            moved[a] = values[a] - probe;
            double[] down = of.at(moved);
            moved[a] = values[a];
            for (int p = 0; p < margins.length; p++) {
                slope[p][a] = (up[p] - down[p]) / (2 * probe);
                feel[p] += Math.abs(slope[p][a]) * axis.placingError();
            }
        }
        return new Slopes(values.clone(), margins, slope, feel);
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
