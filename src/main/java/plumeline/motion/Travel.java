package plumeline.motion;

import java.util.List;

/// One axis's move: a distance in a time by a profile, from rest to rest; an even one at its speed throughout.
///
/// **Source:** own derivation from the profiles: areas under the speed; minimum jerk by Flash and Hogan, J.
/// Neuroscience 5 (1985) 1688, from memory; the seven segments of an S-curve by Biagiotti and Melchiorri, Trajectory
/// Planning for Automatic Machines and Robots (2008) 3.4, from memory.
///
/// @param distance how far, signed, metres or radians
/// @param seconds how long, real seconds, > 0
/// @param profile how the speed runs
/// @param rampSeconds how long speeding up takes (slowing down takes as long), real seconds, in (0, seconds/2]; of no
///        meaning for [Profile#EVEN] and [Profile#SMOOTH]
/// @param jerkSeconds how long in a ramp the acceleration grows, and shrinks, real seconds, in [0, rampSeconds/2]; of
///        meaning for [Profile#S_CURVE] only, else 0
public record Travel(double distance, double seconds, Profile profile, double rampSeconds, double jerkSeconds)
        implements Run {
    private static final double NEAR = 1 + 1e-12;

    /// A ramp that is no less of the time, so that it can be divided by.
    private static final double LEAST_RAMP = 1e-9;

    /// Peak speed, acceleration and jerk of a minimum-jerk move over distance by time, squared, cubed.
    private static final double SMOOTH_SPEED = 1.875;

    private static final double SMOOTH_ACCELERATION = 10 / Math.sqrt(3);
    private static final double SMOOTH_JERK = 60;

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public Travel {
        if (!(seconds > 0)
                || !(rampSeconds > 0)
                || rampSeconds > seconds / 2 * NEAR
                || !(jerkSeconds >= 0)
                || jerkSeconds > rampSeconds / 2 * NEAR) {
            throw new IllegalArgumentException("a move in " + seconds + " s with ramps of " + rampSeconds
                    + " s, whose acceleration grows for " + jerkSeconds + " s");
        }
    }

    /// Gives a move whose ramps take a third of the time each, an S-curve's jerk a third of each ramp, as is usual
    /// where no limit is given.
    ///
    /// @param distance how far, signed, metres or radians
    /// @param seconds how long, real seconds, > 0
    /// @param profile how the speed runs
    /// @return the move
    public static Travel inThirds(double distance, double seconds, Profile profile) {
        return of(distance, seconds, profile, seconds / 3, seconds / 9);
    }

    /// Gives a move that uses an acceleration in its ramps, and no other limit.
    ///
    /// @param distance how far, signed, metres or radians
    /// @param seconds how long, real seconds, > 0
    /// @param profile how the speed runs
    /// @param acceleration the most allowed, metres or radians per second squared, > 0
    /// @return the move
    public static Travel within(double distance, double seconds, Profile profile, double acceleration) {
        return within(
                distance,
                seconds,
                profile,
                Limits.of(Double.POSITIVE_INFINITY, acceleration, Double.POSITIVE_INFINITY));
    }

    /// Gives a move that uses the acceleration and the jerk allowed in its ramps: they are as short as those allow, so
    /// the peak speed v is the least that covers the distance d in the time T.
    ///
    /// `d = v(T − r)`; a trapezoid's ramp is `r = v/a`, whatever the jerk. An S-curve's is `v/a + a/j`, or
    /// `2√(v/j)` where a isn't reached; with an acceleration only, jerk acts through a ramp's first and last third
    /// and `r = 1.5 v/a`. Without limits for ramps, thirds of the time. Where even ramps of T/2 would need more
    /// than is allowed, they are T/2 and use the least acceleration, and the least jerk, that would do: that the
    /// device can't is told by [Usage].
    ///
    /// @param distance how far, signed, metres or radians
    /// @param seconds how long, real seconds, > 0
    /// @param profile how the speed runs
    /// @param limits the device's
    /// @return the move
    public static Travel within(double distance, double seconds, Profile profile, Limits limits) {
        if (!hasRamps(profile) || !Ramp.isLimited(profile, limits)) {
            return inThirds(distance, seconds, profile);
        }
        double far = Math.abs(distance);
        Ramp ramp = Ramp.of(profile, limits);
        double speed = ramp.speedFor(far, seconds);
        double rampLength = ramp.seconds(speed);
        return rampLength <= seconds / 2 * NEAR
                ? of(distance, seconds, profile, rampLength, ramp.jerkSeconds(speed))
                : of(distance, seconds, profile, seconds / 2, utmostJerkSeconds(ramp, far, seconds));
    }

    /// How long the acceleration grows where ramps of half the time need more than is allowed.
    private static double utmostJerkSeconds(Ramp ramp, double far, double seconds) {
        return switch (ramp) {
            case Ramp.Steady(double _, double jerked) -> jerked * seconds / 2;
            case Ramp.Jerked(double _, double jerk) ->
                ramp.leastAcceleration(far, seconds) / Math.max(jerk, Ramp.leastJerk(far, seconds));
        };
    }

    private static Travel of(double distance, double seconds, Profile profile, double rampSeconds, double jerkSeconds) {
        double ramp = Math.clamp(rampSeconds, seconds * LEAST_RAMP, seconds / 2);
        double jerk = profile == Profile.S_CURVE ? Math.min(jerkSeconds, ramp / 2) : 0;
        return new Travel(distance, seconds, profile, ramp, jerk);
    }

    private static boolean hasRamps(Profile profile) {
        return profile == Profile.TRAPEZOID || profile == Profile.S_CURVE;
    }

    /// Gives the shortest time in which a device makes a move by a profile with a speed and an acceleration.
    ///
    /// @param distance how far, metres or radians, ≥ 0
    /// @param profile how the speed runs
    /// @param speed the device's top speed, metres or radians per second, > 0; infinite where none is known
    /// @param acceleration the device's, metres or radians per second squared, > 0; infinite where none is known
    /// @return real seconds, ≥ 0
    public static double leastSeconds(double distance, Profile profile, double speed, double acceleration) {
        return leastSeconds(distance, profile, Limits.of(speed, acceleration, Double.POSITIVE_INFINITY));
    }

    /// Gives the shortest time in which a device makes a move by a profile, its run-up not counted for [Profile#EVEN].
    ///
    /// Even: `T = d/v`. Smooth: the longest of `15/8·d/v`, `√(10/√3·d/a)`, `∛(60·d/j)`. With ramps of r(v):
    /// `T = d/v + r(v)` with the top speed, or the lower one at which `v·r(v) = d`: for a trapezoid `T = 2√(d/a)`;
    /// for an S-curve with a jerk these are all its seven segments. Without limits for ramps, which take a third
    /// each then: `T = 1.5 d/v`.
    ///
    /// @param distance how far, metres or radians, ≥ 0
    /// @param profile how the speed runs
    /// @param limits the device's
    /// @return real seconds, ≥ 0; 0 where no limit bears on it
    public static double leastSeconds(double distance, Profile profile, Limits limits) {
        return switch (profile) {
            case EVEN -> distance / limits.speed();
            case SMOOTH ->
                Math.max(
                        SMOOTH_SPEED * distance / limits.speed(),
                        Math.max(
                                Math.sqrt(SMOOTH_ACCELERATION * distance / limits.acceleration()),
                                Math.cbrt(SMOOTH_JERK * distance / limits.jerk())));
            case TRAPEZOID, S_CURVE ->
                Ramp.isLimited(profile, limits)
                        ? Ramp.of(profile, limits).leastSeconds(distance, limits.speed())
                        : 1.5 * distance / limits.speed();
        };
    }

    /// Gives the move that takes the shortest time.
    ///
    /// @param distance how far, signed, metres or radians, not 0
    /// @param profile how the speed runs
    /// @param limits the device's, of which at least one bears on it
    /// @return the move
    public static Travel fastest(double distance, Profile profile, Limits limits) {
        double far = Math.abs(distance);
        double seconds = leastSeconds(far, profile, limits);
        if (!hasRamps(profile) || !Ramp.isLimited(profile, limits)) {
            return inThirds(distance, seconds, profile);
        }
        Ramp ramp = Ramp.of(profile, limits);
        double speed = Math.min(limits.speed(), ramp.topSpeed(far));
        return of(distance, seconds, profile, ramp.seconds(speed), ramp.jerkSeconds(speed));
    }

    @Override
    public double firstSeconds() {
        return 0;
    }

    @Override
    public double lastSeconds() {
        return seconds;
    }

    /// Gives how far the axis has got.
    ///
    /// @param at real seconds from the move's start; before it 0, after its end the whole distance
    /// @return metres or radians, signed
    @Override
    public double at(double at) {
        if (at <= 0) {
            return 0;
        }
        if (at >= seconds) {
            return distance;
        }
        double u = at / seconds;
        return distance
                * switch (profile) {
                    case EVEN -> u;
                    case SMOOTH -> u * u * u * (10 - 15 * u + 6 * u * u);
                    case TRAPEZOID, S_CURVE -> rampedShare(at);
                };
    }

    @Override
    public double speedAt(double at) {
        if (at < 0 || at > seconds) {
            return 0;
        }
        double u = at / seconds;
        return switch (profile) {
            case EVEN -> distance / seconds;
            case SMOOTH -> distance / seconds * 30 * u * u * (1 - u) * (1 - u);
            case TRAPEZOID, S_CURVE ->
                distance / (seconds - rampSeconds) * Rise.speed(jerked(), inRamp(Math.min(at, seconds - at)));
        };
    }

    @Override
    public double accelerationAt(double at) {
        if (at < 0 || at > seconds) {
            return 0;
        }
        double u = at / seconds;
        double there = Math.min(at, seconds - at);
        return switch (profile) {
            case EVEN -> 0;
            case SMOOTH -> distance / (seconds * seconds) * 60 * u * (1 - u) * (1 - 2 * u);
            case TRAPEZOID, S_CURVE ->
                there >= rampSeconds
                        ? 0
                        : Math.signum(seconds / 2 - at)
                                * distance
                                / (seconds - rampSeconds)
                                / rampSeconds
                                * Rise.acceleration(jerked(), inRamp(there));
        };
    }

    @Override
    public double peakSpeed() {
        return Math.abs(distance)
                * switch (profile) {
                    case EVEN -> 1 / seconds;
                    case SMOOTH -> SMOOTH_SPEED / seconds;
                    case TRAPEZOID, S_CURVE -> 1 / (seconds - rampSeconds);
                };
    }

    @Override
    public double peakAcceleration() {
        return switch (profile) {
            case EVEN -> 0;
            case SMOOTH -> Math.abs(distance) * SMOOTH_ACCELERATION / (seconds * seconds);
            case TRAPEZOID, S_CURVE -> peakSpeed() / (rampSeconds - jerkSeconds);
        };
    }

    @Override
    public double peakJerk() {
        return switch (profile) {
            case EVEN -> 0;
            case SMOOTH -> Math.abs(distance) * SMOOTH_JERK / (seconds * seconds * seconds);
            case TRAPEZOID -> Double.POSITIVE_INFINITY;
            case S_CURVE -> peakAcceleration() / jerkSeconds;
        };
    }

    @Override
    public List<Double> listTurns() {
        return List.of();
    }

    private double rampedShare(double at) {
        double peak = 1 / (seconds - rampSeconds);
        if (at < rampSeconds) {
            return peak * rampSeconds * Rise.way(jerked(), at / rampSeconds);
        }
        if (at > seconds - rampSeconds) {
            return 1 - peak * rampSeconds * Rise.way(jerked(), (seconds - at) / rampSeconds);
        }
        return peak * (at - rampSeconds / 2);
    }

    /// Share of a ramp in which the acceleration grows, and shrinks.
    private double jerked() {
        return jerkSeconds / rampSeconds;
    }

    private double inRamp(double at) {
        return Math.min(1, at / rampSeconds);
    }
}
