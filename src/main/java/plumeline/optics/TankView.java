package plumeline.optics;

import java.util.List;
import plumeline.geom.Aim;
import plumeline.geom.Pinhole;
import plumeline.geom.Plane;
import plumeline.geom.Point;
import plumeline.geom.Projection;
import plumeline.geom.Vec;
import plumeline.ranges.Ranges;

/// The picture of a camera that looks through one flat wall of a tank; exact by Snell's law.
///
/// A place in front of the wall is seen directly; one behind it and below the water line through glass and water; one
/// behind it and above the line through glass and air. The wall is taken as endless. A sight line that would cross the
/// water's surface is not traced: [#way] says so, and a finding that rests on it is `unknown`. At the water line the
/// picture
/// is broken, as it is in truth.
///
/// Picture and [#depth] are those of the apparent place (see [#apparent]), so that `depth` gives the picture's scale: a
/// small thing there is as large in the picture as one at that depth in plain air. The true depth is
/// `aim().depthMetres(place)`. Derived in `docs/derivations/flat-wall.md`.
///
/// @param aim lens point and direction; the lens point is on the wall's free side
/// @param wall the wall's outer face, its normal toward the camera
/// @param water the wall with what is behind it below the water line
/// @param waterLineMetres height of the water line over the table, metres; infinite where there is water up to any
///     height
public record TankView(Aim aim, Plane wall, FlatWall water, double waterLineMetres) implements Projection {
    /// How a place is seen.
    public enum Way {
        /// In front of the wall: through air only.
        DIRECT,
        /// Through the pane, then air.
        THROUGH_GLASS,
        /// Through the pane, then water.
        THROUGH_WATER,
        /// The sight line would cross the water's surface: not traced, the picture there is not to be relied on.
        THROUGH_SURFACE
    }

    /// Checks that the lens point is in front of the wall.
    ///
    /// @throws IllegalArgumentException where it isn't
    public TankView {
        Ranges.checkPositive(airMetres(aim, wall), "air in front of the wall");
        Ranges.check(!Double.isNaN(waterLineMetres), "water line", waterLineMetres, "a height");
    }

    @Override
    public Point project(Vec place) {
        return new Pinhole(aim).project(apparent(place));
    }

    /// Gives the depth of the apparent place along the optical axis: the one that gives the picture's scale.
    ///
    /// @param place a place, table frame, metres
    /// @return apparent depth from the lens point, metres; 0 or less is not seen
    @Override
    public double depth(Vec place) {
        return aim.depthMetres(apparent(place));
    }

    /// Gives where a place seems to be: moved toward the camera along the wall's normal to where its ray's line in air,
    /// drawn on, meets that normal. Seen from the lens point it lies exactly in the place's apparent direction.
    ///
    /// @param place a place, table frame, metres
    /// @return the apparent place, metres; the place itself in front of the wall
    public Vec apparent(Vec place) {
        double behindFace = behindFaceMetres(place);
        if (behindFace <= 0) {
            return place;
        }
        FlatWall seen = wallFor(behindFace, isUnderWater(place));
        WallDepths depths = depths(seen, behindFace);
        double apparentMetres = seen.apparentMetres(depths, aside(place).lengthMetres());
        return place.plus(wall.normal().times(depths.airMetres() + behindFace - apparentMetres));
    }

    /// Says how a place is seen.
    ///
    /// @param place a place, table frame, metres
    /// @return the way
    public Way way(Vec place) {
        double behindFace = behindFaceMetres(place);
        if (behindFace <= 0) {
            return Way.DIRECT;
        }
        boolean wet = isUnderWater(place);
        if (behindFace > water.glassMetres() && wet != isUnderWater(path(place).get(2))) {
            return Way.THROUGH_SURFACE;
        }
        return wet ? Way.THROUGH_WATER : Way.THROUGH_GLASS;
    }

