package plumeline.geom;

/// Signed distances in space: positive apart, negative minus the least way that parts them.
public final class Clearance {
    private Clearance() {}

    /// Gives the clearance of two bodies.
    ///
    /// @param one a body
    /// @param other another
    /// @return signed distance, metres
    public static double betweenMetres(Body one, Body other) {
        throw new UnsupportedOperationException("being written");
    }

    /// Gives the clearance of a body and a barrel.
    ///
    /// @param body a body
    /// @param barrel the barrel
    /// @return signed distance, metres
    public static double betweenMetres(Body body, Barrel barrel) {
        throw new UnsupportedOperationException("being written");
    }

    /// Gives how far a body stays on the free side of a plane; exact.
    ///
    /// @param body a body
    /// @param plane the plane
    /// @return least signed distance, metres
    public static double aboveMetres(Body body, Plane plane) {
        throw new UnsupportedOperationException("being written");
    }

    /// Gives how far a barrel stays on the free side of a plane; exact.
    ///
    /// @param barrel a barrel
    /// @param plane the plane
    /// @return least signed distance, metres
    public static double aboveMetres(Barrel barrel, Plane plane) {
        throw new UnsupportedOperationException("being written");
    }

    /// Gives the distance from a place to a body.
    ///
    /// @param body a body
    /// @param place a place, metres
    /// @return signed distance, metres, negative inside
    public static double toMetres(Body body, Vec place) {
        throw new UnsupportedOperationException("being written");
    }

    /// Gives the smallest gap between a body and the walls of a room that holds it; exact.
    ///
    /// @param body a body
    /// @param room the room, such as a tank's inside
    /// @return smallest gap, metres, negative where the body goes through a wall
    public static double insideMetres(Body body, Bounds room) {
        throw new UnsupportedOperationException("being written");
    }
}
