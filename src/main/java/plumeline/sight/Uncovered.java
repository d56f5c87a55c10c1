package plumeline.sight;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Aim;
import plumeline.geom.Hull;
import plumeline.geom.Outlines;
import plumeline.geom.Plane;
import plumeline.geom.Point;
import plumeline.geom.Vec;

/// What is left of a flat outline, seen from a place past bodies: what a lamp's face gives to a surface in the shadow
/// of others. Bodies count as far as they stand before the outline's front, where one is given; else they are taken to
/// stand wholly before it.
///
/// Exact for straight edges: seen from a place they are straight in a plane before it. What a convex body leaves is cut
/// into pieces, one along each edge of the body's outline, so that pieces never overlap and none needs a hole.
public final class Uncovered {
    private static final Comparator<Point> FROM_LEFT = (one, other) ->
            one.x() == other.x() ? Double.compare(one.y(), other.y()) : Double.compare(one.x(), other.x());

    /// What is nearer to the plane through the place, square to the way to the outline, is beside it, m.
    private static final double BESIDE_METRES = 1e-4;

    private static final Point MIDDLE = new Point(0, 0);

    private final Vec place;
    private final Aim.Frame frame;
    private final Plane beside;
    private final Optional<Plane> front;

    private Uncovered(Vec place, List<Vec> outline, Optional<Plane> front) {
        this.place = place;
        this.front = front;
        frame = Aim.toward(place, middle(outline)).frame();
        beside = new Plane(place.plus(frame.forward().times(BESIDE_METRES)), frame.forward());
    }

    /// Finds what is left.
    ///
    /// @param place from where it is seen, m
    /// @param outline the outline's corners in order, m, its middle more than 0.1 mm from the place
    /// @param hiders what stands before it
    /// @return the corners of each piece in order, m, along the outline's own sight lines but not on its plane;
    /// none where all is covered
    public static List<List<Vec>> pieces(Vec place, List<Vec> outline, List<Hull> hiders) {
        return new Uncovered(place, outline, Optional.empty()).pieces(outline, hiders);
    }

    /// Finds what is left of an outline with things that may reach behind it.
    ///
    /// @param place from where it is seen, m, before its front
    /// @param outline the outline's corners in order, m, its middle more than 0.1 mm from the place
    /// @param front the plane it lies in, its free side toward the place
    /// @param hiders what stands there
    /// @return as [#pieces(Vec, List, List)]
    public static List<List<Vec>> pieces(Vec place, List<Vec> outline, Plane front, List<Hull> hiders) {
        return new Uncovered(place, outline, Optional.of(front)).pieces(outline, hiders);
    }

    /// Tells whether a point is covered.
    ///
    /// @param place from where it is seen, m
    /// @param at the point, m, elsewhere
    /// @param hiders what stands before it
    /// @return true where one of them is on the way, touching it or more
    public static boolean isCovered(Vec place, Vec at, List<Hull> hiders) {
        Uncovered seen = new Uncovered(place, List.of(at), Optional.empty());
        return hiders.stream().map(seen::cover).anyMatch(Uncovered::holdsMiddle);
    }

    /// Whether a cover holds what is looked at.
    private static boolean holdsMiddle(List<Point> cover) {
        for (int i = 0; i < cover.size(); i++) {
            Point from = cover.get(i);
            Point to = cover.get((i + 1) % cover.size());
            if (side(MIDDLE, from, to) < 0) {
                return false;
            }
        }
        return cover.size() > 2;
    }

    private List<List<Vec>> pieces(List<Vec> outline, List<Hull> hiders) {
        List<List<Point>> left = List.of(ahead(outline).stream().map(this::seen).toList());
        for (Hull hider : hiders) {
            List<Point> cover = cover(hider);
            if (cover.size() > 2) {
                left = without(left, cover);
            }
        }
        return left.stream()
                .filter(piece -> piece.size() > 2)
                .map(piece -> piece.stream().map(this::place).toList())
                .toList();
    }

    private static Vec middle(List<Vec> outline) {
        Vec sum = Vec.ZERO;
        for (Vec corner : outline) {
            sum = sum.plus(corner);
        }
        return sum.times(1.0 / outline.size());
    }

