package plumeline.cut.mask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Point;

/// A convex patch of a mask: round points with room about each, cut flat at a strand's foot.
///
/// @param corners its corners in order, px
record Hull(List<Point> corners) {
    private static final int ROUND = 12;

    Hull {
        corners = List.copyOf(corners);
    }

    /// A point with room about it.
    ///
    /// @param at the point, px
    /// @param roomPixels how far to each side
    /// @param foot beyond which nothing of it counts
    record Spot(Point at, double roomPixels, Optional<Foot> foot) {}

    /// Where a strand enters its thing: its mask ends there, flat across it.
    ///
    /// @param at a point of the flat end, px
    /// @param x the strand's way from the thing in the picture, of length 1, to the right
    /// @param y down
    record Foot(Point at, double x, double y) {
        private double overPixels(Point point) {
            return (point.x() - at.x()) * x + (point.y() - at.y()) * y;
        }

        private List<Point> cut(List<Point> corners) {
            List<Point> kept = new ArrayList<>();
            Point before = corners.getLast();
            for (Point now : corners) {
                double was = overPixels(before);
                double is = overPixels(now);
                if (was < 0 != is < 0) {
                    double share = was / (was - is);
                    kept.add(new Point(
                            before.x() + share * (now.x() - before.x()), before.y() + share * (now.y() - before.y())));
                }
                if (is >= 0) {
                    kept.add(now);
                }
                before = now;
            }
            return kept;
        }
    }

    /// The hull of round spots, each by a polygon about its circle.
    static Hull of(List<Spot> spots) {
        List<Point> points = new ArrayList<>(spots.size() * ROUND);
        for (Spot spot : spots) {
            double radius = spot.roomPixels() / Math.cos(Math.PI / ROUND);
            List<Point> round = new ArrayList<>(ROUND);
            for (int i = 0; i < ROUND; i++) {
                double angle = 2 * Math.PI * i / ROUND;
                round.add(new Point(
                        spot.at().x() + radius * StrictMath.cos(angle),
                        spot.at().y() + radius * StrictMath.sin(angle)));
            }
            points.addAll(spot.foot().map(foot -> foot.cut(round)).orElse(round));
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
