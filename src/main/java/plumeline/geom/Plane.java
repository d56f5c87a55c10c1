package plumeline.geom;

/// A plane with a free side.
///
/// @param through any place on it, metres
/// @param normal direction of the free side; any length over 0
public record Plane(Vec through, Vec normal) {
    /// Makes the normal a unit vector.
    public Plane {
        normal = normal.unit();
    }
}
