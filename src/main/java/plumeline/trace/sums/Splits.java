package plumeline.trace.sums;

import java.util.function.DoubleUnaryOperator;

/// How light parts at a clear surface.
public final class Splits {
    private static final int STEPS = 256;

    private Splits() {}

    /// Gives the share of unpolarised light that is mirrored, all past the critical angle.
    ///
    /// **Source:** Fresnel's formulas, as in [plumeline.optics.Boundary], without its checks.
    ///
    /// @param cosine of the angle to the normal where the light comes from, 0 to 1
    /// @param from index there
    /// @param to index behind
    /// @return share of one
    public static double mirrored(double cosine, double from, double to) {
        double ratio = from / to;
        double square = ratio * ratio * (1 - cosine * cosine);
        if (square >= 1) {
            return 1;
        }
        return mirrored(cosine, from, Math.sqrt(1 - square), to);
    }

    /// Likewise by both cosines.
    ///
    /// @param cosine of the angle where the light comes from, 0 to 1
    /// @param from index there
    /// @param behind cosine of the angle behind
    /// @param to index behind
    /// @return share of one
    public static double mirrored(double cosine, double from, double behind, double to) {
        double one = from * cosine;
        double other = to * behind;
        double cross = to * cosine;
        double back = from * behind;
        // Both shares over one denominator: a division costs as much as all else here.
        double s = (one - other) * (cross + back);
        double p = (cross - back) * (one + other);
        double all = (one + other) * (cross + back);
        return (s * s + p * p) / (2 * all * all);
    }

    /// Gives Schlick's share for a metal.
    ///
    /// @param cosine of the angle to the normal, 0 to 1
    /// @param straightOn its share straight on
    /// @return share of one
    public static double metal(double cosine, double straightOn) {
        double rest = 1 - cosine;
        double square = rest * rest;
        return straightOn + (1 - straightOn) * square * square * rest;
    }

    /// Gives the share that is mirrored of light that comes alike from all round: twice the integral of share and
    /// cosine over the cosine.
    ///
    /// @param share by the cosine of the angle
    /// @return share of one
    public static double mean(DoubleUnaryOperator share) {
        double sum = 0;
        for (int i = 0; i < STEPS; i++) {
            double cosine = (i + 0.5) / STEPS;
            sum += 2 * cosine * share.applyAsDouble(cosine);
        }
        return sum / STEPS;
    }
}
