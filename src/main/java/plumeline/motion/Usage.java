package plumeline.motion;

import java.util.ArrayList;
import java.util.List;

/// What a move uses of a device, as shares of its limits; over 1 it can't be made. A share of a limit that isn't known,
/// or that doesn't bear on the profile, is 0.
///
/// A trapezoid or an S-curve uses the limits that it is given, so its share of acceleration is the least with which
/// its distance can be covered in its time at all (a triangle's 4d/T²) over the limit; its share of jerk likewise
/// (32d/T³). A trapezoid's corners jerk without limit, which no device does to the letter: none is counted.
///
/// @param speed of the highest speed
/// @param acceleration of the highest acceleration
/// @param jerk of the highest jerk
/// @param travel of the way from end stop to end stop, an even move's run-up and run-out counted
public record Usage(double speed, double acceleration, double jerk, double travel) {
    /// Gives what a run uses.
    ///
    /// @param run the run
    /// @param limits the device's
    /// @return the shares
    public static Usage of(Run run, Limits limits) {
        return switch (run) {
            case Travel travel -> ofTravel(travel, limits);
            case CubicRun cubic ->
                new Usage(
                        cubic.peakSpeed() / limits.speed(),
                        cubic.peakAcceleration() / limits.acceleration(),
                        cubic.peakJerk() / limits.jerk(),
                        way(cubic, limits) / limits.travel());
        };
    }

    private static Usage ofTravel(Travel travel, Limits limits) {
        double far = Math.abs(travel.distance());
        double seconds = travel.seconds();
        boolean isJerked = travel.profile() == Profile.S_CURVE && Double.isFinite(limits.jerk());
        double acceleration = switch (travel.profile()) {
            case EVEN -> 0;
            case SMOOTH -> travel.peakAcceleration();
            case TRAPEZOID, S_CURVE -> Ramp.of(travel.profile(), limits).leastAcceleration(far, seconds);
        };
        double jerk =
                isJerked ? Ramp.leastJerk(far, seconds) : travel.profile() == Profile.SMOOTH ? travel.peakJerk() : 0;
        return new Usage(
                travel.peakSpeed() / limits.speed(),
                acceleration / limits.acceleration(),
                jerk / limits.jerk(),
                way(travel, limits) / limits.travel());
    }

    /// Gives the way that a run takes on its device, from one end to the other: an even one's run-up and run-out
    /// counted, as far as they are known.
    ///
    /// @param run the run
    /// @param limits the device's
    /// @return metres or radians, ≥ 0
    public static double way(Run run, Limits limits) {
        double low = run.at(run.firstSeconds());
        double high = low;
        List<Double> ends = new ArrayList<>(run.listTurns());
        ends.add(run.lastSeconds());
        for (double at : ends) {
            low = Math.min(low, run.at(at));
            high = Math.max(high, run.at(at));
        }
        boolean isEven = run instanceof Travel travel && travel.profile() == Profile.EVEN;
        double ups = isEven
                ? RunUp.find(run.peakSpeed(), withoutJerk(limits))
                        .map(up -> 2 * up.distance())
                        .orElse(0.0)
                : 0;
        return high - low + ups;
    }

    /// Run-up and run-out count as v²/2a; by the jerk alone where no acceleration is known.
    private static Limits withoutJerk(Limits limits) {
        return Double.isFinite(limits.acceleration())
                ? limits.withMotion(limits.speed(), limits.acceleration(), Double.POSITIVE_INFINITY)
                : limits;
    }

    /// Gives the largest of the shares.
    ///
    /// @return over 1 where the device can't make the move
    public double worst() {
        return Math.max(Math.max(speed, acceleration), Math.max(jerk, travel));
    }
}
