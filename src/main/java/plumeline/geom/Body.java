package plumeline.geom;

/// A solid, posed on the table.
///
/// @param solid its shape
/// @param pose how it stands
public record Body(Solid solid, Pose pose) {
    /// Gives the place of a point of the body's own frame.
    ///
    /// @param own x along the width, y along the depth, z up the axis from the base, metres
    /// @return its place in the table frame, metres
    public Vec place(Vec own) {
        double half = solid.heightMetres() / 2;
        double c = Math.cos(pose.leanRadians());
        double s = Math.sin(pose.leanRadians());
        double up = own.z() - half;
        Vec leaned = new Vec(c * own.x() + s * up, own.y(), half + c * up - s * own.x());
        return leaned.turned(pose.turnRadians()).plus(pose.base());
    }

    /// Gives the point of the body's own frame that is at a place: the inverse of [#place].
    ///
    /// @param place a place in the table frame, metres
    /// @return x along the width, y along the depth, z up the axis from the base, metres
    public Vec own(Vec place) {
        double half = solid.heightMetres() / 2;
        double c = Math.cos(pose.leanRadians());
        double s = Math.sin(pose.leanRadians());
        Vec leaned = place.minus(pose.base()).turned(-pose.turnRadians());
        double up = leaned.z() - half;
        return new Vec(c * leaned.x() - s * up, leaned.y(), half + s * leaned.x() + c * up);
    }

    /// Gives the direction of the body's axis, from base to top.
    ///
    /// @return unit vector, table frame
    public Vec axis() {
        double s = Math.sin(pose.leanRadians());
        return new Vec(s, 0, Math.cos(pose.leanRadians())).turned(pose.turnRadians());
    }

    /// Gives the body's middle: on its axis at half its height.
    ///
    /// @return place, metres
    public Vec middle() {
        return pose.base().plus(new Vec(0, 0, solid.heightMetres() / 2));
    }

    /// Gives the radius of a ball round the body's middle that holds it, however it stands.
    ///
    /// @return radius, metres
    public double ballMetres() {
        double half = solid.heightMetres() / 2;
        double reach = solid.reachMetres();
        return Math.sqrt(half * half + reach * reach);
    }

    /// Gives the same solid in another pose.
    ///
    /// @param other the pose
    /// @return the body posed so
    public Body at(Pose other) {
        return new Body(solid, other);
    }

    /// Gives the enclosed volume.
    ///
    /// @return volume, cubic metres
    public double volumeMetres3() {
        return solid.volumeMetres3();
    }

    /// Gives the smallest upright box along the table's axes that holds the body; exact.
    ///
    /// @return the bounds, metres
    public Bounds bounds() {
        return new Bounds(
                new Vec(-reach(-1, 0, 0), -reach(0, -1, 0), -reach(0, 0, -1)),
                new Vec(reach(1, 0, 0), reach(0, 1, 0), reach(0, 0, 1)));
    }

    private double reach(double x, double y, double z) {
        return Convex.reach(this, x, y, z);
    }

    /// Gives the place of the solid body that is nearest to a place; the place itself where it is inside.
    ///
    /// @param place a place, metres
    /// @return the nearest place of the body, metres
    public Vec nearestTo(Vec place) {
        return Convex.nearest(this, place);
    }
}
