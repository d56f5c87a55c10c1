package plumeline.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/// Where things may change places without loss, they stand in the order in which the plan names them.
final class WrittenOrder {
    private static final double LOSS = 1e-6;

    private WrittenOrder() {}

    /// Lets things change places as long as that brings them nearer to where the written order puts them.
    ///
    /// @param axes the marks
    /// @param si where they stand
    /// @param home where the written order puts them
    /// @param height what must not become less
    static double[] of(Axes axes, double[] si, double[] home, ToDoubleFunction<double[]> height) {
        List<int[]> things = freeThings(axes);
        double[] best = si;
        double least = height.applyAsDouble(si);
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int one = 0; one < things.size(); one++) {
                for (int other = one + 1; other < things.size(); other++) {
                    double[] swapped = swapped(axes, best, things.get(one), things.get(other));
                    if (way(swapped, home) < way(best, home) - LOSS
                            && height.applyAsDouble(swapped) >= least - LOSS * Math.abs(least)) {
                        best = swapped;
                        changed = true;
                    }
                }
            }
        }
        return best;
    }

    /// For each thing with several free marks or one, where its free x, y and z are; -1 where locked.
    private static List<int[]> freeThings(Axes axes) {
        Map<String, int[]> things = new TreeMap<>();
        for (int i = 0; i < axes.marks().size(); i++) {
            String path = axes.marks().get(i).mark().path();
            int coordinate = List.of(".x", ".y", ".z").indexOf(path.substring(Math.max(0, path.length() - 2)));
            boolean isThing = !path.startsWith("camera.") && !path.startsWith("release.");
            if (isThing && coordinate >= 0 && axes.marks().get(i).mark().isFree()) {
                things.computeIfAbsent(path.substring(0, path.length() - 2), _ -> new int[] {-1, -1, -1})[coordinate] =
                        i;
            }
        }
        return new ArrayList<>(things.values());
    }

    /// The marks with two things' free coordinates exchanged; as they were where the things aren't free alike.
    private static double[] swapped(Axes axes, double[] si, int[] one, int[] other) {
        double[] swapped = si.clone();
        for (int c = 0; c < one.length; c++) {
            if (one[c] < 0 != other[c] < 0) {
                return si;
            }
            if (one[c] >= 0) {
                swapped[one[c]] = si[other[c]];
                swapped[other[c]] = si[one[c]];
            }
        }
        return isInRange(axes, swapped) ? swapped : si;
    }

    private static boolean isInRange(Axes axes, double[] si) {
        for (int i = 0; i < si.length; i++) {
            var mark = axes.marks().get(i);
            if (mark.mark().isFree() && (si[i] < mark.lowSi() || si[i] > mark.highSi())) {
                return false;
            }
        }
        return true;
    }

    private static double way(double[] si, double[] home) {
        double[] ways = new double[si.length];
        Arrays.setAll(ways, i -> Math.abs(si[i] - home[i]));
        return Arrays.stream(ways).sum();
    }
}
