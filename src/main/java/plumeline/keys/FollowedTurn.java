package plumeline.keys;

import java.util.ArrayList;
import java.util.List;
import plumeline.motion.FreeKeys;
import plumeline.motion.Run;
import plumeline.motion.SlopeRule;
import plumeline.stage.Stage;

/// How far a pan has turned that keeps things in the picture's middle: from the solved aim, whole turns told apart by a
/// fine table.
///
/// Its place at an instant is the aim's, exact to rounding. Between the table's instants, where steps of a machine are
/// looked for, a monotone cubic runs: within 1e-6 rad for a pan whose speed takes a quarter of a second or more to
/// change.
final class FollowedTurn {
    private static final double STEP_SECONDS = 0.004;
    private static final int LEAST_STEPS = 400;
    private static final int MOST_STEPS = 16_000;

    /// Short enough for a corner of the speed, long enough for the last bits of a turn, s.
    private static final double GLIMPSE_SECONDS = 1e-6;

    private final Stage.Laid laid;
    private final double first;
    private final Run run;

    private FollowedTurn(Stage.Laid laid, double first, Run run) {
        this.laid = laid;
        this.first = first;
        this.run = run;
    }

    /// Tables a pan from GO until the shot and every move in it are over; of a shot that is held, for an instant.
    static FollowedTurn of(Stage stage, double[] values) {
        double last = Math.max(stage.lastSeconds(), STEP_SECONDS);
        for (int i = 0; i < stage.shot().moves().size(); i++) {
            var other = stage.findRun(i, values);
            last = other.isPresent()
                    ? Math.max(last, stage.startSeconds(i) + other.get().lastSeconds())
                    : last;
        }
        Stage.Laid laid = stage.laid(values);
        int steps = (int) Math.clamp(Math.ceil(last / STEP_SECONDS), LEAST_STEPS, MOST_STEPS);
        double first = turn(laid, 0);
        double before = 0;
        List<FreeKeys.Key> keys = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double at = last * i / steps;
            before += Math.IEEEremainder(turn(laid, at) - first - before, 2 * Math.PI);
            keys.add(new FreeKeys.Key(at, before));
        }
        Run run = new FreeKeys(keys, SlopeRule.FRITSCH_BUTLAND, FreeKeys.Ends.RUNNING).toRun();
        return new FollowedTurn(laid, first, run);
    }

    private static double turn(Stage.Laid laid, double seconds) {
        return laid.sceneAt(seconds).aim().turnRadians();
    }

    Run run() {
        return run;
    }

    /// The turn since GO, radians, + clockwise seen from above.
    double at(double seconds) {
        double near = run.at(seconds);
        return near + Math.IEEEremainder(turn(laid, seconds) - first - near, 2 * Math.PI);
    }

    /// How fast it turns, rad/s: the faster of its speeds just before and just after, so that a move that begins or
    /// ends at speed counts as running.
    double speedAt(double seconds) {
        double before = speed(seconds, -GLIMPSE_SECONDS);
        double after = speed(seconds, GLIMPSE_SECONDS);
        return Math.abs(after) >= Math.abs(before) ? after : before;
    }

    /// By a parabola through three instants on one side.
    private double speed(double seconds, double glimpse) {
        return (4 * at(seconds + glimpse) - 3 * at(seconds) - at(seconds + 2 * glimpse)) / (2 * glimpse);
    }
}
