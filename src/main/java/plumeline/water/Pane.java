package plumeline.water;

import plumeline.ranges.Ranges;

/// A flat rectangular pane of even thickness, its sides and its lower edge held.
///
/// @param widthMetres clear width between its sides, metres, > 0
/// @param heightMetres clear height above its lower edge, metres, > 0
/// @param thicknessMetres thickness, metres, > 0
/// @param top how its upper edge is
public record Pane(double widthMetres, double heightMetres, double thicknessMetres, Top top) {
    /// How the upper edge is. A held edge is simply supported: it can't move out of the pane's plane, but turns freely.
    public enum Top {
        /// Free, as in a tank without a rim.
        FREE,
        /// Held, as by a rim or by another pane.
        HELD
    }

    /// How stiff its substance is.
    ///
    /// @param youngPascals Young's modulus, pascals, > 0
    /// @param poisson Poisson's ratio, dimensionless, 0 to 0.5
    public record Elasticity(double youngPascals, double poisson) {
        /// Annealed float glass.
        ///
        /// **Source:** EN 572-1: 70 GPa and 0.23 (from memory of it; the project's check values print 70,000
        /// N/mm² too).
        public static final Elasticity FLOAT_GLASS = new Elasticity(70e9, 0.23);

        /// Checks the ranges.
        ///
        /// @throws IllegalArgumentException outside them
        public Elasticity {
            Ranges.checkPositive(youngPascals, "Young's modulus");
            Ranges.checkAtMost(Ranges.checkNotNegative(poisson, "Poisson's ratio"), 0.5, "Poisson's ratio");
        }
    }

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException where a measure isn't > 0
    public Pane {
        Ranges.checkPositive(widthMetres, "pane's width");
        Ranges.checkPositive(heightMetres, "pane's height");
        Ranges.checkPositive(thicknessMetres, "pane's thickness");
    }
}
