package plumeline.geom;

/// An upright box along the table's axes: a body's bounds, or the inside of a tank.
///
/// @param low least x, y, z, metres
/// @param high greatest x, y, z, metres
public record Bounds(Vec low, Vec high) {
    /// Checks the order.
    public Bounds {
        if (!(low.x() <= high.x() && low.y() <= high.y() && low.z() <= high.z())) {
            throw new IllegalArgumentException("bounds need low at or under high, given " + low + " and " + high);
        }
    }
}
