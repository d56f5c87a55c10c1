package plumeline.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumeline.geom.Body;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;

/// The outline of a body from above.
final class Footprint {
    private static final int STEPS = 48;

    private Footprint() {}

    /// Corners of the smallest convex outline that holds the body seen from straight above, table frame.
    static List<Vec> of(Body body) {
        List<Vec> points = new ArrayList<>();
        switch (body.solid()) {
            case Solid.Revolved(List<Station> stations) -> {
                for (Station station : stations) {
                    for (int i = 0; i < STEPS; i++) {
                        double angle = 2 * Math.PI * i / STEPS;
                        points.add(body.place(new Vec(
                                station.radiusMetres() * Math.cos(angle),
                                station.radiusMetres() * Math.sin(angle),
                                station.heightMetres())));
                    }
                }
            }
            case Solid.Box box -> box.corners().forEach(corner -> points.add(body.place(corner)));
        }
        return hull(points);
    }

    /// The convex hull of places by their x and y.
    static List<Vec> hull(List<Vec> points) {
        List<Vec> sorted = new ArrayList<>(points);
        sorted.sort(Comparator.comparingDouble(Vec::x).thenComparingDouble(Vec::y));
        List<Vec> hull = chain(sorted);
        hull.removeLast();
        List<Vec> upper = chain(sorted.reversed());
        upper.removeLast();
        hull.addAll(upper);
        return hull;
    }

    private static List<Vec> chain(List<Vec> sorted) {
        List<Vec> chain = new ArrayList<>();
        for (Vec point : sorted) {
            while (chain.size() > 1 && !turnsLeft(chain.get(chain.size() - 2), chain.getLast(), point)) {
                chain.removeLast();
            }
            chain.add(point);
        }
        return chain;
    }

    private static boolean turnsLeft(Vec a, Vec b, Vec c) {
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x()) > 1e-12;
    }
}
