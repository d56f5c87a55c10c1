package plumeline.water;

/// What a pane is made of.
///
/// @param youngPascals Young's modulus, pascals, > 0
/// @param poisson Poisson's ratio, dimensionless, 0 to 0.5
public record PaneMaterial(double youngPascals, double poisson) {
    /// Annealed float glass.
    ///
    /// **Source:** EN 572-1: 70 GPa and 0.23 (from memory of it; the project's check values print 70,000 N/mm²
    /// too).
    public static final PaneMaterial FLOAT_GLASS = new PaneMaterial(70e9, 0.23);

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public PaneMaterial {
        Need.positive(youngPascals, "Young's modulus");
        Need.atMost(Need.notNegative(poisson, "Poisson's ratio"), 0.5, "Poisson's ratio");
    }
}
