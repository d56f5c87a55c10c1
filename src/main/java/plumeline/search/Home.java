package plumeline.search;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/// Least travel: among places that are as good, the one nearest to home.
///
/// Travel is the sum of the free axes' ways from home, each in its own steps. Every part keeps the margin that it has,
/// but for two thousandths of a placing error of everything at once; so only ties are moved.
final class Home {
    private static final double GIVEN_UP = 1e-3;

    private Home() {}

    static double[] nearest(List<Axis> axes, Margins margins, double[] best, double[] home) {
        Slopes at = Slopes.at(axes, margins, best);
        int parts = at.margins.length;
        double[] levels = new double[parts];
        for (int p = 0; p < parts; p++) {
            levels[p] = Math.min(at.margins[p] - GIVEN_UP * at.feel[p], Search.LOOSE * at.feel[p]);
        }
        Margins tied = values -> {
            double[] all = Arrays.copyOf(margins.at(values), parts + 1);
            for (int p = 0; p < parts; p++) {
                all[p] -= levels[p];
            }
            all[parts] = -travel(axes, values, home);
            return all;
        };
        double[] nearer =
                Climb.inUnits(axes, tied, best, IntStream.range(0, parts).toArray());
        double[] left = tied.at(nearer);
        boolean isKept = IntStream.range(0, parts).allMatch(p -> left[p] >= -GIVEN_UP * at.feel[p]);
        return isKept && travel(axes, nearer, home) < travel(axes, best, home) - 1 ? nearer : best;
    }

    private static double travel(List<Axis> axes, double[] values, double[] home) {
        double travel = 0;
        for (int a = 0; a < values.length; a++) {
            if (axes.get(a).isFree()) {
                travel += Math.abs(values[a] - home[a]) / axes.get(a).step();
            }
        }
        return travel;
    }
}
