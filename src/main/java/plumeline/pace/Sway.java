package plumeline.pace;

import java.util.OptionalDouble;
import plumeline.motion.CubicRun;
import plumeline.motion.Profile;
import plumeline.motion.Run;
import plumeline.motion.Swing;
import plumeline.motion.Travel;

/// How far a machine may sway in the course of a move: after each of its ramps by what that leaves, or by what was
/// measured, less so the longer ago it was.
///
/// @param swing how it swings
/// @param size what a ramp leaves, metres or radians
/// @param rampSeconds when the first ramp is over; 0 where it is over before the move begins
/// @param lastSeconds when the last one is
public record Sway(Swing swing, double size, double rampSeconds, double lastSeconds) {
    /// Gives how a machine sways in the course of a move.
    ///
    /// @param run the move
    /// @param swing how its machine swings
    /// @param measured how far it swings after a ramp, metres or radians, where that was measured
    /// @return the sway; of size 0 where it isn't known
    public static Sway of(Run run, Swing swing, OptionalDouble measured) {
        return switch (run) {
            case Travel travel -> {
                boolean hasRamps = travel.profile() == Profile.TRAPEZOID || travel.profile() == Profile.S_CURVE;
                double ramp = hasRamps ? travel.rampSeconds() : travel.seconds() / 2;
                double left = measured.orElseGet(() -> travel.profile() == Profile.EVEN
                        ? 0
                        : swing.residue(travel.peakAcceleration(), ramp, hasRamps ? travel.jerkSeconds() : ramp / 2));
                yield new Sway(swing, left, hasRamps ? ramp : 0, travel.lastSeconds());
            }
            case CubicRun cubic -> new Sway(swing, measured.orElse(0), cubic.lastSeconds(), cubic.lastSeconds());
        };
    }

    /// Gives how far it may sway.
    ///
    /// @param seconds real seconds of the move
    /// @return metres or radians, from the middle to one side
    public double at(double seconds) {
        double since = seconds >= lastSeconds ? seconds - lastSeconds : seconds - rampSeconds;
        return since <= 0 ? size : size * Math.exp(-2 * Math.PI * swing.hertz() * swing.damping() * since);
    }
}
