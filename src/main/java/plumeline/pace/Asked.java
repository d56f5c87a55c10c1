package plumeline.pace;

import java.util.ArrayList;
import java.util.List;
import plumeline.motion.Limits;
import plumeline.motion.Run;
import plumeline.motion.Usage;
import plumeline.plan.Move;
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
    private static final int INSTANTS = 240;

    /// A shot that holds one frame throughout takes no time on the table.
    private static final double LEAST_SECONDS = 1e-3;

    /// Gives what a run asks.
    ///
    /// @param run the run
    /// @param limits the machine's
    /// @return what it asks
    public static Asked of(Run run, Limits limits) {
        return new Asked(run.peakSpeed(), run.peakAcceleration(), Usage.way(run, limits), Usage.of(run, limits));
    }

    /// Gives what a pan asks that keeps things in the picture: by differences of its turn, which a ramp's corner rounds
    /// by a 240th of the shot.
    ///
    /// @param at the shot at any instant
    /// @param limits the machine's
    /// @return what it asks
    public static Asked ofPan(Paced at, Limits limits) {
        Stage stage = at.stage();
        double step = Math.max(stage.lastSeconds(), LEAST_SECONDS) / INSTANTS;
        double speed = 0;
        double acceleration = 0;
        double low = 0;
        double high = 0;
        double turned = 0;
        double before = turn(at, 0);
        double rate = 0;
        List<Double> jumps = jumps(at);
        for (int i = 1; i <= INSTANTS; i++) {
            double here = turn(at, i * step);
            double by = Math.IEEEremainder(here - before, 2 * Math.PI);
            turned += by;
            low = Math.min(low, turned);
            high = Math.max(high, turned);
            speed = Math.max(speed, Math.abs(by) / step);
            double from = (i - 2) * step;
            double to = i * step;
            boolean isSmooth = i > 1 && jumps.stream().noneMatch(jump -> jump > from - step && jump < to + step);
            acceleration = isSmooth ? Math.max(acceleration, Math.abs(by / step - rate) / step) : acceleration;
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
        return at.laid().aimAt(seconds).turnRadians();
    }

    /// When an even move sets out and stops: its machine has run up before and runs out behind, and so does the pan.
    private static List<Double> jumps(Paced at) {
        Stage stage = at.stage();
        List<Double> jumps = new ArrayList<>();
        for (int i = 0; i < stage.shot().moves().size(); i++) {
            Move move = stage.shot().moves().get(i);
            if (move.isEven() && move.kept().isEmpty()) {
                jumps.add(stage.startSeconds(i));
                jumps.add(stage.endSeconds(move.name()));
            }
        }
        return jumps;
    }
}
