package plumeline.sketch;

import java.util.Optional;

/// A straight line between two spots.
///
/// @param from one end
/// @param to the other end
public record Stretch(Spot from, Spot to) {
    /// Tells whether any of it lies in a rectangle.
    ///
    /// @param box the rectangle
    /// @return true where they meet
    public boolean crosses(Box box) {
        return clipped(box).isPresent();
    }

    /// Tells on which side of it a spot lies.
    ///
    /// @param spot the spot
    /// @return above 0 on one side, below 0 on the other, 0 on the line
    public double side(Spot spot) {
        return (to.x() - from.x()) * (spot.y() - from.y()) - (to.y() - from.y()) * (spot.x() - from.x());
    }

    /// Tells whether two cross within both.
    ///
    /// @param other the other
    /// @return true where they do; two along one line do not
    public boolean crosses(Stretch other) {
        return side(other.from) * side(other.to) <= 0
                && other.side(from) * other.side(to) <= 0
                && !(side(other.from) == 0 && side(other.to) == 0);
    }

    /// Cuts it at a rectangle.
    ///
    /// @param box the rectangle
    /// @return what lies inside; nothing where it passes by
    public Optional<Stretch> clipped(Box box) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double[] p = {-dx, dx, -dy, dy};
        double[] q = {from.x() - box.left(), box.right() - from.x(), from.y() - box.top(), box.bottom() - from.y()};
        double first = 0;
        double last = 1;
        for (int i = 0; i < 4; i++) {
            if (p[i] == 0) {
                if (q[i] < 0) {
                    return Optional.empty();
                }
            } else if (p[i] < 0) {
                first = Math.max(first, q[i] / p[i]);
            } else {
                last = Math.min(last, q[i] / p[i]);
            }
        }
        return first > last
                ? Optional.empty()
                : Optional.of(new Stretch(from.toward(to, first), from.toward(to, last)));
    }
}
