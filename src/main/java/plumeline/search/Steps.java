package plumeline.search;

import java.util.List;

/// Brings free axes to whole steps that a hand can set, and tries the neighbouring steps.
final class Steps {
    private static final int PASSES = 3;
    private static final double BETTER = 1e-6;

    private Steps() {}

    static double[] settle(List<Axis> axes, Margins margins, double[] values, int[] held) {
        double[] set = values.clone();
        for (int a = 0; a < set.length; a++) {
            if (axes.get(a).isFree()) {
                set[a] = snap(axes.get(a), set[a]);
            }
        }
        Slopes scale = Slopes.at(axes, margins, set);
        double height = height(scale, scale.margins, held);
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
                    double there = height(scale, margins.at(set), held);
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

    /// The least share of what is raised, and far below everything where something held is lost.
    private static double height(Slopes scale, double[] margins, int[] held) {
        double[] raised = margins.clone();
        double lost = 0;
        for (int part : held) {
            lost = Math.min(lost, scale.share(part, margins[part]));
            raised[part] = Double.POSITIVE_INFINITY;
        }
        return lost < 0 ? lost - 2 * Search.LOOSE : scale.least(raised);
    }
}
