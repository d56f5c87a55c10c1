package plumeline.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumeline.motion.Travel;
import plumeline.plan.Kit;
import plumeline.plan.Move;
import plumeline.plan.Playback;
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
                stage.findTravel(i, si)
                        .flatMap(travel -> notes.find(move, machine, travel))
                        .ifPresent(all::add);
            }
        }
        return all;
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
        String advice = advice(travel.seconds(), least);
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

    private static String typical(Quantity quantity) {
        return quantity.origin() == Origin.TYPICAL ? " (typical: measure yours)" : "";
    }
}
