package plumeline.sight;

/// The four edges of an outline in the picture, tangents of angles, no unit.
///
/// @param left least x
/// @param right greatest x
/// @param bottom least y
/// @param top greatest y
public record Extent(double left, double right, double bottom, double top) {
    /// Gives the width.
    ///
    /// @return right minus left
    public double width() {
        return right - left;
    }

    /// Gives the height.
    ///
    /// @return top minus bottom
    public double height() {
        return top - bottom;
    }

    /// The edges of both together.
    Extent with(Extent other) {
        return new Extent(
                Math.min(left, other.left),
                Math.max(right, other.right),
                Math.min(bottom, other.bottom),
                Math.max(top, other.top));
    }
}
