package plumeline.rim;

import java.util.List;
import java.util.Optional;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;
import plumeline.ranges.Ranges;

/// A round clear body with a room inside behind an even wall: a tumbler, a bottle, a rod where the wall is thicker than
/// its radius.
///
/// Near a height it is taken for the cone of its profile there, its room for the same cone a wall's thickness further
/// in; sight that comes where the profile is more than 2 % off that cone is lost.
///
/// @param outer the outside
/// @param wallMetres the wall's thickness, m, > 0
/// @param indices the refractive indices
/// @param levelMetres how high the liquid stands in it, along its axis from its base, m; any value below its floor is
/// empty, above its top full
public record ClearRound(Solid.Revolved outer, double wallMetres, Indices indices, double levelMetres) {
    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public ClearRound {
        Ranges.checkPositive(wallMetres, "wall");
        Ranges.check(!Double.isNaN(levelMetres), "level", levelMetres, "a height");
    }

    /// Follows sight from a place in front of it.
    ///
    /// Bending and total reflection at each face by Snell's law in vectors; what passes by Fresnel's formulas, the
    /// two polarisations apart from face to face, as is exact for sight square to the axis; aslant the planes of
    /// incidence turn against each other, which is left out. Reversible: sight that is sent back comes back.
    ///
    /// **Source:** Snell's and Fresnel's laws as in [plumeline.optics.Boundary].
    ///
    /// @param at where it meets the outer face, in the body's own frame, m
    /// @param direction where it goes, of length 1, into the body
    /// @return where it comes out
    public Passage follow(Vec at, Vec direction) {
        return findCone(at.z())
                .map(cone -> new Followed(this, cone).follow(at, direction))
                .orElse(new Passage.Lost());
    }

    /// Finds the cone that the outside is at a height; where two pieces meet, the upper one's.
    Optional<Cone> findCone(double heightMetres) {
        List<Station> stations = outer.stations();
        Optional<Cone> found = Optional.empty();
        for (int i = 1; i < stations.size(); i++) {
            Station low = stations.get(i - 1);
            Station high = stations.get(i);
            double rise = high.heightMetres() - low.heightMetres();
            if (rise > 0 && heightMetres >= low.heightMetres() && heightMetres <= high.heightMetres()) {
                double slope = (high.radiusMetres() - low.radiusMetres()) / rise;
                found = Optional.of(new Cone(low.radiusMetres() - slope * low.heightMetres(), slope));
            }
        }
        return found;
    }
}
