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
