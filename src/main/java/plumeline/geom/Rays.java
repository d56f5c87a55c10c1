package plumeline.geom;

import java.util.List;

/// Whether a sight line goes through a convex part.
final class Rays {
    private Rays() {}

    static boolean crosses(Lump lump, Vec from, Vec to) {
        Vec way = to.minus(from);
        double share = Math.clamp(lump.middle().minus(from).dot(way) / way.dot(way), 0, 1);
        Vec nearest = from.plus(way.times(share));
        if (nearest.distanceMetres(lump.middle()) > lump.radius()) {
            return false;
        }
        return Closest.apart(new Lump.Corners(List.of(from, to)), lump).equals(Vec.ZERO);
    }
}
