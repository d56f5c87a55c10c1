package plumeline.light;

import plumeline.ranges.Ranges;

/// What of a lamp glows: its shape and size.
///
/// @param shape the shape
/// @param c0Metres its size along the planes C = 0 and π, metres, ≥ 0
/// @param c90Metres its size along the planes C = π/2 and 3π/2, metres, ≥ 0
/// @param heightMetres its size along the axis, metres, ≥ 0
public record Opening(Shape shape, double c0Metres, double c90Metres, double heightMetres) {
    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException where a size is negative or not finite
    public Opening {
        Ranges.checkNotNegative(c0Metres, "size along C0");
        Ranges.checkNotNegative(c90Metres, "size along C90");
        Ranges.checkNotNegative(heightMetres, "height");
    }

    /// Shapes of what glows.
    public enum Shape {
        /// A point, or a size that isn't told.
        POINT,
        /// A rectangle across the axis; a box where it has a height.
        RECTANGLE,
        /// A disc or an ellipse across the axis; a drum where it has a height.
        ROUND,
        /// A ball or an egg.
        BALL,
        /// A cylinder lying across the axis, its length along C0.
        TUBE_ALONG_C0,
        /// A cylinder lying across the axis, its length along C90.
        TUBE_ALONG_C90,
        /// Another one, of the outer sizes given: a disc on edge, say.
        OTHER
    }
}
