package plumeline.rim;

import plumeline.optics.Boundary;

/// The refractive indices of round glass and what it stands between.
///
/// @param outside of what is about it, dimensionless, ≥ 1: air 1, water 1.333
/// @param glass of its wall, dimensionless, ≥ 1
/// @param liquid of what is in it below the level, dimensionless, ≥ 1; above it is air, 1
public record Indices(double outside, double glass, double liquid) {
    /// Usual container and window glass; 1.51 to 1.53 (common practice).
    public static final double GLASS = 1.52;

    /// Water at 20 degrees in yellow light.
    ///
    /// **Source:** 1.3330 at 589 nm, any handbook of physics and chemistry.
    public static final double WATER = 1.333;

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException where an index is below 1
    public Indices {
        new Boundary(outside, glass);
        new Boundary(glass, liquid);
    }
}
