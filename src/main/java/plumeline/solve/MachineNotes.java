package plumeline.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumeline.motion.Travel;
import plumeline.plan.Kit;
import plumeline.plan.Move;
import plumeline.plan.Playback;
import plumeline.quantity.Kind;
import plumeline.quantity.Origin;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.Stage;

/// Moves that ask more of a machine than it does, with the time in which it can and the playback that shows the same on
/// the screen.
final class MachineNotes {
    /// A hundredth of what a machine does isn't worth a word.
    private static final double FORGIVEN = 1.01;

    /// Playback is typed in by tens of per cent.
    private static final double PLAYBACK_STEP = 0.1;

    private static final double MOST_FRAMES = 1e6;

    private final Stage stage;
    private final PaperUnit unit;

    private MachineNotes(Stage stage, PaperUnit unit) {
        this.stage = stage;
        this.unit = unit;
    }

    static List<String> of(Stage stage, double[] si, PaperUnit unit) {
        MachineNotes notes = new MachineNotes(stage, unit);
        List<String> all = new ArrayList<>();
        for (int i = 0; i < stage.shot().moves().size(); i++) {
            Move move = stage.shot().moves().get(i);
            if (move.machine().isPresent()) {
                Kit.Machine machine = move.machine().get();
                stage.findTravel(i, si).ifPresent(travel -> {
                    notes.findTooFar(move, machine, travel).ifPresent(all::add);
                    notes.find(move, machine, travel).ifPresent(all::add);
                });
            }
        }
        return all;
    }

    /// A rail or a rack that ends before the move does.
    private Optional<String> findTooFar(Move move, Kit.Machine machine, Travel travel) {
        boolean isRound =
                move.travel().filter(Move.Travel.Round.class::isInstance).isPresent();
        return machine.written()
                .findQuantity("travel")
                .filter(most -> isRound == (most.kind() == Kind.ANGLE))
                .filter(most -> Math.abs(travel.distance()) > most.si() * FORGIVEN)
                .map(most -> move.name() + " goes " + far(Math.abs(travel.distance()), isRound) + ", " + machine.name()
                        + " has " + far(most.si(), isRound) + typical(most)
                        + ". Shorten the move, or take a longer machine.");
    }

    private String far(double distance, boolean isRound) {
        return isRound ? Print.degrees(distance) : new Print(unit).length(distance);
    }

    private Optional<String> find(Move move, Kit.Machine machine, Travel travel) {
        Optional<Quantity> speed = machine.written().findQuantity("speed");
        Optional<Quantity> acceleration = machine.written().findQuantity("acceleration");
        double most = speed.map(Quantity::si).orElse(Double.POSITIVE_INFINITY);
        double force = acceleration.map(Quantity::si).orElse(Double.POSITIVE_INFINITY);
        double least = Travel.leastSeconds(travel.distance(), travel.profile(), most, force);
        if (travel.seconds() * FORGIVEN >= least) {
            return Optional.empty();
        }
        boolean isRound =
                move.travel().filter(Move.Travel.Round.class::isInstance).isPresent();
        double start = stage.endSeconds(move.name()) - travel.seconds();
        String advice = start + travel.seconds() > shotSeconds(stage) + 1e-6
                ? toEnd(stage, start, least)
                : advice(travel.seconds(), least);
        return speed.filter(top -> travel.peakSpeed() > top.si() * FORGIVEN)
                .map(top -> move.name() + " needs " + speed(travel.peakSpeed(), isRound) + ", " + machine.name()
                        + " does " + speed(top.si(), isRound) + typical(top) + "." + advice)
                .or(() -> acceleration.map(limit -> move.name() + " is too short for " + machine.name()
                        + ", which speeds up by " + speed(limit.si(), isRound) + "2" + typical(limit) + "." + advice));
    }

    private String speed(double perSecond, boolean isRound) {
        if (isRound) {
            return figure(Math.toDegrees(perSecond)) + " deg/s";
        }
        return unit == PaperUnit.MILLIMETRES
                ? figure(perSecond * 1000) + " mm/s"
                : figure(perSecond / 0.0254) + " in/s";
    }

    /// Two figures at least, whole ones from ten on.
    private static String figure(double value) {
        return String.format(Locale.ROOT, value < 10 ? "%.1f" : "%.0f", value);
    }

    /// The least time with a playback that an editor types in, and that keeps the screen as it is: played as much
    /// faster as the move is made slower.
    private String advice(double seconds, double least) {
        if (stage.shot().playback() instanceof Playback.Constant(double now, var _)) {
            double playback = Math.ceil(now * least / seconds / PLAYBACK_STEP - 1e-9) * PLAYBACK_STEP;
            return " Run it in " + Print.seconds(seconds * playback / now, 2) + ", play at " + Print.share(playback, 0)
                    + ".";
        }
        double slower = Math.ceil(least / seconds / PLAYBACK_STEP - 1e-9) * PLAYBACK_STEP;
        return " Run it in " + Print.seconds(seconds * slower, 2) + ", play all of it at " + Print.share(slower, 0)
                + " of its speeds.";
    }

    private static double shotSeconds(Stage stage) {
        return stage.lastSeconds();
    }

    /// What makes a move end within the shot that its machine can make as it is; empty for another, which is told how
    /// to run.
    static String toEnd(Stage stage, Move move, double[] si) {
        int index = stage.shot().moves().indexOf(move);
        double end = stage.endSeconds(move.name());
        Optional<Travel> travel = stage.findTravel(index, si);
        boolean isTooFast = travel.isPresent()
                && move.machine().isPresent()
                && new MachineNotes(stage, PaperUnit.MILLIMETRES)
                        .find(move, move.machine().get(), travel.get())
                        .isPresent();
        return isTooFast
                ? ""
                : " " + capital(playback(stage, end)) + longer(stage, end) + ".";
    }

    /// A time in which a machine can make a move that isn't over when the shot is, so that it ends with the shot.
    private static String toEnd(Stage stage, double start, double least) {
        double run = Math.ceil(least * 10 - 1e-9) / 10;
        return " Run it in " + Print.seconds(run, 2) + " and " + playback(stage, start + run)
                + longer(stage, start + run) + ".";
    }

    /// The playback, by tens of per cent, with which a shot of its frames lasts until a real time.
    private static String playback(Stage stage, double endSeconds) {
        double now = stage.shot().playback() instanceof Playback.Constant(double speed, var _) ? speed : 1;
        double share = Math.abs(now) * endSeconds / shotSeconds(stage);
        double playback = Math.copySign(Math.ceil(share / PLAYBACK_STEP - 1e-9) * PLAYBACK_STEP, now);
        return stage.shot().playback() instanceof Playback.Constant
                ? "play at " + Print.share(playback, 0)
                : "play all of it at " + Print.share(playback, 0) + " of its speeds";
    }

    /// The frames in which a shot lasts until a real time at the playback that it has; nothing where it never does.
    private static String longer(Stage stage, double endSeconds) {
        if (stage.retime().latestSeconds(MOST_FRAMES) < endSeconds || stage.retime().speedAt(0) < 0) {
            return "";
        }
        long frames = (long) Math.ceil(stage.retime().frameAt(endSeconds, MOST_FRAMES) - 1e-6);
        return ", or give the shot " + frames + " frames";
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static String typical(Quantity quantity) {
        return quantity.origin() == Origin.TYPICAL ? " (typical: measure yours)" : "";
    }
}
