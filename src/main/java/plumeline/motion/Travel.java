package plumeline.motion;

/// One axis's move: a distance in a time by a profile.
///
/// @param distance how far, signed, metres or radians
/// @param seconds how long, real seconds, > 0
/// @param profile how the speed runs
/// @param rampSeconds how long speeding up takes (slowing down takes as long), real seconds, in (0, seconds/2]; of no
///        meaning for [Profile#EVEN] and [Profile#SMOOTH]
public record Travel(double distance, double seconds, Profile profile, double rampSeconds) {
    /// Jerk in an S-curve's ramp acts through its first and last third, so that the peak acceleration is 1.5 of the
    /// mean.
    private static final double RAMP_PEAK = 1.5;

    /// Peak over mean speed of a minimum-jerk move.
    private static final double SMOOTH_PEAK = 1.875;

    /// Checks the ranges.
    public Travel {
        if (!(seconds > 0) || !(rampSeconds > 0) || rampSeconds > seconds / 2 * (1 + 1e-12)) {
            throw new IllegalArgumentException("a move takes time");
        }
    }

    /// Gives a move whose ramps take a third of the time each, as is usual where no limit is given.
    ///
    /// @param distance how far, signed, metres or radians
    /// @param seconds how long, real seconds, > 0
    /// @param profile how the speed runs
    /// @return the move
    public static Travel inThirds(double distance, double seconds, Profile profile) {
        return new Travel(distance, seconds, profile, seconds / 3);
    }

    /// Gives a move that uses an acceleration in its ramps: the ramps are as short as it allows, so the peak speed is
    /// the least that covers the distance in the time.
    ///
    /// With peak v, ramp r and time T: `distance = v(T − r)`; a trapezoid has `v = a·r`, an S-curve (jerk through
    /// the first and last third of each ramp) `1.5 v = a·r`. Where even ramps of T/2 would need more than the
    /// acceleration, they are T/2; that the device can't do it is for others to say.
    ///
    /// @param distance how far, signed, metres or radians
    /// @param seconds how long, real seconds, > 0
    /// @param profile how the speed runs
    /// @param acceleration the most allowed, metres or radians per second squared, > 0
    /// @return the move
    public static Travel within(double distance, double seconds, Profile profile, double acceleration) {
        double peakFactor = profile == Profile.S_CURVE ? RAMP_PEAK : 1;
        double product = Math.abs(distance) * peakFactor / acceleration;
        double root = seconds * seconds - 4 * product;
        double ramp = root <= 0 ? seconds / 2 : (seconds - Math.sqrt(root)) / 2;
        return new Travel(distance, seconds, profile, Math.clamp(ramp, seconds * 1e-9, seconds / 2));
    }

    /// Gives how far the axis has got.
    ///
    /// @param at real seconds from the move's start; before it 0, after its end the whole distance
    /// @return metres or radians, signed
    public double at(double at) {
        if (at <= 0) {
            return 0;
        }
        if (at >= seconds) {
            return distance;
        }
        return distance
                * switch (profile) {
                    case EVEN -> at / seconds;
                    case SMOOTH -> smooth(at / seconds);
                    case TRAPEZOID, S_CURVE -> ramped(at);
                };
    }

    /// Gives the highest speed of the move.
    ///
    /// @return metres or radians per second, ≥ 0
    public double peakSpeed() {
        return Math.abs(distance)
                * switch (profile) {
                    case EVEN -> 1 / seconds;
                    case SMOOTH -> SMOOTH_PEAK / seconds;
                    case TRAPEZOID, S_CURVE -> 1 / (seconds - rampSeconds);
                };
    }

    /// Gives the shortest time in which a device makes a move by a profile, its run-up not counted for [Profile#EVEN].
    ///
    /// Even: `T = d/v`. Smooth: peak speed 15/8 · d/T and peak acceleration 10/√3 · d/T². Trapezoid and S-curve
    /// with an acceleration `a`, the S-curve's peak being 1.5 of its mean: ramps of `r = v·k/a`, then `T = d/v +
    /// r`; where the top speed isn't reached, `T = 2√(d·k/a)`, k 1 or 1.5. Without an acceleration their ramps take
    /// a third each: `T = 1.5 d/v`.
    ///
    /// **Source:** own derivation from the profiles above; minimum jerk from its polynomial.
    ///
    /// @param distance how far, metres or radians, ≥ 0
    /// @param profile how the speed runs
    /// @param speed the device's top speed, metres or radians per second, > 0; infinite where none is known
    /// @param acceleration the device's, metres or radians per second squared, > 0; infinite where none is known
    /// @return real seconds, ≥ 0
    public static double leastSeconds(double distance, Profile profile, double speed, double acceleration) {
        return switch (profile) {
            case EVEN -> distance / speed;
            case SMOOTH ->
                Math.max(SMOOTH_PEAK * distance / speed, Math.sqrt(10 / Math.sqrt(3) * distance / acceleration));
            case TRAPEZOID, S_CURVE -> {
                double peaked = profile == Profile.S_CURVE ? RAMP_PEAK : 1;
                double ramp = speed * peaked / acceleration;
                if (Double.isInfinite(acceleration)) {
                    yield 1.5 * distance / speed;
                }
                yield Double.isFinite(speed) && distance / speed >= ramp
                        ? distance / speed + ramp
                        : 2 * Math.sqrt(distance * peaked / acceleration);
            }
        };
    }

    private static double smooth(double u) {
        return u * u * u * (10 - 15 * u + 6 * u * u);
    }

    private double ramped(double at) {
        double peak = 1 / (seconds - rampSeconds);
        if (at < rampSeconds) {
            return peak * rampSeconds * rampShare(at / rampSeconds);
        }
        if (at > seconds - rampSeconds) {
            return 1 - peak * rampSeconds * rampShare((seconds - at) / rampSeconds);
        }
        return peak * (at - rampSeconds / 2);
    }

    /// The way covered in a ramp, as a share of peak speed times ramp time, at a share of the ramp's time.
    private double rampShare(double u) {
        return profile == Profile.TRAPEZOID ? u * u / 2 : jerkedShare(u);
    }

    /// Acceleration rises through the first third, stays, falls through the last; mean acceleration 1, so its peak is
    /// 1.5.
    private static double jerkedShare(double u) {
        double third = 1.0 / 3;
        if (u <= third) {
            return RAMP_PEAK * u * u * u / (6 * third);
        }
        if (u <= 2 * third) {
            double w = u - third;
            return RAMP_PEAK * (third * third / 6 + third / 2 * w + w * w / 2);
        }
        // The speed ramp is point-symmetric about its middle: s(u) = u − 1/2 + s(1 − u).
        return u - 0.5 + jerkedShare(1 - u);
    }
}
