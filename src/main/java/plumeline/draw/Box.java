package plumeline.draw;

import java.util.Collection;
import java.util.List;

/// A rectangle on the page, pixels.
///
/// @param left least x
/// @param top least y
/// @param right greatest x
/// @param bottom greatest y
record Box(double left, double top, double right, double bottom) {
    static Box round(Spot spot, double width, double height) {
        return new Box(spot.x() - width / 2, spot.y() - height / 2, spot.x() + width / 2, spot.y() + height / 2);
    }

    static Box about(Collection<Spot> spots) {
        Box box = new Box(
                Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);
        for (Spot spot : spots) {
            box = new Box(
                    Math.min(box.left, spot.x()),
                    Math.min(box.top, spot.y()),
                    Math.max(box.right, spot.x()),
                    Math.max(box.bottom, spot.y()));
        }
        return box;
    }

    double width() {
        return right - left;
    }

    double height() {
        return bottom - top;
    }

    Spot middle() {
        return new Spot((left + right) / 2, (top + bottom) / 2);
    }

    /// The four sides: left, right, upper, lower.
    List<Stretch> sides() {
        Spot a = new Spot(left, top);
        Spot b = new Spot(right, top);
        Spot c = new Spot(right, bottom);
        Spot d = new Spot(left, bottom);
        return List.of(new Stretch(a, d), new Stretch(b, c), new Stretch(a, b), new Stretch(d, c));
    }

    Box grown(double by) {
        return new Box(left - by, top - by, right + by, bottom + by);
    }

    /// The smallest rectangle that holds both.
    Box with(Box other) {
        return new Box(
                Math.min(left, other.left),
                Math.min(top, other.top),
                Math.max(right, other.right),
                Math.max(bottom, other.bottom));
    }

    boolean meets(Box other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    boolean holds(Box other) {
        return left <= other.left && top <= other.top && right >= other.right && bottom >= other.bottom;
    }

    boolean holds(Spot spot) {
        return spot.x() >= left && spot.x() <= right && spot.y() >= top && spot.y() <= bottom;
    }

    /// The spot of the rectangle that is nearest to another.
    Spot nearestTo(Spot spot) {
        return new Spot(Math.clamp(spot.x(), left, right), Math.clamp(spot.y(), top, bottom));
    }
}
