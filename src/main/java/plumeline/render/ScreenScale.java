package plumeline.render;

import plumeline.colour.Srgb;

/// The screen's scale: which of 256 steps a share of white is shown by, to the nearest step.
///
/// **Source:** IEC 61966-2-1 (sRGB).
final class ScreenScale {
    /// The last step.
    static final int MOST = 255;

    /// So many parts that none holds more than one bound: the curve rises by at most `12.92 · 255` steps.
    private static final int PARTS = 4096;

    /// From where on a step is shown, share of white.
    private static final double[] BOUNDS = bounds();

    private static final int[] STEPS = steps();

    private ScreenScale() {}

    private static double[] bounds() {
        double[] bounds = new double[MOST + 2];
        for (int step = 1; step <= MOST; step++) {
            bounds[step] = Srgb.linear((step - 0.5) / MOST);
        }
        bounds[MOST + 1] = Double.POSITIVE_INFINITY;
        return bounds;
    }

    /// The step at each part's lower end.
    private static int[] steps() {
        int[] steps = new int[PARTS];
        int step = 0;
        for (int part = 0; part < PARTS; part++) {
            while (BOUNDS[step + 1] <= part / (double) PARTS) {
                step++;
            }
            steps[part] = step;
        }
        return steps;
    }

    /// Gives the step of a share of white.
    ///
    /// @param share linear; below 0 is black, over 1 white
    static int step(double share) {
        if (!(share > 0)) {
            return 0;
        }
        if (share >= 1) {
            return MOST;
        }
        int step = STEPS[(int) (share * PARTS)];
        return BOUNDS[step + 1] <= share ? step + 1 : step;
    }
}
