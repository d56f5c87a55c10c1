package plumeline.cut.mask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumeline.geom.Point;

/// A convex patch of a mask: round points with room about each.
///
/// @param corners its corners in order, px
record Hull(List<Point> corners) {
    private static final int ROUND = 12;

    Hull {
        corners = List.copyOf(corners);
    }

    /// A point with room about it.
    record Spot(Point at, double roomPixels) {}

    /// The hull of round spots, each by a polygon about its circle.
    static Hull of(List<Spot> spots) {
        List<Point> points = new ArrayList<>(spots.size() * ROUND);
        for (Spot spot : spots) {
            double radius = spot.roomPixels() / Math.cos(Math.PI / ROUND);
            for (int i = 0; i < ROUND; i++) {
                double angle = 2 * Math.PI * i / ROUND;
                points.add(new Point(
                        spot.at().x() + radius * StrictMath.cos(angle),
                        spot.at().y() + radius * StrictMath.sin(angle)));
            }
        }
        points.sort(Comparator.comparingDouble(Point::x).thenComparingDouble(Point::y));
        List<Point> hull = new ArrayList<>();
        grow(points, hull, 0);
        hull.removeLast();
        int start = hull.size();
        grow(points.reversed(), hull, start);
        hull.removeLast();
        return new Hull(hull);
    }

    private static void grow(List<Point> points, List<Point> hull, int start) {
        for (Point point : points) {
            while (hull.size() >= start + 2 && turn(hull.get(hull.size() - 2), hull.getLast(), point) <= 0) {
                hull.removeLast();
            }
            hull.add(point);
        }
    }

    private static double turn(Point a, Point b, Point c) {
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    }
}
