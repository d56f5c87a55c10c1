package plumeline.search;

import java.util.ArrayList;
import java.util.List;

/// Starts spread evenly over the free ranges: the R-sequence, a fixed low-discrepancy sequence.
///
/// **Source:** own construction after M. Roberts, "The unreasonable effectiveness of quasirandom sequences" (2018):
/// steps are powers of the root of x^(d+1) = x + 1. From memory.
final class Scatter {
    private Scatter() {}

    static List<double[]> over(List<Axis> axes, int count) {
        int dimensions = (int) axes.stream().filter(Axis::isFree).count();
        double root = 1.5;
        for (int i = 0; i < 60; i++) {
            root = Math.pow(1 + root, 1.0 / (dimensions + 1));
        }
        List<double[]> starts = new ArrayList<>(count);
        for (int n = 1; n <= count; n++) {
            double[] start = Search.values(axes);
            double step = 1;
            for (int a = 0; a < start.length; a++) {
                Axis axis = axes.get(a);
                if (axis.isFree()) {
                    step /= root;
                    double share = (0.5 + n * step) % 1;
                    start[a] = axis.low() + share * (axis.high() - axis.low());
                }
            }
            starts.add(start);
        }
        return starts;
    }
}
