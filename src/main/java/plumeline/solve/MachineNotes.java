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
import plumeline.quantity.Quantity;
import plumeline.stage.Stage;

/// Moves that ask more of a machine than it does, with the time in which it can and the playback that shows the same on
/// the screen.
final class MachineNotes {
    /// A hundredth of what a machine does isn't worth a word.
    private static final double FORGIVEN = 1.01;

    /// Time is set in tenths of a second.
    private static final double TENTHS = 10;

    private final Stage stage;
    private final double[] si;
    private final PaperUnit unit;

    private MachineNotes(Stage stage, double[] si, PaperUnit unit) {
        this.stage = stage;
        this.si = si;
        this.unit = unit;
    }

    static List<String> of(Stage stage, double[] si, PaperUnit unit) {
        MachineNotes notes = new MachineNotes(stage, si, unit);
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
        boolean isRound = move.travel().filter(Move.Travel.Round.class::isInstance).isPresent();
        double seconds = Math.ceil(least * TENTHS - 1e-9) / TENTHS;
        String advice = " Run it in " + seconds(seconds) + ", play " + playback(seconds / travel.seconds()) + ".";
        return speed.filter(top -> travel.peakSpeed() > top.si() * FORGIVEN)
                .map(top -> move.name() + " needs " + speed(travel.peakSpeed(), isRound) + ", " + machine.name()
                        + " does " + speed(top.si(), isRound) + typical(top) + "." + advice)
                .or(() -> acceleration.map(limit -> move.name() + " is too short for " + machine.name() + ", which speeds up by "
                        + speed(limit.si(), isRound) + "2" + typical(limit) + "." + advice));
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

    private static String seconds(double seconds) {
        return String.format(Locale.ROOT, seconds == Math.rint(seconds) ? "%.0f s" : "%.1f s", seconds);
    }

    /// What keeps the screen as it is: played as much faster as the move is made slower.
    private String playback(double slower) {
        return stage.shot().playback() instanceof Playback.Constant(double now, var _)
                ? "at " + Math.round(now * slower * 100) + " %"
                : figure(slower * 100) + " % as fast";
    }

    private static String typical(Quantity quantity) {
        return quantity.origin() == Origin.TYPICAL ? " (typical: measure yours)" : "";
    }
}
