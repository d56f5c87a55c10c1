package plumeline.sight;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import plumeline.geom.Hull;
import plumeline.geom.Vec;

/// Bodies as they seem from a place to which light of them is bent, as by a tank's wall: their straight sides seem
/// bent.
///
/// @param from the place, m
/// @param find where places of a body that follow each other are seen, m, such as on the wall's face; those aren't
/// named that aren't seen so
public record Slices(Vec from, Function<List<Vec>, List<Vec>> find) {
    /// Into so many parts a side is cut at most.
    private static final int PARTS = 16;

    /// By how much of its way a straight side may be off.
    private static final double STRAIGHT = 2e-4;

    /// Gives a convex part of a body in as many slices as leave its sides straight to 0.2 mm a metre of way, sixteen at
    /// most. A slice that isn't wholly seen is left out.
    ///
    /// @param hull the part
    /// @return the slices as they are seen
    public List<Hull> of(Hull hull) {
        List<Hull> slices = new ArrayList<>();
        List<Vec> last = find.apply(hull.one());
        int parts = countFor(hull);
        for (int part = 1; part <= parts; part++) {
            List<Vec> ring = ring(hull, (double) part / parts);
            List<Vec> next = find.apply(ring);
            if (last.size() == ring.size() && next.size() == ring.size()) {
                slices.add(new Hull(last, next));
            }
            last = next;
        }
        return slices;
    }

    /// How many slices leave its sides straight.
    private int countFor(Hull hull) {
        int corners = hull.one().size();
        double bent = 0;
        for (int quarter = 0; quarter < 4; quarter++) {
            Vec near = hull.one().get(quarter * corners / 4);
            Vec far = hull.other().get(quarter * corners / 4);
            List<Vec> seen = find.apply(List.of(near, near.plus(far).times(0.5), far));
            if (seen.size() < 3) {
                return PARTS;
            }
            Vec side = seen.get(2).minus(seen.get(0));
            double aside = seen.get(1).minus(seen.get(0)).cross(side).lengthMetres();
            double away = seen.get(1).distanceMetres(from);
            bent = Math.max(bent, side.lengthMetres() > 0 ? aside / (side.lengthMetres() * away) : 0);
        }
        int parts = 1;
        while (parts < PARTS && bent > STRAIGHT * parts * parts) {
            parts *= 2;
        }
        return parts;
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
