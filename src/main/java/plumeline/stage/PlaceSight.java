package plumeline.stage;

import java.util.List;
import plumeline.geom.Bounds;
import plumeline.geom.Pinhole;
import plumeline.geom.Point;
import plumeline.geom.Vec;
import plumeline.optics.Layer;
import plumeline.optics.TankView;

/// How a lens sees one place, past a tank or through the wall of it that faces the lens; exact where it is computed.
///
/// Computed are: straight past the tank's outer block; through the facing wall to a place wholly under or wholly over
/// the water; and, for [#mirrored], by the water's surface seen from below, where that throws everything back. The way
/// to a place may leave the tank by its open top.
public sealed interface PlaceSight {
    /// A way of sight.
    enum Way {
        /// Through air alone.
        AIR,
        /// Through the pane, then air.
        PANE,
        /// Through the pane, then water.
        WATER,
        /// Through the pane and water, thrown back by the water's surface.
        MIRRORED
    }

    /// It is in the picture's plane.
    ///
    /// @param way how it is seen
    /// @param point where, as tangents from the picture's middle; may be far beyond its edges
    record Seen(Way way, Point point) implements PlaceSight {}

    /// It isn't in front of the lens.
    record Behind() implements PlaceSight {}

    /// Where it shows isn't computed.
    ///
    /// @param trouble what is in the way
    record Unknown(Sightlines.Trouble trouble) implements PlaceSight {}

    /// Nearer to the lens's own front than this nothing has a picture, metres.
    double NEAREST_METRES = 0.001;

    /// Finds how a place is seen.
    ///
    /// @param scene the instant
    /// @param place the place, m
    /// @return the sight
    static PlaceSight of(Scene scene, Vec place) {
        return switch (scene.lines()) {
            case Sightlines.Free(Pinhole view) -> straight(view, Way.AIR, place);
            case Sightlines.WithTank tank -> {
                if (!meets(scene.aim().eye(), place, tank.walls().outside())) {
                    yield straight(new Pinhole(scene.aim()), Way.AIR, place);
                }
                yield tank.through() instanceof TankView view
                        ? through(view, tank.walls(), place)
                        : new Unknown(
                                place.z() <= tank.walls().waterLineMetres()
                                        ? Sightlines.Trouble.SURFACE
                                        : Sightlines.Trouble.OTHER_WALL);
            }
        };
    }

    /// Finds how a place under water is seen a second time, mirrored by the surface above it.
    ///
    /// @param scene the instant
    /// @param place the place, m
    /// @return the sight; unknown where there is no such mirror image
    static PlaceSight mirrored(Scene scene, Vec place) {
        PlaceSight none = new Unknown(Sightlines.Trouble.SURFACE);
        if (!(scene.lines() instanceof Sightlines.WithTank tank) || !(tank.through() instanceof TankView view)) {
            return none;
        }
        double line = tank.walls().waterLineMetres();
        TankView endless = new TankView(view.aim(), view.wall(), view.water(), Double.POSITIVE_INFINITY);
        Vec image = new Vec(place.x(), place.y(), 2 * line - place.z());
        List<Vec> path = endless.path(image);
        if (!(place.z() < line)
                || !tank.walls().isOver(place)
                || path.size() < 4
                || path.get(2).z() >= line) {
            return none;
        }
        Vec inner = path.get(2);
        Vec way = image.minus(inner);
        boolean isTotal = Math.hypot(way.x(), way.y()) / way.lengthMetres() * Layer.WATER_INDEX >= 1;
        Vec struck = inner.plus(way.times((line - inner.z()) / way.z()));
        return isTotal
                        && isThroughFace(view, tank.walls(), path)
                        && tank.walls().isOver(struck)
                ? straight(new Pinhole(view.aim()), Way.MIRRORED, path.get(1))
                : none;
    }

    private static PlaceSight straight(Pinhole view, Way way, Vec place) {
        return view.depth(place) > NEAREST_METRES ? new Seen(way, view.project(place)) : new Behind();
    }

    private static PlaceSight through(TankView view, TankWalls walls, Vec place) {
        List<Vec> path = view.path(place);
        if (path.size() < 4) {
            return straight(new Pinhole(view.aim()), Way.AIR, place);
        }
        if (!isThroughFace(view, walls, path) || !isReached(walls, path.get(2), place)) {
            return new Unknown(Sightlines.Trouble.OTHER_WALL);
        }
        boolean isWet = place.z() <= walls.waterLineMetres();
        if (isWet != path.get(2).z() <= walls.waterLineMetres()) {
            return new Unknown(Sightlines.Trouble.SURFACE);
        }
        return straight(new Pinhole(view.aim()), isWet ? Way.WATER : Way.PANE, path.get(1));
    }

    /// Whether a sight's way enters by the outer face and comes out of the inner one within both.
    private static boolean isThroughFace(TankView view, TankWalls walls, List<Vec> path) {
        boolean isAcrossX = view.wall().normal().x() == 0;
        double rim = walls.outside().high().z();
        return isOn(path.get(1), walls.outside(), isAcrossX, rim) && isOn(path.get(2), walls.inside(), isAcrossX, rim);
    }

    private static boolean isOn(Vec at, Bounds face, boolean isAcrossX, double rimMetres) {
        double across = isAcrossX ? at.x() : at.y();
        double low = isAcrossX ? face.low().x() : face.low().y();
        double high = isAcrossX ? face.high().x() : face.high().y();
        return across >= low && across <= high && at.z() >= face.low().z() && at.z() <= rimMetres;
    }

    /// Whether the straight rest of the way stays in the tank, or leaves it by its open top.
    private static boolean isReached(TankWalls walls, Vec inner, Vec place) {
        double rim = walls.outside().high().z();
        if (place.z() <= rim) {
            return walls.isOver(place) && place.z() >= walls.inside().low().z();
        }
        return walls.isOver(inner.plus(place.minus(inner).times((rim - inner.z()) / (place.z() - inner.z()))));
    }

    /// Whether the straight way from one place to another goes through a block.
    private static boolean meets(Vec from, Vec to, Bounds block) {
        double[] a = {from.x(), from.y(), from.z()};
        double[] b = {to.x(), to.y(), to.z()};
        double[] low = {block.low().x(), block.low().y(), block.low().z()};
        double[] high = {block.high().x(), block.high().y(), block.high().z()};
        double first = 0;
        double last = 1;
        for (int i = 0; i < a.length; i++) {
            double way = b[i] - a[i];
            if (way == 0) {
                if (a[i] <= low[i] || a[i] >= high[i]) {
                    return false;
                }
            } else {
                double one = (low[i] - a[i]) / way;
                double other = (high[i] - a[i]) / way;
                first = Math.max(first, Math.min(one, other));
                last = Math.min(last, Math.max(one, other));
            }
        }
        return first < last;
    }
}
