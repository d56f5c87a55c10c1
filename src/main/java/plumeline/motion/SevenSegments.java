package plumeline.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.ranges.Ranges;
import plumeline.roots.Roots;

/// The shortest run over a distance with limited speed, acceleration and jerk, which may begin and end running: the
/// acceleration grows, stays, shrinks; even speed; and the same to slow down. Any of the seven may be missing.
///
/// **Source:** Biagiotti and Melchiorri, Trajectory Planning for Automatic Machines and Robots (2008) 3.4, from memory;
/// where the top speed isn't reached the peak is found so that the way fits, which takes no longer than the book's
/// steps of a lower acceleration.
///
/// @param startSpeed metres or radians per second, ≥ 0
/// @param endSpeed metres or radians per second, ≥ 0
/// @param peakSpeed metres or radians per second, no less than either
/// @param up speeding up
/// @param evenSeconds at the peak speed, real seconds, ≥ 0
/// @param down slowing down
public record SevenSegments(
        double startSpeed, double endSpeed, double peakSpeed, Part up, double evenSeconds, Part down) {
    /// Speeding up or slowing down.
    ///
    /// @param seconds how long, ≥ 0
    /// @param jerkSeconds how long in it the acceleration grows, and shrinks, ≥ 0
    public record Part(double seconds, double jerkSeconds) {
        private static Part of(double change, Limits limits) {
            Ramp ramp = new Ramp.Jerked(limits.acceleration(), limits.jerk());
            return change > 0 ? new Part(ramp.seconds(change), ramp.jerkSeconds(change)) : new Part(0, 0);
        }
    }

    /// Finds the shortest run.
    ///
    /// @param distance how far, > 0
    /// @param startSpeed in [0, top speed]
    /// @param endSpeed in [0, top speed]
    /// @param limits the device's; jerk must be known
    /// @return the run; empty where the distance is too short to come from the one speed to the other
    public static Optional<SevenSegments> find(double distance, double startSpeed, double endSpeed, Limits limits) {
        Ranges.checkPositive(distance, "distance");
        Ranges.checkPositive(limits.jerk(), "jerk");
        Ranges.checkAtMost(Ranges.checkNotNegative(startSpeed, "start speed"), limits.speed(), "start speed");
        Ranges.checkAtMost(Ranges.checkNotNegative(endSpeed, "end speed"), limits.speed(), "end speed");
        double least = Math.max(startSpeed, endSpeed);
        if (distance < ramps(least, startSpeed, endSpeed, limits)) {
            return Optional.empty();
        }
        double most = Math.min(
                limits.speed(), least + Ramp.of(Profile.S_CURVE, limits).topSpeed(distance));
        double peak = distance >= ramps(most, startSpeed, endSpeed, limits)
                ? most
                : Roots.end(speed -> ramps(speed, startSpeed, endSpeed, limits) <= distance, least, most);
        double rest = distance - ramps(peak, startSpeed, endSpeed, limits);
        return Optional.of(new SevenSegments(
                startSpeed,
                endSpeed,
                peak,
                Part.of(peak - startSpeed, limits),
                Math.max(0, rest) / peak,
                Part.of(peak - endSpeed, limits)));
    }

    /// The way of speeding up to a peak and slowing down from it.
    private static double ramps(double peak, double startSpeed, double endSpeed, Limits limits) {
        return (peak + startSpeed) / 2 * Part.of(peak - startSpeed, limits).seconds()
                + (peak + endSpeed) / 2 * Part.of(peak - endSpeed, limits).seconds();
    }

    /// Gives how long it takes.
    ///
    /// @return real seconds
    public double seconds() {
        return up.seconds() + evenSeconds + down.seconds();
    }

    /// Gives the run, from 0 s on.
    ///
    /// @return place, speed and acceleration at every time
    public CubicRun toRun() {
        double rise = jerk(peakSpeed - startSpeed, up);
        double fall = jerk(peakSpeed - endSpeed, down);
        double[] seconds = {
            up.jerkSeconds(),
            up.seconds() - 2 * up.jerkSeconds(),
            up.jerkSeconds(),
            evenSeconds,
            down.jerkSeconds(),
            down.seconds() - 2 * down.jerkSeconds(),
            down.jerkSeconds()
        };
        double[] jerks = {rise, 0, -rise, 0, -fall, 0, fall};
        List<CubicRun.Piece> pieces = new ArrayList<>();
        double place = 0;
        double speed = startSpeed;
        double acceleration = 0;
        for (int i = 0; i < jerks.length; i++) {
            if (seconds[i] > 0) {
                CubicRun.Piece piece = new CubicRun.Piece(seconds[i], place, speed, acceleration, jerks[i]);
                pieces.add(piece);
                place = piece.placeAt(seconds[i]);
                speed = piece.speedAt(seconds[i]);
                acceleration = piece.accelerationAt(seconds[i]);
            }
        }
        return new CubicRun(0, pieces);
    }

    private static double jerk(double change, Part part) {
        return part.seconds() > 0 ? change / (part.seconds() - part.jerkSeconds()) / part.jerkSeconds() : 0;
    }
}
