package plumeline.sight;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import plumeline.geom.Hull;
import plumeline.geom.Outlines;
import plumeline.geom.Plane;
import plumeline.geom.Vec;

/// Bodies as they seem from a place to which light of them is bent, as by a tank's wall: their straight sides seem
/// bent.
///
/// @param from the place, m
/// @param ahead what is ahead of all of these planes is seen so
/// @param find where places of a body that follow each other are seen, m, such as on the wall's face; those aren't
/// named that aren't seen so, at least ahead of all planes
public record Slices(Vec from, List<Plane> ahead, Function<List<Vec>, List<Vec>> find) {
    /// Into so many parts a side is cut at most.
    private static final int PARTS = 16;

    /// A ring of as many corners is round: its edges are short.
    private static final int ROUND = 8;

    /// By how much of its way a straight side may be off.
    private static final double STRAIGHT = 2e-4;

    /// Gives a convex part of a body in as many slices, and its flat sides' edges in as many parts, as leave them
    /// straight to 0.2 mm a metre of way, sixteen at most. Of a slice that isn't wholly seen only what is.
    ///
    /// @param part the part
    /// @return the slices as they are seen
    public List<Hull> of(Hull part) {
        Hull hull = part.one().size() < ROUND ? withFinerRings(part) : part;
        return sliced(hull);
    }

    private List<Hull> sliced(Hull hull) {
        List<Hull> slices = new ArrayList<>();
        List<Vec> before = hull.one();
        List<Vec> last = find.apply(before);
        int parts = countFor(hull);
        for (int part = 1; part <= parts; part++) {
            List<Vec> ring = ring(hull, (double) part / parts);
            List<Vec> next = find.apply(ring);
            if (last.size() == ring.size() && next.size() == ring.size()) {
                slices.add(new Hull(last, next));
            } else {
                List<Vec> some = find.apply(ahead(new Hull(before, ring)));
                if (some.size() > 2) {
                    slices.add(new Hull(some, some));
                }
            }
            last = next;
            before = ring;
        }
        return slices;
    }

    /// Points whose hull is what of a slice is ahead, and some between.
    private List<Vec> ahead(Hull slice) {
        double part = Outlines.roundMetres(slice.one()) / PARTS;
        List<Vec> points = new ArrayList<>();
        for (List<Vec> face : slice.faces()) {
            List<Vec> left = face;
            for (Plane plane : ahead) {
                left = Outlines.ahead(left, plane.normal(), plane.normal().dot(plane.through()));
            }
            points.addAll(part > 0 ? Outlines.finer(left, part) : left);
        }
        return points;
    }

    /// How many slices leave its sides straight.
    private int countFor(Hull hull) {
        int corners = hull.one().size();
        double bent = 0;
        for (int quarter = 0; quarter < 4; quarter++) {
            int corner = quarter * corners / 4;
            bent = Math.max(bent, bent(hull.one().get(corner), hull.other().get(corner)));
        }
        return countFor(bent);
    }

    private static int countFor(double bent) {
        int parts = 1;
        while (parts < PARTS && bent > STRAIGHT * parts * parts) {
            parts *= 2;
        }
        return parts;
    }

    /// How far aside a straight side's middle seems, share of its way; endless where not all of it is seen.
    private double bent(Vec near, Vec far) {
        if (near.equals(far)) {
            return 0;
        }
        List<Vec> seen = find.apply(List.of(near, near.plus(far).times(0.5), far));
        if (seen.size() < 3) {
            return Double.POSITIVE_INFINITY;
        }
        Vec side = seen.get(2).minus(seen.get(0));
        double aside = seen.get(1).minus(seen.get(0)).cross(side).lengthMetres();
        double away = seen.get(1).distanceMetres(from);
        return aside > 0 ? aside / (side.lengthMetres() * away) : 0;
    }

    private Hull withFinerRings(Hull hull) {
        double bent = 0;
        for (List<Vec> ring : List.of(hull.one(), hull.other())) {
            for (int i = 0; i < ring.size(); i++) {
                bent = Math.max(bent, bent(ring.get(i), ring.get((i + 1) % ring.size())));
            }
        }
        int parts = countFor(bent);
        return parts == 1 ? hull : new Hull(cut(hull.one(), parts), cut(hull.other(), parts));
    }

    private static List<Vec> cut(List<Vec> ring, int parts) {
        List<Vec> cut = new ArrayList<>(ring.size() * parts);
        for (int i = 0; i < ring.size(); i++) {
            Vec way = ring.get((i + 1) % ring.size()).minus(ring.get(i));
            for (int part = 0; part < parts; part++) {
                cut.add(ring.get(i).plus(way.times((double) part / parts)));
            }
        }
        return cut;
    }

    private static List<Vec> ring(Hull hull, double share) {
        List<Vec> ring = new ArrayList<>(hull.one().size());
        for (int i = 0; i < hull.one().size(); i++) {
            Vec near = hull.one().get(i);
            ring.add(near.plus(hull.other().get(i).minus(near).times(share)));
        }
        return ring;
    }
}
