package plumeline.geom;

/// One corner of a turned profile.
///
/// @param heightMetres height above the base along the axis, metres, 0 or more
/// @param radiusMetres radius there, metres, 0 or more
public record Station(double heightMetres, double radiusMetres) {
    /// Checks that both are finite and not negative.
    public Station {
        if (!(heightMetres >= 0 && heightMetres < 1e6)) {
            throw new IllegalArgumentException("height is " + heightMetres + " m; must be 0 m or more");
        }
        if (!(radiusMetres >= 0 && radiusMetres < 1e6)) {
            throw new IllegalArgumentException("radius is " + radiusMetres + " m; must be 0 m or more");
        }
    }
}
