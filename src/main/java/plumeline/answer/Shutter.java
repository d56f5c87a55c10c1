package plumeline.answer;

import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.text.Range;
import plumeline.text.Shape;

/// The key `shutter` of a question that has a `rate`: an angle, or the exposure of one frame.
public final class Shutter {
    private static final String KEY = "shutter";

    /// A frame's time as a share of it counts as met within this.
    private static final double NEAR = 1e-9;

    private Shutter() {}

    /// Gives its grammar.
    ///
    /// @return the shape of its value
    public static Shape shape() {
        return Shape.AnyOf.of(
                new Shape.Amount(Kind.ANGLE, Range.between("0.1 deg", "360 deg"), Shape.Mark.FIXED),
                new Shape.Amount(Kind.TIME, Range.between("0.001 ms", "60 s"), Shape.Mark.FIXED));
    }

    /// Reads how long a frame is exposed, 180 deg where nothing is given; longer than a frame is refused.
    ///
    /// @param given the input
    /// @param rate frames a second
    /// @return s
    public static double readSeconds(Given given, double rate) {
        if (!given.has(KEY)) {
            return given.si(KEY, "180 deg", "the usual shutter") / (2 * Math.PI) / rate;
        }
        boolean isAngle = given.quantity(KEY).kind() == Kind.ANGLE;
        double seconds = isAngle ? given.si(KEY) / (2 * Math.PI) / rate : given.si(KEY);
        if (seconds > (1 + NEAR) / rate) {
            given.refuse(
                    KEY,
                    "P-ASK-76",
                    Print.number(seconds * 1e3, 3) + " ms",
                    "at most a frame's time, " + Print.number(1e3 / rate, 3) + " ms",
                    "Give the exposure of one frame, such as 1/2000 s, or an angle.");
        }
        return seconds;
    }
}
