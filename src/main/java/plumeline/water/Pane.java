package plumeline.water;

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

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException where a measure isn't > 0
    public Pane {
        Need.positive(widthMetres, "pane's width");
        Need.positive(heightMetres, "pane's height");
        Need.positive(thicknessMetres, "pane's thickness");
    }
}
