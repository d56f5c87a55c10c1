package plumeline.sound;

/// A filter of second order, `y = b0 x + b1 x₁ + b2 x₂ − a1 y₁ − a2 y₂`: its figures only.
///
/// @param b0 dimensionless
/// @param b1 dimensionless
/// @param b2 dimensionless
/// @param a1 dimensionless
/// @param a2 dimensionless
record Biquad(double b0, double b1, double b2, double a1, double a2) {
    /// Gives the filter of the same analogue prototype at another rate.
    ///
    /// The figures are those of `(Vh s² + Vb s k/q + V0) / (s² + s k/q + 1)` by the bilinear transform with its
    /// pole's frequency kept, `k = tan(π f / rate)`. Solved for k, q, Vh, Vb and V0: with `d = 1 − a1 + a2`,
    /// `k² = (1 + a1 + a2) / d`, `k/q = 2 (1 − a2) / d`, `Vh = (b0 − b1 + b2) / d`,
    /// `Vb = (b0 − b2) / (1 − a2)`, `V0 = (b0 + b1 + b2) / (1 + a1 + a2)`.
    ///
    /// **Source:** own derivation.
    ///
    /// @param fromHertz the rate of these figures, Hz, > 0
    /// @param toHertz the rate wanted, Hz, above twice the pole's frequency
    Biquad at(double fromHertz, double toHertz) {
        double d = 1 - a1 + a2;
        double k = Math.sqrt((1 + a1 + a2) / d);
        double inverseQ = 2 * (1 - a2) / d / k;
        double high = (b0 - b1 + b2) / d;
        double band = (b0 - b2) / (1 - a2);
        double low = (b0 + b1 + b2) / (1 + a1 + a2);
        double moved = StrictMath.tan(StrictMath.atan(k) * fromHertz / toHertz);
        double square = moved * moved;
        double slope = moved * inverseQ;
        double a0 = 1 + slope + square;
        return new Biquad(
                (high + band * slope + low * square) / a0,
                2 * (low * square - high) / a0,
                (high - band * slope + low * square) / a0,
                2 * (square - 1) / a0,
                (1 - slope + square) / a0);
    }

    /// Gives the square of how much it lets through.
    ///
    /// @param radians the frequency, radians a sample
    double power(double radians) {
        double above = square(b0 + b1 * Math.cos(radians) + b2 * Math.cos(2 * radians))
                + square(b1 * Math.sin(radians) + b2 * Math.sin(2 * radians));
        double below = square(1 + a1 * Math.cos(radians) + a2 * Math.cos(2 * radians))
                + square(a1 * Math.sin(radians) + a2 * Math.sin(2 * radians));
        return above / below;
    }

    private static double square(double x) {
        return x * x;
    }
}
