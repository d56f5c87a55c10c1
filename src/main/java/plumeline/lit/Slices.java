package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Hull;
import plumeline.geom.Vec;
import plumeline.light.Patch;

/// Bodies outside a tank as they are seen on a way's inner face from a place in it.
///
/// @param window the way
/// @param patch the place
record Slices(TankWindow window, Patch patch) {
    /// By how much of its way a straight side may be off.
    private static final double STRAIGHT = 2e-4;

    /// A body as it is seen on the inner face, in slices: its straight sides seem bent. Those that are before what is
    /// seen of the face; what is partly behind the outer face hides nothing there.
    List<Hull> of(Hull hull, TankWindow.Sight sight) {
        List<Hull> slices = new ArrayList<>();
        List<Vec> last = window.find(hull.one(), patch);
        int parts = countFor(hull);
        for (int part = 1; part <= parts; part++) {
            List<Vec> ring = ring(hull, (double) part / parts);
            List<Vec> next = window.find(ring, patch);
            if (last.size() == ring.size() && next.size() == ring.size()) {
                Hull slice = new Hull(last, next);
                if (sight.mayMeet(slice.middle(), slice.reachMetres())) {
                    slices.add(slice);
                }
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
            Vec from = hull.one().get(quarter * corners / 4);
            Vec to = hull.other().get(quarter * corners / 4);
            List<Vec> seen = window.find(List.of(from, from.plus(to).times(0.5), to), patch);
            if (seen.size() < 3) {
                return TankWindow.PARTS;
            }
            Vec side = seen.get(2).minus(seen.get(0));
            double aside = seen.get(1).minus(seen.get(0)).cross(side).lengthMetres();
            double far = seen.get(1).distanceMetres(patch.place());
            bent = Math.max(bent, side.lengthMetres() > 0 ? aside / (side.lengthMetres() * far) : 0);
        }
        int parts = 1;
        while (parts < TankWindow.PARTS && bent > STRAIGHT * parts * parts) {
            parts *= 2;
        }
        return parts;
    }

    private static List<Vec> ring(Hull hull, double share) {
        List<Vec> ring = new ArrayList<>(hull.one().size());
        for (int i = 0; i < hull.one().size(); i++) {
            Vec from = hull.one().get(i);
            ring.add(from.plus(hull.other().get(i).minus(from).times(share)));
        }
        return ring;
    }
}
