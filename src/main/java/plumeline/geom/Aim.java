package plumeline.geom;

/// A lens point and where it looks.
///
/// @param eye the lens point (entrance pupil), table frame, metres
/// @param turnRadians turn, radians; 0 looks along +y, positive clockwise seen from above
/// @param tiltRadians tilt, radians, positive up, between −π/2 and π/2
/// @param rollRadians roll about the axis, radians; positive is clockwise seen from behind the camera
public record Aim(Vec eye, double turnRadians, double tiltRadians, double rollRadians) {
    /// Checks the numbers.
    public Aim {
        if (!Double.isFinite(eye.x() + eye.y() + eye.z() + turnRadians + rollRadians)
                || !(Math.abs(tiltRadians) <= Math.PI / 2)) {
            throw new IllegalArgumentException(
                    "an aim needs a finite place, turn and roll, and a tilt within a quarter turn");
        }
    }

    /// Aims without a roll.
    ///
    /// @param eye the lens point, metres
    /// @param turnRadians turn, radians
    /// @param tiltRadians tilt, radians
    public Aim(Vec eye, double turnRadians, double tiltRadians) {
        this(eye, turnRadians, tiltRadians, 0);
    }

    /// Gives the same aim from another place.
    ///
    /// @param other the lens point, metres
    /// @return the aim
    public Aim from(Vec other) {
        return new Aim(other, turnRadians, tiltRadians, rollRadians);
    }

    /// Aims from a place at another.
    ///
    /// @param eye the lens point, metres
    /// @param target what shall be in the middle of the picture, metres
    /// @return the aim; turn 0 where the target is straight above or below
    public static Aim toward(Vec eye, Vec target) {
        Vec way = target.minus(eye);
        double flat = Math.hypot(way.x(), way.y());
        if (!(way.lengthMetres() > 0))
            throw new IllegalArgumentException("an aim needs a target away from the lens point");
        return new Aim(eye, flat > 0 ? Math.atan2(way.x(), way.y()) : 0, Math.atan2(way.z(), flat));
    }

    /// Gives the direction of the optical axis.
    ///
    /// @return unit vector
    public Vec forward() {
        double c = Math.cos(tiltRadians);
        return new Vec(Math.sin(turnRadians) * c, Math.cos(turnRadians) * c, Math.sin(tiltRadians));
    }

    /// Gives the direction of the picture's x.
    ///
    /// @return unit vector, level where there is no roll
    public Vec right() {
        return rollRadians == 0 ? level() : frame().right();
    }

    /// Gives the direction of the picture's y.
    ///
    /// @return unit vector
    public Vec up() {
        if (rollRadians != 0) {
            return frame().up();
        }
        double s = -Math.sin(tiltRadians);
        return new Vec(Math.sin(turnRadians) * s, Math.cos(turnRadians) * s, Math.cos(tiltRadians));
    }

    private Vec level() {
        return new Vec(Math.cos(turnRadians), -Math.sin(turnRadians), 0);
    }

    /// Gives all three directions at once.
    ///
    /// @return the camera's frame
    public Frame frame() {
        double ct = Math.cos(turnRadians);
        double st = Math.sin(turnRadians);
        double cp = Math.cos(tiltRadians);
        double sp = Math.sin(tiltRadians);
        Vec level = new Vec(ct, -st, 0);
        Vec upright = new Vec(-st * sp, -ct * sp, cp);
        Vec forward = new Vec(st * cp, ct * cp, sp);
        if (rollRadians == 0) {
            return new Frame(level, upright, forward);
        }
        double cr = Math.cos(rollRadians);
        double sr = Math.sin(rollRadians);
        return new Frame(
                level.times(cr).minus(upright.times(sr)), upright.times(cr).plus(level.times(sr)), forward);
    }

    /// The camera's frame, three unit vectors.
    ///
    /// @param right direction of the picture's x
    /// @param up direction of the picture's y
    /// @param forward direction of the optical axis
    public record Frame(Vec right, Vec up, Vec forward) {}

    /// Gives the depth of a place along the optical axis.
    ///
    /// @param place a place, metres
    /// @return depth, metres, negative behind the lens point
    public double depthMetres(Vec place) {
        return forward().dot(place.minus(eye));
    }
}
