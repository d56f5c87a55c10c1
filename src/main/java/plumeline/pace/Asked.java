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
/// @param jump where the speed of a pan that keeps things jumps most
public record Asked(double speed, double acceleration, double way, Usage usage, Jump jump) {
    /// Instants of a move that follows what it keeps.
    private static final int INSTANTS = 240;

    /// A rate is measured over this share of the time between two of them.
    private static final double GLIMPSE = 0.01;

    /// A change this many times those beside it is a jump, if it isn't next to nothing of the speed.
    private static final double JUMPS = 4;

    private static final double LEAST_JUMP = 0.02;

    /// A shot that holds one frame throughout takes no time on the table.
    private static final double LEAST_SECONDS = 1e-3;

    /// Gives what a run asks.
    ///
    /// @param run the run
    /// @param limits the machine's
    /// @return what it asks
    public static Asked of(Run run, Limits limits) {
        return new Asked(
                run.peakSpeed(), run.peakAcceleration(), Usage.way(run, limits), Usage.of(run, limits), Jump.NONE);
    }

    /// Gives what a pan asks that keeps things in the picture, by its turn rate at 240 instants of the shot. Where even
    /// moves set out and stop, and where the rate jumps, no acceleration counts.
    ///
    /// @param at the shot at any instant
    /// @param limits the machine's
    /// @return what it asks
    public static Asked ofPan(Paced at, Limits limits) {
        double lasts = Math.max(at.stage().lastSeconds(), LEAST_SECONDS);
        double step = lasts / INSTANTS;
        double[] rates = new double[INSTANTS];
        double speed = 0;
        double low = 0;
        double high = 0;
        double turned = 0;
        for (int i = 0; i < INSTANTS; i++) {
            double here = turn(at, i * step);
            double glimpse = step * GLIMPSE;
            rates[i] = Math.IEEEremainder(turn(at, i * step + glimpse) - here, 2 * Math.PI) / glimpse;
            turned += Math.IEEEremainder(turn(at, (i + 1) * step) - here, 2 * Math.PI);
            low = Math.min(low, turned);
            high = Math.max(high, turned);
            speed = Math.max(speed, Math.abs(rates[i]));
        }
        List<Double> stops = stops(at);
        double acceleration = 0;
        Jump jump = Jump.NONE;
        for (int i = 1; i < INSTANTS; i++) {
            double by = Math.abs(rates[i] - rates[i - 1]);
            double from = (i - 1) * step;
            if (stops.stream().anyMatch(stop -> stop > from - step && stop < from + 2 * step)) {
                continue;
            }
            double beside = Math.max(change(rates, i - 2), change(rates, i + 2));
            if (by > JUMPS * beside && by > LEAST_JUMP * speed) {
                jump = by > jump.by() ? new Jump(by, from) : jump;
            } else {
                acceleration = Math.max(acceleration, by / step);
            }
        }
        Usage usage = new Usage(
                speed / limits.speed(), acceleration / limits.acceleration(), 0, (high - low) / limits.travel());
        return new Asked(speed, acceleration, high - low, usage, jump);
    }

    /// How much a rate changes from the one before; nothing past the ends.
    private static double change(double[] rates, int i) {
        return i < 1 || i >= rates.length ? 0 : Math.abs(rates[i] - rates[i - 1]);
    }

    /// A rate that changes at once.
    ///
    /// @param by by how much, radians per second; 0 where none does
    /// @param seconds when, real seconds after GO
    public record Jump(double by, double seconds) {
        static final Jump NONE = new Jump(0, 0);
    }

    private static double turn(Paced at, double seconds) {
        return at.laid().aimAt(seconds).turnRadians();
    }

    /// When an even move sets out and stops: its machine has run up before and runs out behind, and so does the pan.
    private static List<Double> stops(Paced at) {
        Stage stage = at.stage();
        List<Double> stops = new ArrayList<>();
        for (int i = 0; i < stage.shot().moves().size(); i++) {
            Move move = stage.shot().moves().get(i);
            if (move.isEven() && move.kept().isEmpty()) {
                stops.add(stage.startSeconds(i));
                stops.add(stage.endSeconds(move.name()));
            }
        }
        return stops;
    }
}
