package plumeline.trace;

/// How light parts at a clear surface.
final class Splits {
    private static final int STEPS = 256;

    private Splits() {}

    /// Gives the share of unpolarised light that is mirrored, all past the critical angle.
    ///
    /// **Source:** Fresnel's formulas, as in [plumeline.optics.Boundary], without its checks.
    ///
    /// @param cosine of the angle to the normal where the light comes from, 0 to 1
    /// @param from index there
    /// @param to index behind
    static double mirrored(double cosine, double from, double to) {
        double ratio = from / to;
        double square = ratio * ratio * (1 - cosine * cosine);
        if (square >= 1) {
            return 1;
        }
        double behind = Math.sqrt(1 - square);
        double s = (from * cosine - to * behind) / (from * cosine + to * behind);
        double p = (to * cosine - from * behind) / (to * cosine + from * behind);
        return (s * s + p * p) / 2;
    }

    /// Gives Schlick's share for a metal.
    static double metal(double cosine, double straightOn) {
        double rest = 1 - cosine;
        double square = rest * rest;
        return straightOn + (1 - straightOn) * square * square * rest;
    }

    /// Gives the share that is mirrored of light that comes alike from all round: twice the integral of share and
    /// cosine over the cosine.
    static double mean(java.util.function.DoubleUnaryOperator share) {
        double sum = 0;
        for (int i = 0; i < STEPS; i++) {
            double cosine = (i + 0.5) / STEPS;
            sum += 2 * cosine * share.applyAsDouble(cosine);
        }
        return sum / STEPS;
    }
}
