package plumeline.motion;

/// What a device does at most along or round one axis, in metres or radians. Each is infinite where it isn't known:
/// then nothing is ruled out by it, and nothing that rests on it is known.
///
/// @param speed highest speed, a second, > 0
/// @param acceleration highest acceleration, a second squared, > 0
/// @param jerk highest jerk, a second cubed, > 0
/// @param travel from end stop to end stop, > 0
/// @param resolution smallest step, > 0
/// @param repeats how far off it comes back, ≥ 0
public record Limits(double speed, double acceleration, double jerk, double travel, double resolution, double repeats) {
    /// Nothing is known.
    public static final Limits UNKNOWN = new Limits(
            Double.POSITIVE_INFINITY,
            Double.POSITIVE_INFINITY,
            Double.POSITIVE_INFINITY,
            Double.POSITIVE_INFINITY,
            Double.POSITIVE_INFINITY,
            Double.POSITIVE_INFINITY);

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public Limits {
        if (!(speed > 0 && acceleration > 0 && jerk > 0 && travel > 0 && resolution > 0 && repeats >= 0)) {
            throw new IllegalArgumentException("limits of speed " + speed + ", acceleration " + acceleration + ", jerk "
                    + jerk + ", travel " + travel + ", resolution " + resolution + ", repeats " + repeats);
        }
    }

    /// Gives limits of which speed, acceleration and jerk are known at most.
    ///
    /// @param speed highest speed, > 0, or infinite
    /// @param acceleration highest acceleration, > 0, or infinite
    /// @param jerk highest jerk, > 0, or infinite
    /// @return the limits
    public static Limits of(double speed, double acceleration, double jerk) {
        return UNKNOWN.withMotion(speed, acceleration, jerk);
    }

    /// Gives the same device with other limits of its motion.
    ///
    /// @param otherSpeed highest speed, > 0, or infinite
    /// @param otherAcceleration highest acceleration, > 0, or infinite
    /// @param otherJerk highest jerk, > 0, or infinite
    /// @return the limits
    public Limits withMotion(double otherSpeed, double otherAcceleration, double otherJerk) {
        return new Limits(otherSpeed, otherAcceleration, otherJerk, travel, resolution, repeats);
    }

    /// Gives the same device with another way from end stop to end stop.
    ///
    /// @param other > 0, or infinite
    /// @return the limits
    public Limits withTravel(double other) {
        return new Limits(speed, acceleration, jerk, other, resolution, repeats);
    }
}
