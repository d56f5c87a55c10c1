package plumeline.cut.mask;

import plumeline.geom.Point;
import plumeline.geom.Vec;
import plumeline.stage.PlaceSight;
import plumeline.stage.Scene;

/// How the picture goes with a place: px a metre along each axis of the table, by differences.
///
/// @param x what a metre to the right moves in the picture, px
/// @param y what a metre away moves
/// @param z what a metre up moves
record Grain(Point x, Point y, Point z) {
    private static final double STEP_METRES = 1e-5;

    /// Reads it about a place that is seen in one way; where a step leaves that way, the step back counts.
    static Grain at(Tracing.Sighted sighted, Scene scene, Vec place, Point pixel) {
        return new Grain(
                column(sighted, scene, place, pixel, new Vec(STEP_METRES, 0, 0)),
                column(sighted, scene, place, pixel, new Vec(0, STEP_METRES, 0)),
                column(sighted, scene, place, pixel, new Vec(0, 0, STEP_METRES)));
    }

    private static Point column(Tracing.Sighted sighted, Scene scene, Vec place, Point pixel, Vec step) {
        for (int sign = 1; sign >= -1; sign -= 2) {
            var there = sighted.find(place.plus(step.times(sign)));
            if (there.isPresent()) {
                return new Point(
                        sign * (there.get().x() - pixel.x()) / STEP_METRES,
                        sign * (there.get().y() - pixel.y()) / STEP_METRES);
            }
        }
        // Neither step is seen so: as through air.
        double depth = Math.max(scene.aim().depthMetres(place), PlaceSight.NEAREST_METRES);
        double scale = ClipSize.scalePixels(scene) / depth / STEP_METRES;
        return new Point(
                scale * scene.aim().right().dot(step), -scale * scene.aim().up().dot(step));
    }

    /// What a way in space moves.
    Point of(Vec way) {
        return new Point(
                x.x() * way.x() + y.x() * way.y() + z.x() * way.z(),
                x.y() * way.x() + y.y() * way.y() + z.y() * way.z());
    }

    /// The most that a metre level, whichever way, moves, px: the greater singular value.
    double levelPixels() {
        double a = x.x() * x.x() + x.y() * x.y();
        double d = y.x() * y.x() + y.y() * y.y();
        double b = x.x() * y.x() + x.y() * y.y();
        return Math.sqrt((a + d) / 2 + Math.hypot((a - d) / 2, b));
    }

    /// How many px a metre across a strand has: half of a round strand's width is its radius times this.
    double acrossPixels(Vec way) {
        Point along = of(way);
        double length = Math.hypot(along.x(), along.y());
        Vec aside =
                way.cross(Math.abs(way.z()) < 0.9 ? Vec.UP : new Vec(1, 0, 0)).unit();
        Point one = of(aside);
        Point other = of(aside.cross(way));
        if (!(length > 0)) {
            return Math.hypot(Math.hypot(one.x(), one.y()), Math.hypot(other.x(), other.y()));
        }
        double nx = -along.y() / length;
        double ny = along.x() / length;
        return Math.hypot(one.x() * nx + one.y() * ny, other.x() * nx + other.y() * ny);
    }
}
