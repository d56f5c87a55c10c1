package plumeline.geom;

import java.util.List;

/// Which of two bodies can hide which.
///
/// Where a plane parts both and the eye is on one body's side of it, only that body can hide the other. Looked for
/// across the way between both middles, level and straight, and level planes. Where none of these parts them, or the
/// eye is in the gap between (then neither hides the other), the nearer middle counts as before.
public final class Order {
    private Order() {}

    /// Says whether a body is the one of two that can hide the other.
    ///
    /// @param eye the lens point, metres
    /// @param one the body asked about
    /// @param other the other body
    /// @return whether the first can hide the other
    public static boolean isBefore(Vec eye, Body one, Body other) {
        Vec way = other.middle().minus(one.middle());
        List<Lump> ones = Lump.of(one);
        List<Lump> others = Lump.of(other);
        for (Vec across : new Vec[] {new Vec(way.x(), way.y(), 0), way, new Vec(0, 0, way.z())}) {
            double end = Convex.reach(ones, across);
            double start = -Convex.reach(others, across.times(-1));
            double at = across.dot(eye);
            if (end < start && (at <= end || at >= start)) {
                return at <= end;
            }
        }
        return eye.distanceMetres(one.middle()) < eye.distanceMetres(other.middle());
    }
}
