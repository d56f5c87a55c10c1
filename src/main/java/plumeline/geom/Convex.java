package plumeline.geom;

import java.util.List;

/// Reach and nearest points of bodies by their convex parts.
final class Convex {
    private Convex() {}

    static double reach(Body body, double x, double y, double z) {
        return reach(Lump.of(body), new Vec(x, y, z));
    }

    static double reach(List<Lump> lumps, Vec way) {
        double reach = Double.NEGATIVE_INFINITY;
        for (Lump lump : lumps) {
            reach = Math.max(reach, way.dot(lump.farthest(way)));
        }
        return reach;
    }

    static Vec nearest(Body body, Vec place) {
        Vec best = place;
        double least = Double.POSITIVE_INFINITY;
        for (Lump lump : Lump.of(body)) {
            Vec way = Closest.apart(lump, Lump.of(place));
            double distance = way.lengthMetres();
            if (distance < least) {
                least = distance;
                best = place.plus(way);
            }
        }
        return best;
    }

    /// Signed distance of two sets of convex parts: the least over all pairs, which for overlapping bodies of several
    /// parts is no more than the least way that parts them.
    static double distanceMetres(List<Lump> ones, List<Lump> others) {
        double least = Double.POSITIVE_INFINITY;
        for (Lump one : ones) {
            for (Lump other : others) {
                double atLeast = one.middle().distanceMetres(other.middle()) - one.radius() - other.radius();
                if (atLeast < least) {
                    least = Math.min(least, distanceMetres(one, other));
                }
            }
        }
        return least;
    }

    private static double distanceMetres(Lump one, Lump other) {
        double apart = Closest.apart(one, other).lengthMetres();
        return apart > Closest.TOUCHING_METRES ? apart : Overlap.metres(one, other);
    }
}
