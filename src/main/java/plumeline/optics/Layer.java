package plumeline.optics;

import plumeline.ranges.Ranges;

/// A flat layer with parallel faces, seen from air: a pane, or the water a ray crosses behind it. Derived in
/// `docs/derivations/flat-wall.md`.
///
/// Letters: t thickness, n index, θ the ray's angle to the layer's normal in air.
///
/// @param thicknessMetres t, metres, ≥ 0
/// @param index n, dimensionless, relative to air, ≥ 1
public record Layer(double thicknessMetres, double index) {
    /// Index of window glass (soda lime; 1.51 to 1.53 in the green).
    public static final double GLASS_INDEX = 1.52;

    /// Index of fresh water relative to air, 20 degC, sodium light: 1.33299.
    public static final double WATER_INDEX = 1.333;

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException where t < 0 or n < 1
    public Layer {
        Ranges.checkNotNegative(thicknessMetres, "layer's thickness");
        Ranges.check(index >= 1 && index < 10, "index", index, "1 to 10");
    }

    /// Gives by how much what lies behind looks nearer, for rays near the normal: `t(1 − 1/n)`. Low by
    /// [#shiftErrorMetres] for a slanting ray.
    ///
    /// **Source:** apparent depth t/n (any optics text).
    ///
    /// @return shift along the normal, metres, ≥ 0
    public double paraxialShiftMetres() {
        return thicknessMetres * (1 - 1 / index);
    }

    /// Gives the exact shift for a ray: `t(1 − cos θ/√(n² − sin² θ))`.
    ///
    /// **Source:** Snell's law; own derivation, `docs/derivations/flat-wall.md`.
    ///
    /// @param airRadians θ, radians, −π/2 to π/2
    /// @return shift along the normal, metres, from the paraxial shift to t
    public double shiftMetres(double airRadians) {
        return thicknessMetres * (1 - shareSeen(slope(airRadians)));
    }

    /// Gives the error of the paraxial shift: exact − paraxial.
    ///
    /// **Source:** Snell's law; own derivation, `docs/derivations/flat-wall.md`.
    ///
    /// @param airRadians θ, radians, −π/2 to π/2
    /// @return error, metres, ≥ 0, growing with θ, at most t/n
    public double shiftErrorMetres(double airRadians) {
        double slope = slope(airRadians);
        double squared = 1 + (1 - 1 / (index * index)) * slope * slope;
        // 1 − 1/√q written so that it keeps its digits near the normal.
        double root = Math.sqrt(squared);
        double share = Double.isInfinite(squared) ? 1 : (squared - 1) / (root * (root + 1));
        return thicknessMetres / index * share;
    }

    /// Gives a bound of the paraxial shift's error that is simple and never too small: `t (n² − 1) tan² θ/(2n³)`.
    /// Within 2 % of the error for θ up to 11 degrees in water.
    ///
    /// **Source:** own derivation, `docs/derivations/flat-wall.md`.
    ///
    /// @param airRadians θ, radians, inside −π/2 to π/2
    /// @return bound, metres, ≥ 0
    public double shiftErrorBoundMetres(double airRadians) {
        double slope = slope(airRadians);
        return thicknessMetres * (index * index - 1) * slope * slope / (2 * index * index * index);
    }

    /// Gives how far a ray goes aside while it crosses the layer: `t tan θ'` with `sin θ = n sin θ'`.
    ///
    /// **Source:** Snell's law.
    ///
    /// @param airSlope tan θ, dimensionless
    /// @return way along the layer's faces, metres, of the slope's sign
    public double asideMetres(double airSlope) {
        return thicknessMetres * airSlope * shareSeen(airSlope);
    }

    /// `tan θ'/tan θ = 1/√(n² + (n² − 1) tan² θ)`: the share of the thickness that is seen.
    double shareSeen(double airSlope) {
        return 1 / Math.sqrt(index * index + (index * index - 1) * airSlope * airSlope);
    }

    private static double slope(double airRadians) {
        Ranges.check(Math.abs(airRadians) <= Math.PI / 2, "angle", airRadians, "-pi/2 to pi/2");
        return Math.tan(airRadians);
    }
}
