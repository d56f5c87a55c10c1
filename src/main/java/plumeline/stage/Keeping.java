package plumeline.stage;

import java.util.List;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Pinhole;
import plumeline.geom.Vec;
import plumeline.sight.Extent;
import plumeline.sight.Sight;

/// A pan that keeps things in the picture's middle: it turns to the bisector of the outermost bearings of their
/// outlines, seen level from the lens point.
final class Keeping {
    private Keeping() {}

    static double turn(Aim from, List<Body> kept) {
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double towards = bearing(from.eye(), kept.getFirst());
        for (Body body : kept) {
            double middle = towards + Math.IEEEremainder(bearing(from.eye(), body) - towards, 2 * Math.PI);
            Pinhole level = new Pinhole(new Aim(from.eye(), middle, 0));
            if (!isWhollyInFront(level, from, body)) {
                continue;
            }
            Extent extent = Sight.extent(level, body);
            left = Math.min(left, middle + Math.atan(extent.left()));
            right = Math.max(right, middle + Math.atan(extent.right()));
        }
        return left <= right ? (left + right) / 2 : from.turnRadians();
    }

    /// A body whose whole sphere is farther than its reach needs no closer look.
    private static boolean isWhollyInFront(Pinhole level, Aim from, Body body) {
        Vec way = body.middle().minus(from.eye());
        double sphere = body.ballMetres();
        return Math.hypot(way.x(), way.y()) > sphere || Sight.leastDepthMetres(level, body) > 0;
    }

    private static double bearing(Vec eye, Body body) {
        Vec way = body.middle().minus(eye);
        return Math.atan2(way.x(), way.y());
    }
}
