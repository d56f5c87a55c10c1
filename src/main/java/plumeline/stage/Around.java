package plumeline.stage;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;

/// Places round a body whose hull holds it: the corners of a box, corners about each rim of a turned one.
final class Around {
    private static final int ROUND = 8;
    private static final double PARALLEL_METRES = 1e-9;

    private Around() {}

    static List<Vec> places(Body body) {
        List<Vec> places = new ArrayList<>();
        switch (body.solid()) {
            case Solid.Box box -> box.corners().forEach(corner -> places.add(body.place(corner)));
            case Solid.Revolved revolved -> {
                for (Station station : revolved.stations()) {
                    double radius = station.radiusMetres() / Math.cos(Math.PI / ROUND);
                    for (int i = 0; i < ROUND; i++) {
                        double angle = 2 * Math.PI * i / ROUND;
                        places.add(body.place(
                                new Vec(radius * Math.cos(angle), radius * Math.sin(angle), station.heightMetres())));
                    }
                }
            }
        }
        return places;
    }

    /// How far all places stay within bounds: below 0 where one is outside.
    static double withinMetres(List<Vec> places, Bounds bounds) {
        double least = Double.POSITIVE_INFINITY;
        for (Vec place : places) {
            Vec low = place.minus(bounds.low());
            Vec high = bounds.high().minus(place);
            least = Math.min(least, Math.min(Math.min(low.x(), high.x()), Math.min(low.y(), high.y())));
            least = Math.min(least, Math.min(low.z(), high.z()));
        }
        return least;
    }

    /// How far a plane can keep a lens point with all places apart from a block: 0 or more where no sight line to the
    /// places' hull meets the block. Tried are planes along the block's faces, and through a sight line and an
    /// edge's direction; where only a plane of another kind would part them, it says less than there is.
    static double pastMetres(Vec eye, List<Vec> places, Bounds block) {
        List<Vec> axes = List.of(new Vec(1, 0, 0), new Vec(0, 1, 0), Vec.UP);
        double most = Double.NEGATIVE_INFINITY;
        for (Vec axis : axes) {
            most = Math.max(most, partedMetres(axis, eye, places, block));
        }
        for (Vec place : places) {
            for (Vec axis : axes) {
                Vec normal = place.minus(eye).cross(axis);
                double length = normal.lengthMetres();
                if (length > PARALLEL_METRES) {
                    most = Math.max(most, partedMetres(normal.times(1 / length), eye, places, block));
                }
            }
        }
        return most;
    }

    private static double partedMetres(Vec normal, Vec eye, List<Vec> places, Bounds block) {
        Vec middle = block.low().plus(block.high()).times(0.5);
        Vec half = block.high().minus(block.low()).times(0.5);
        double reach =
                Math.abs(normal.x()) * half.x() + Math.abs(normal.y()) * half.y() + Math.abs(normal.z()) * half.z();
        double low = normal.dot(eye.minus(middle));
        double high = low;
        for (Vec place : places) {
            double at = normal.dot(place.minus(middle));
            low = Math.min(low, at);
            high = Math.max(high, at);
        }
        return Math.max(low, -high) - reach;
    }
}
