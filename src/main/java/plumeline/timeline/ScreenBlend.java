package plumeline.timeline;

/// An overlay on black laid over a picture by a screen blend, its own black taken off first.
///
/// `out = 1 − (1 − below)(1 − level · x')`, with `x' = (x − b) / (1 − b)`, not below 0: without that step an overlay
/// whose black sits at b lifts the whole picture by it. All values are shares of full, on one scale: that of the
/// display's code values, or linear light, as the plan says.
///
/// **Source:** the screen blend is common practice of compositing (also W3C Compositing and Blending Level 1, 9.1.3,
/// from memory); taking off the black is a straight line through (b, 0) and (1, 1).
///
/// @param black where the overlay's black sits, a share of full, 0 to less than 1
/// @param level how strongly it is laid on, a share, over 0 to 1
public record ScreenBlend(double black, double level) {
    /// Checks the ranges.
    public ScreenBlend {
        if (!(black >= 0) || !(black < 1) || !(level > 0) || !(level <= 1)) {
            throw new IllegalArgumentException("a black at " + black + ", a level of " + level);
        }
    }

    /// Gives a value of the overlay with its black taken off.
    ///
    /// @param value a share of full, 0 to 1
    /// @return a share of full, 0 to 1
    public double lifted(double value) {
        return Math.clamp((value - black) / (1 - black), 0, 1);
    }

    /// Gives the blend of both.
    ///
    /// @param below the picture, a share of full, 0 to 1
    /// @param over the overlay, a share of full, 0 to 1
    /// @return a share of full, 0 to 1
    public double of(double below, double over) {
        return 1 - (1 - below) * (1 - level * lifted(over));
    }
}
