package plumeline.optics;

import plumeline.ranges.Ranges;

/// Ways along a wall's normal from the lens point to a point behind the wall, the pane's thickness left out.
///
/// @param airMetres from the lens point to the wall's outer face, metres, > 0
/// @param behindMetres from the wall's inner face to the point, metres, ≥ 0
public record WallDepths(double airMetres, double behindMetres) {
    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException where the lens point isn't in front of the wall or the point isn't behind
    /// it
    public WallDepths {
        Ranges.checkPositive(airMetres, "air in front of the wall");
        Ranges.checkNotNegative(behindMetres, "way behind the wall");
    }
}
