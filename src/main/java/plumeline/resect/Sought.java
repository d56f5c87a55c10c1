package plumeline.resect;

/// One number of the set that a still may show to be off.
///
/// @param name its name: a mark's path, or `camera.turn`, `camera.tilt`, `camera.roll`, `camera.focal_length`,
/// `tank.x`,
///     `tank.y`
/// @param kind what it is
/// @param errorSi how far off a hand may have set it, a 95 % half-width: metres, radians or a share
/// @param of where it enters
public record Sought(String name, Kind kind, double errorSi, Of of) {
    /// What a number is.
    public enum Kind {
        /// A length, metres.
        LENGTH,
        /// An angle, radians.
        ANGLE,
        /// A share of the value itself, dimensionless.
        SHARE
    }

    /// Where a number enters.
    public sealed interface Of {
        /// It is a mark's.
        ///
        /// @param index the mark's index in the stage
        record AMark(int index) implements Of {}

        /// It is something else.
        ///
        /// @param what what
        record Else(What what) implements Of {}
    }

    /// What may be off besides marks.
    public enum What {
        /// Where the camera is turned, against where it should look.
        TURN,
        /// How it is tilted, against where it should look.
        TILT,
        /// How it is rolled.
        ROLL,
        /// The lens's focal length.
        FOCAL_LENGTH,
        /// The tank, to camera right.
        TANK_X,
        /// The tank, away from the camera.
        TANK_Y
    }

    /// What owns it: what stands before the first dot of its name.
    String owner() {
        return name.substring(0, name.indexOf('.'));
    }

    /// What of its owner it is: what stands after the first dot of its name.
    String part() {
        return name.substring(name.indexOf('.') + 1);
    }

    double sigmaSi() {
        return errorSi / Normal.HALF_95;
    }
}