    /// Gives the light's path from the lens point to a place, for drawing: lens point, outer face, inner face, place;
    /// lens point and place only where it is seen directly.
    ///
    /// @param place a place, table frame, metres
    /// @return the corners of the path, metres
    public List<Vec> path(Vec place) {
        double behindFace = behindFaceMetres(place);
        if (behindFace <= 0) {
            return List.of(aim.eye(), place);
        }
        FlatWall seen = wallFor(behindFace, isUnderWater(place));
        WallDepths depths = depths(seen, behindFace);
        Vec aside = aside(place);
        double asideMetres = aside.lengthMetres();
        double slope = seen.airSlope(depths, asideMetres);
        Vec sideways = asideMetres > 0 ? aside.times(1 / asideMetres) : Vec.ZERO;
        double air = depths.airMetres();
        Vec outer = aim.eye().plus(wall.normal().times(-air)).plus(sideways.times(air * slope));
        Layer glass = new Layer(seen.glassMetres(), seen.glassIndex());
        Vec inner = outer.plus(wall.normal().times(-seen.glassMetres())).plus(sideways.times(glass.asideMetres(slope)));
        return List.of(aim.eye(), outer, inner, place);
    }

    /// Gives how bright a surface in the tank is to the camera against its luminance where it is: `T/n²`, T what the
    /// pane passes at the sight's slant, n the index of what the surface is in. Sight over the water's surface
    /// counts as through the pane alone.
    ///
    /// **Source:** conservation of étendue, `L/n²` along a ray, and Fresnel's formulas (any text on radiometry).
    ///
    /// @param place a place of the surface, table frame, metres
    /// @return share of one; 1 in front of the wall
    public double brightness(Vec place) {
        if (behindFaceMetres(place) <= 0) {
            return 1;
        }
        double index = isUnderWater(place) ? water.behindIndex() : 1;
        double glass = water.glassMetres() > 0 ? water.glassIndex() : 1;
        Vec sight = path(place).get(1).minus(aim.eye()).unit();
        double sine = Math.min(1, sight.cross(wall.normal()).lengthMetres());
        Polarised passing = new ClearPane(1, glass, index).transmittanceAtSine(sine);
        return (passing.s() + passing.p()) / 2 / (index * index);
    }

    /// Traces the ray of a picture point to a plane behind the wall: the inverse of [#project]. It goes through water
    /// where
    /// it meets the inner face below the water line, else through air.
    ///
    /// @param picture a point of the picture
    /// @param behindMetres distance of the plane behind the wall's inner face, metres, ≥ 0
    /// @return where the ray meets that plane, metres
    /// @throws IllegalArgumentException where the ray doesn't go toward the wall
    public Vec placeBehind(Point picture, double behindMetres) {
        Vec ray =
                aim.forward().plus(aim.right().times(picture.x())).plus(aim.up().times(picture.y()));
        double toward = Ranges.checkPositive(-ray.dot(wall.normal()), "ray's way to the wall");
        Vec perUnit = ray.times(1 / toward).plus(wall.normal());
        double slope = perUnit.lengthMetres();
        double air = airMetres(aim, wall);
        Vec inner = aim.eye()
                .plus(wall.normal().times(-air - water.glassMetres()))
                .plus(perUnit.times(air + water.glassMetres() * new Layer(1, water.glassIndex()).shareSeen(slope)));
        double index = isUnderWater(inner) ? water.behindIndex() : 1;
        return inner.plus(wall.normal().times(-behindMetres))
                .plus(perUnit.times(behindMetres * new Layer(1, index).shareSeen(slope)));
    }

    private boolean isUnderWater(Vec place) {
        return place.z() <= waterLineMetres;
    }

    private double behindFaceMetres(Vec place) {
        return wall.normal().dot(wall.through().minus(place));
    }

    private static double airMetres(Aim aim, Plane wall) {
        return wall.normal().dot(aim.eye().minus(wall.through()));
    }

    /// The wall as far as the light crosses it: less glass where the place is inside the pane.
    private FlatWall wallFor(double behindFaceMetres, boolean wet) {
        double glassMetres = Math.min(behindFaceMetres, water.glassMetres());
        return new FlatWall(glassMetres, water.glassIndex(), wet ? water.behindIndex() : 1);
    }

    private WallDepths depths(FlatWall seen, double behindFaceMetres) {
        return new WallDepths(airMetres(aim, wall), Math.max(0, behindFaceMetres - seen.glassMetres()));
    }

    private Vec aside(Vec place) {
        Vec way = place.minus(aim.eye());
        return way.minus(wall.normal().times(way.dot(wall.normal())));
    }
}
