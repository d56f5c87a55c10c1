package plumeline.motion;

import java.util.Optional;
import plumeline.ranges.Ranges;

/// What comes before an even move's first frame, and again after its last: from rest to its speed.
///
/// @param seconds how long, real seconds, ≥ 0
/// @param distance how far, metres or radians, ≥ 0
public record RunUp(double seconds, double distance) {
    /// Finds the shortest: `v/a` and `v²/2a`; with a jerk j that is known too `v/a + a/j`, or `2√(v/j)` where a isn't
    /// reached, and half of v times that.
    ///
    /// @param speed the even speed, metres or radians per second, ≥ 0
    /// @param limits the device's
    /// @return the run-up; empty where neither acceleration nor jerk is known
    public static Optional<RunUp> find(double speed, Limits limits) {
        Ranges.checkNotNegative(speed, "speed");
        Profile profile = Double.isFinite(limits.jerk()) ? Profile.S_CURVE : Profile.TRAPEZOID;
        if (!Ramp.isLimited(profile, limits)) {
            return Optional.empty();
        }
        double seconds = Ramp.of(profile, limits).seconds(speed);
        return Optional.of(new RunUp(seconds, speed * seconds / 2));
    }
}