    private Point seen(Vec corner) {
        Vec way = corner.minus(place);
        double depth = way.dot(frame.forward());
        return new Point(way.dot(frame.right()) / depth, way.dot(frame.up()) / depth);
    }

    /// One metre before the place.
    private Vec place(Point at) {
        return place.plus(frame.forward())
                .plus(frame.right().times(at.x()))
                .plus(frame.up().times(at.y()));
    }

    private List<Vec> ahead(List<Vec> outline) {
        return Outlines.ahead(outline, beside.normal(), beside.normal().dot(beside.through()));
    }

    /// A hull as seen, counterclockwise; nothing where none of it is ahead.
    private List<Point> cover(Hull hull) {
        // What stands round the place is cut there; the outline is far from it then.
        List<Vec> ahead = front.isPresent() && hull.isAhead(beside) ? hull.ahead(front.get()) : hull.ahead(beside);
        if (ahead.size() < 3) {
            return List.of();
        }
        return convex(ahead.stream().map(this::seen).toList());
    }

    /// The convex outline of points, counterclockwise, by Andrew's monotone chains: the lower edge from left to right,
    /// then the upper one back.
    private static List<Point> convex(List<Point> points) {
        Point[] sorted = points.toArray(Point[]::new);
        Arrays.sort(sorted, FROM_LEFT);
        List<Point> convex = new ArrayList<>();
        for (Point next : sorted) {
            chain(convex, next, 0);
        }
        int lower = convex.size();
        for (int i = sorted.length - 2; i >= 0; i--) {
            chain(convex, sorted[i], lower - 1);
        }
        convex.removeLast();
        return convex;
    }

    private static void chain(List<Point> convex, Point next, int from) {
        while (convex.size() > from + 1 && side(next, convex.get(convex.size() - 2), convex.getLast()) <= 0) {
            convex.removeLast();
        }
        convex.add(next);
    }

    /// Takes a convex cover out of pieces: along each of its edges what lies outside that edge and inside all before.
    private static List<List<Point>> without(List<List<Point>> pieces, List<Point> cover) {
        List<List<Point>> left = new ArrayList<>();
        for (List<Point> piece : pieces) {
            if (isApart(piece, cover)) {
                left.add(piece);
                continue;
            }
            List<Point> inside = piece;
            for (int i = 0; i < cover.size() && inside.size() > 2; i++) {
                Point from = cover.get(i);
                Point to = cover.get((i + 1) % cover.size());
                List<Point> outside = cut(inside, to, from);
                if (outside.size() > 2) {
                    left.add(outside);
                    inside = cut(inside, from, to);
                }
            }
        }
        return left;
    }

    private static boolean isApart(List<Point> one, List<Point> other) {
        return least(one, 1, 0) > -least(other, -1, 0)
                || least(other, 1, 0) > -least(one, -1, 0)
                || least(one, 0, 1) > -least(other, 0, -1)
                || least(other, 0, 1) > -least(one, 0, -1);
    }

    private static double least(List<Point> points, double x, double y) {
        double least = Double.POSITIVE_INFINITY;
        for (Point point : points) {
            least = Math.min(least, x * point.x() + y * point.y());
        }
        return least;
    }

    /// What of a piece is to the left of a line.
    private static List<Point> cut(List<Point> piece, Point from, Point to) {
        List<Point> cut = new ArrayList<>(piece.size() + 2);
        Point last = piece.getLast();
        double lastSide = side(last, from, to);
        for (Point corner : piece) {
            double side = side(corner, from, to);
            if (side > 0 != lastSide > 0) {
                double share = lastSide / (lastSide - side);
                cut.add(new Point(
                        last.x() + share * (corner.x() - last.x()), last.y() + share * (corner.y() - last.y())));
            }
            if (side > 0) {
                cut.add(corner);
            }
            last = corner;
            lastSide = side;
        }
        return cut;
    }

    private static double side(Point at, Point from, Point to) {
        return (to.x() - from.x()) * (at.y() - from.y()) - (to.y() - from.y()) * (at.x() - from.x());
    }
}
