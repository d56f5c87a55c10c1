package plumeline.sketch;

import java.util.Collection;
import java.util.List;

/// A rectangle on the page, pixels.
///
/// @param left least x
/// @param top least y
/// @param right greatest x
/// @param bottom greatest y
public record Box(double left, double top, double right, double bottom) {
    /// Makes one round a middle.
    ///
    /// @param spot the middle
    /// @param width pixels
    /// @param height pixels
    /// @return the rectangle
    public static Box round(Spot spot, double width, double height) {
        return new Box(spot.x() - width / 2, spot.y() - height / 2, spot.x() + width / 2, spot.y() + height / 2);
    }

    /// Makes the least one that holds some spots.
    ///
    /// @param spots one or more
    /// @return the rectangle
    public static Box about(Collection<Spot> spots) {
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

    /// Gives its width.
    ///
    /// @return pixels
    public double width() {
        return right - left;
    }

    /// Gives its height.
    ///
    /// @return pixels
    public double height() {
        return bottom - top;
    }

    /// Gives its middle.
    ///
    /// @return the spot
    public Spot middle() {
        return new Spot((left + right) / 2, (top + bottom) / 2);
    }

    /// Gives its four sides.
    ///
    /// @return top, right, bottom, left
    public List<Stretch> sides() {
        Spot a = new Spot(left, top);
        Spot b = new Spot(right, top);
        Spot c = new Spot(right, bottom);
        Spot d = new Spot(left, bottom);
        return List.of(new Stretch(a, d), new Stretch(b, c), new Stretch(a, b), new Stretch(d, c));
    }

    /// Makes it larger at every side.
    ///
    /// @param by pixels; negative makes it smaller
    /// @return the rectangle
    public Box grown(double by) {
        return new Box(left - by, top - by, right + by, bottom + by);
    }

    /// Makes the least one that holds another too.
    ///
    /// @param other the other
    /// @return the rectangle
    public Box with(Box other) {
        return new Box(
                Math.min(left, other.left),
                Math.min(top, other.top),
                Math.max(right, other.right),
                Math.max(bottom, other.bottom));
    }

    /// Tells whether two have an area in common.
    ///
    /// @param other the other
    /// @return true where they do
    public boolean meets(Box other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    /// Tells whether another lies wholly within.
    ///
    /// @param other the other
    /// @return true where it does
    public boolean holds(Box other) {
        return left <= other.left && top <= other.top && right >= other.right && bottom >= other.bottom;
    }

    /// Tells whether a spot lies within or on its edge.
    ///
    /// @param spot the spot
    /// @return true where it does
    public boolean holds(Spot spot) {
        return spot.x() >= left && spot.x() <= right && spot.y() >= top && spot.y() <= bottom;
    }

    /// Gives its spot that is nearest to another.
    ///
    /// @param spot the other
    /// @return the same spot where it lies within
    public Spot nearestTo(Spot spot) {
        return new Spot(Math.clamp(spot.x(), left, right), Math.clamp(spot.y(), top, bottom));
    }
}
