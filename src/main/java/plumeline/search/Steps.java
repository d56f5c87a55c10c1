package plumeline.search;

import java.util.List;
import java.util.function.ToDoubleFunction;

/// Brings free axes to whole steps that a hand can set, and tries the neighbouring steps.
final class Steps {
    private static final int PASSES = 3;
    private static final double BETTER = 1e-6;
    private static final double LOST = 1e6;

    private Steps() {}

    /// Steps that keep the least share as high as can be.
    static double[] settle(List<Axis> axes, Margins margins, double[] values) {
        double[] set = snapped(axes, values);
        Slopes scale = Slopes.at(axes, margins, set);
        return settle(axes, margins, set, scale::least);
    }

    /// Steps that keep the least margin of what isn't held as high as can be, in the parts' own unit, far below
    /// everything where something held is lost.
    static double[] raise(List<Axis> axes, Margins margins, double[] values, int[] held) {
        double[] set = snapped(axes, values);
        Slopes at = Slopes.at(axes, margins, set);
        return settle(axes, margins, set, there -> {
            double[] raised = there.clone();
            double lost = 0;
            for (int part : held) {
                lost = Math.min(lost, there[part]);
                raised[part] = Search.LOOSE;
            }
            for (int p = 0; p < raised.length; p++) {
                raised[p] = at.isFlat(p) ? Search.LOOSE : raised[p];
            }
            return lost < 0 ? lost - LOST : Margins.least(raised);
        });
    }

    private static double[] settle(
            List<Axis> axes, Margins margins, double[] start, ToDoubleFunction<double[]> heightOf) {
        double[] set = start.clone();
        double height = heightOf.applyAsDouble(margins.at(set));
        boolean improved = true;
        for (int pass = 0; pass < PASSES && improved; pass++) {
            improved = false;
            for (int a = 0; a < set.length; a++) {
                if (!axes.get(a).isFree()) {
                    continue;
                }
                for (int way = -1; way <= 1; way += 2) {
                    double before = set[a];
                    double tried = snap(axes.get(a), before + way * axes.get(a).step());
                    if (tried == before) {
                        continue;
                    }
                    set[a] = tried;
                    double there = heightOf.applyAsDouble(margins.at(set));
                    if (there > height + BETTER) {
                        height = there;
                        improved = true;
                    } else {
                        set[a] = before;
                    }
                }
            }
        }
        return set;
    }

    /// The nearest whole step inside the range; the range's end where no step lies inside.
    static double snap(Axis axis, double value) {
        double step = axis.step();
        double snapped = Math.rint(value / step) * step;
        if (snapped < axis.low()) {
            snapped = Math.ceil(axis.low() / step - 1e-9) * step;
        }
        if (snapped > axis.high()) {
            snapped = Math.floor(axis.high() / step + 1e-9) * step;
        }
        return snapped < axis.low() - 1e-12 ? axis.low() : snapped;
    }

    static double[] snapped(List<Axis> axes, double[] values) {
        double[] set = values.clone();
        for (int a = 0; a < set.length; a++) {
            if (axes.get(a).isFree()) {
                set[a] = snap(axes.get(a), set[a]);
            }
        }
        return set;
    }
}
