package plumeline.geom;

/// How a body stands: where the middle of its base would be if it stood upright, and how it is then leaned and turned.
///
/// The lean tips the top to camera right about the body's middle; the turn follows, about the vertical through that
/// middle.
///
/// @param base middle of the base of the upright body, table frame, metres
/// @param turnRadians turn, radians, positive clockwise seen from above
/// @param leanRadians lean, radians, positive with the top to camera right (at turn 0)
public record Pose(Vec base, double turnRadians, double leanRadians) {
    /// Checks that every number is finite.
    public Pose {
        if (!Double.isFinite(base.x() + base.y() + base.z() + turnRadians + leanRadians)) {
            throw new IllegalArgumentException("a pose needs finite numbers");
        }
    }

    /// Makes an upright pose at turn 0 on the table.
    ///
    /// @param xMetres to camera right, metres
    /// @param yMetres away from the camera, metres
    /// @return the pose
    public static Pose at(double xMetres, double yMetres) {
        return new Pose(new Vec(xMetres, yMetres, 0), 0, 0);
    }

    /// Gives the same pose moved.
    ///
    /// @param way how far and where to, metres
    /// @return the moved pose
    public Pose movedBy(Vec way) {
        return new Pose(base.plus(way), turnRadians, leanRadians);
    }
}
