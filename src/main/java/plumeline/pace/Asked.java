package plumeline.pace;

import plumeline.motion.Limits;
import plumeline.motion.Run;
import plumeline.motion.Usage;
import plumeline.stage.Stage;

/// What a move asks of its machine: its highest speed and acceleration and its way, in metres or radians, and their
/// shares of what the machine does.
///
/// @param speed highest speed, per second
/// @param acceleration highest acceleration, per second squared
/// @param way from one end to the other, with an even move's run-up and run-out
/// @param usage the shares
public record Asked(double speed, double acceleration, double way, Usage usage) {
    /// Instants of a move that follows what it keeps.
    private static final int INSTANTS = 400;

    /// A held shot takes no time, s.
    private static final double GLIMPSE_SECONDS = 1e-3;

    /// Gives what a run asks.
    ///
    /// @param run the run
    /// @param limits the machine's
    /// @return what it asks
    public static Asked of(Run run, Limits limits) {
        return new Asked(run.peakSpeed(), run.peakAcceleration(), Usage.way(run, limits), Usage.of(run, limits));
    }

    /// Gives what a pan asks that keeps things in the picture: by differences of its turn, which a ramp's corner rounds
    /// by a four-hundredth of the shot.
    ///
    /// @param at the shot at any instant
    /// @param limits the machine's
    /// @return what it asks
    public static Asked ofPan(Paced at, Limits limits) {
        Stage stage = at.stage();
        double step = Math.max(stage.lastSeconds(), GLIMPSE_SECONDS) / INSTANTS;
        double speed = 0;
        double acceleration = 0;
        double low = 0;
        double high = 0;
        double turned = 0;
        double before = turn(at, 0);
        double rate = 0;
        for (int i = 1; i <= INSTANTS; i++) {
            double here = turn(at, i * step);
            double by = Math.IEEEremainder(here - before, 2 * Math.PI);
            turned += by;
            low = Math.min(low, turned);
            high = Math.max(high, turned);
            speed = Math.max(speed, Math.abs(by) / step);
            acceleration = i > 1 ? Math.max(acceleration, Math.abs(by / step - rate) / step) : acceleration;
            rate = by / step;
            before = here;
        }
        return new Asked(
                speed,
                acceleration,
                high - low,
                new Usage(
                        speed / limits.speed(),
                        acceleration / limits.acceleration(),
                        0,
                        (high - low) / limits.travel()));
    }

    private static double turn(Paced at, double seconds) {
        return at.laid().sceneAt(seconds).aim().turnRadians();
    }
}
