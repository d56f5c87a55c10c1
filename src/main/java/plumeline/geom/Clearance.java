package plumeline.geom;

import java.util.List;

/// Signed distances in space: positive apart, negative minus the least way that parts them; and what a line meets.
public final class Clearance {
    private Clearance() {}

    /// Gives the clearance of two bodies.
    ///
    /// @param one a body
    /// @param other another
    /// @return signed distance, metres
    public static double betweenMetres(Body one, Body other) {
        return Convex.distanceMetres(Lump.of(one), Lump.of(other));
    }

    /// Gives a clearance that two bodies have at least, at next to no cost: of the balls round them or, upright, of the
    /// upright cylinders.
    ///
    /// @param one a body
    /// @param other another
    /// @return no more than their clearance, metres
    public static double atLeastMetres(Body one, Body other) {
        return atLeast(one, other.middle(), isUpright(other), other.solid().reachMetres(), other.ballMetres());
    }

    /// Gives a clearance that a body has at least to whatever lies in a ball.
    ///
    /// @param body a body
    /// @param middle the ball's middle, metres
    /// @param radiusMetres its radius, metres, 0 for a place
    /// @return no more than their clearance, metres
    public static double atLeastMetres(Body body, Vec middle, double radiusMetres) {
        return atLeast(body, middle, true, radiusMetres, radiusMetres);
    }

    private static double atLeast(Body body, Vec middle, boolean isUpright, double reach, double ball) {
        Vec way = middle.minus(body.middle());
        double balls = way.lengthMetres() - body.ballMetres() - ball;
        return isUpright && isUpright(body)
                ? Math.max(
                        balls,
                        Math.sqrt(way.x() * way.x() + way.y() * way.y())
                                - body.solid().reachMetres()
                                - reach)
                : balls;
    }

    private static boolean isUpright(Body body) {
        return body.pose().leanRadians() == 0;
    }

    /// Gives the clearance of a body and a barrel.
    ///
    /// @param body a body
    /// @param barrel the barrel
    /// @return signed distance, metres
    public static double betweenMetres(Body body, Barrel barrel) {
        return Convex.distanceMetres(Lump.of(body), List.of(Lump.of(barrel)));
    }

    /// Gives how far a body stays on the free side of a plane; exact.
    ///
    /// @param body a body
    /// @param plane the plane
    /// @return least signed distance, metres
    public static double aboveMetres(Body body, Plane plane) {
        return above(Lump.of(body), plane);
    }

    /// Gives how far a barrel stays on the free side of a plane; exact.
    ///
    /// @param barrel a barrel
    /// @param plane the plane
    /// @return least signed distance, metres
    public static double aboveMetres(Barrel barrel, Plane plane) {
        return above(List.of(Lump.of(barrel)), plane);
    }

    /// Gives the distance from a place to a body.
    ///
    /// @param body a body
    /// @param place a place, metres
    /// @return signed distance, metres, negative inside
    public static double toMetres(Body body, Vec place) {
        return Convex.distanceMetres(Lump.of(body), List.of(Lump.of(place)));
    }

    /// Says whether a straight line between two places meets a body; touching it counts.
    ///
    /// @param body a body
    /// @param from one end, metres
    /// @param to the other end, metres
    /// @return whether any place of the line belongs to the body
    public static boolean isMet(Body body, Vec from, Vec to) {
        if (passesBy(body.middle(), body.ballMetres(), from, to)) {
            return false;
        }
        Lump line = new Lump.Corners(List.of(from, to));
        for (Lump lump : Lump.of(body)) {
            if (!passesBy(lump.middle(), lump.radius(), from, to) && Closest.meet(line, lump)) {
                return true;
            }
        }
        return false;
    }

    /// Whether a line between two places stays outside a ball.
    private static boolean passesBy(Vec middle, double radius, Vec from, Vec to) {
        Vec way = to.minus(from);
        double square = way.dot(way);
        double share = square > 0 ? Math.clamp(middle.minus(from).dot(way) / square, 0, 1) : 0;
        return from.plus(way.times(share)).distanceMetres(middle) > radius;
    }

    /// Gives the smallest gap between a body and the walls of a room that holds it; exact.
    ///
    /// @param body a body
    /// @param room the room, such as a tank's inside
    /// @return smallest gap, metres, negative where the body goes through a wall
    public static double insideMetres(Body body, Bounds room) {
        Bounds own = body.bounds();
        Vec low = own.low().minus(room.low());
        Vec high = room.high().minus(own.high());
        double across = Math.min(Math.min(low.x(), high.x()), Math.min(low.y(), high.y()));
        return Math.min(across, Math.min(low.z(), high.z()));
    }

    private static double above(List<Lump> lumps, Plane plane) {
        Vec down = plane.normal().times(-1);
        double least = Double.POSITIVE_INFINITY;
        for (Lump lump : lumps) {
            least = Math.min(least, plane.normal().dot(lump.farthest(down).minus(plane.through())));
        }
        return least;
    }
}
