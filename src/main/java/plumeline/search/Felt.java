package plumeline.search;

import java.util.ArrayList;
import java.util.List;

/// A search with the axes left out that no part feels, so that nothing is spent on them.
///
/// An axis is left out where a probe and a long move, both ways, from two places change no part's last digit.
final class Felt {
    private static final double LONG = 0.07;

    final List<Axis> axes = new ArrayList<>();
    final Margins margins;
    private final double[] all;
    private final int[] kept;

    private Felt(double[] all, int[] kept, List<Axis> from, Margins of) {
        this.all = all;
        this.kept = kept;
        for (int index : kept) {
            axes.add(from.get(index));
        }
        this.margins = new Margins() {
            @Override
            public double[] at(double[] values) {
                return of.at(whole(values));
            }

            @Override
            public Margins only(int[] parts) {
                Margins some = of.only(parts);
                return values -> some.at(whole(values));
            }
        };
    }

    static Felt of(List<Axis> axes, Margins of, double[] values) {
        double[] elsewhere = values.clone();
        for (int a = 0; a < elsewhere.length; a++) {
            Axis axis = axes.get(a);
            elsewhere[a] = axis.isFree() ? axis.low() + 0.4 * (axis.high() - axis.low()) : values[a];
        }
        List<Integer> felt = new ArrayList<>();
        double[] here = of.at(values);
        double[] there = of.at(elsewhere);
        for (int a = 0; a < axes.size(); a++) {
            if (isFelt(axes.get(a), a, of, values, here) || isFelt(axes.get(a), a, of, elsewhere, there)) {
                felt.add(a);
            }
        }
        return new Felt(
                values.clone(), felt.stream().mapToInt(Integer::intValue).toArray(), axes, of);
    }

    /// Whether any part changes with an axis near some values.
    static boolean isFelt(Axis axis, int a, Margins of, double[] values) {
        return isFelt(axis, a, of, values, of.at(values));
    }

    private static boolean isFelt(Axis axis, int a, Margins of, double[] values, double[] here) {
        double[] moved = values.clone();
        for (double by : new double[] {axis.probe(), LONG, -LONG}) {
            moved[a] = values[a] + by;
            double[] there = of.at(moved);
            for (int p = 0; p < here.length; p++) {
                if (Double.doubleToLongBits(here[p]) != Double.doubleToLongBits(there[p])) {
                    return true;
                }
            }
        }
        return false;
    }

    /// The felt axes' values out of all.
    double[] part(double[] whole) {
        double[] part = new double[kept.length];
        for (int i = 0; i < kept.length; i++) {
            part[i] = whole[kept[i]];
        }
        return part;
    }

    /// All axes' values, those left out as they were.
    double[] whole(double[] part) {
        double[] whole = all.clone();
        for (int i = 0; i < kept.length; i++) {
            whole[kept[i]] = part[i];
        }
        return whole;
    }
}
