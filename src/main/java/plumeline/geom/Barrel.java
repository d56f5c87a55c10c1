package plumeline.geom;

/// A capped cylinder or cone at any angle: a lens barrel, a nozzle, a stand.
///
/// @param from middle of one end, metres
/// @param to middle of the other end, metres
/// @param fromRadiusMetres radius at the first end, metres, 0 or more
/// @param toRadiusMetres radius at the other end, metres, 0 or more
public record Barrel(Vec from, Vec to, double fromRadiusMetres, double toRadiusMetres) {
    /// Checks that it has length and no negative radius.
    public Barrel {
        if (!(from.distanceMetres(to) > 0)) throw new IllegalArgumentException("a barrel needs length");
        if (!(fromRadiusMetres >= 0 && toRadiusMetres >= 0)) {
            throw new IllegalArgumentException("a barrel's radii must be 0 m or more");
        }
    }
}
