package plumeline.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumeline.motion.Limits;
import plumeline.motion.Run;
import plumeline.motion.Travel;
import plumeline.motion.Usage;
import plumeline.pace.Figures;
import plumeline.plan.Kit;
import plumeline.plan.Move;
import plumeline.plan.Playback;
import plumeline.quantity.Origin;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.MachineLimits;
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
            findBareTurn(move).ifPresent(all::add);
            if (move.machine().isPresent() && !isWanted(stage, move) && shotSeconds(stage) > 0) {
                Kit.Machine machine = move.machine().get();
                stage.findRun(i, si).ifPresent(run -> {
                    notes.findTooFar(move, machine, run).ifPresent(all::add);
                    notes.find(move, machine, run).ifPresent(all::add);
                });
            }
        }
        return all;
    }

    /// A turn that nothing is written of turns the camera, which a turntable's shouldn't.
    private static Optional<String> findBareTurn(Move move) {
        boolean isBare =
                move.travel().filter(Move.Travel.Round.class::isInstance).isPresent()
                        && move.listCarried().isEmpty()
                        && !move.written().has("axis");
        return isBare
                ? Optional.of(move.name() + " turns the camera, as nothing is written that it carries. Write carries:"
                        + " THING for a turntable, axis: pan for a pan.")
                : Optional.empty();
    }

    /// A want says it with what helps.
    private static boolean isWanted(Stage stage, Move move) {
        return stage.shot().wants().stream()
                .anyMatch(want -> want.word().equals("reachable")
                        && want.subjects().getFirst().name().equals(move.name()));
    }

    private Figures figures(Move move) {
        return new Figures(move.axis(), unit);
    }

    private static Limits limits(Kit.Machine machine) {
        return MachineLimits.of(Optional.of(machine));
    }

    /// A rail or a rack that ends before the move does, its run-up and run-out counted where it goes evenly.
    private Optional<String> findTooFar(Move move, Kit.Machine machine, Run run) {
        double way = Usage.way(run, limits(machine));
        double own = Math.abs(run.at(run.lastSeconds()));
        boolean hasUps = way > own * (1 + 1e-9) && move.isEven();
        String ups = hasUps ? " with run-up and run-out" : "";
        return machine.written()
                .findQuantity("travel")
                .filter(most -> way > most.si() * FORGIVEN)
                .map(most -> move.name() + " goes " + far(move, way, ups) + ups + ", " + machine.name() + " has "
                        + far(move, most.si(), "") + typical(most)
                        + (hasUps && own <= most.si() * FORGIVEN
                                ? ". Run it with profile: trapezoid, which speeds up on its way, shorten it, or take a"
                                        + " longer machine."
                                : ". Shorten the move, or take a longer machine."));
    }

    /// Whole ones, as plans write them; a run-up to what a motor sets.
    private String far(Move move, double way, String ups) {
        boolean isWay = move.axis().sort() != Move.Axis.Sort.ANGLE;
        return isWay && ups.isEmpty()
                ? new Print(unit).length(way)
                : figures(move).way(way);
    }

    private Optional<String> find(Move move, Kit.Machine machine, Run run) {
        Usage usage = Usage.of(run, limits(machine));
        double times = run instanceof Travel travel
                ? Travel.leastSeconds(Math.abs(travel.distance()), travel.profile(), limits(machine)) / travel.seconds()
                : Math.max(usage.speed(), Math.sqrt(usage.acceleration()));
        if (FORGIVEN >= times) {
            return Optional.empty();
        }
        double seconds = run.lastSeconds();
        double least = seconds * times;
        double start = stage.endSeconds(move.name()) - seconds;
        String advice =
                start + seconds > shotSeconds(stage) + 1e-6 ? toEnd(stage, start, least) : advice(seconds, least);
        Optional<Quantity> speed = machine.written().findQuantity("speed");
        Optional<Quantity> acceleration = machine.written().findQuantity("acceleration");
        return speed.filter(top -> run.peakSpeed() > top.si() * FORGIVEN)
                .map(top -> move.name() + " needs " + figures(move).speed(run.peakSpeed()) + ", " + machine.name()
                        + " does " + figures(move).speed(top.si()) + typical(top) + "." + advice)
                .or(() -> acceleration.map(limit -> move.name() + " is too short for " + machine.name()
                        + ", which speeds up by " + figures(move).acceleration(limit.si()) + typical(limit) + "."
                        + advice));
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
        Optional<Run> run = stage.findRun(index, si);
        boolean isTooFast = run.isPresent()
                && move.machine().isPresent()
                && new MachineNotes(stage, PaperUnit.MILLIMETRES)
                        .find(move, move.machine().get(), run.get())
                        .isPresent();
        return isTooFast ? "" : " " + capital(playback(stage, end)) + longer(stage, end) + ".";
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
        if (stage.retime().latestSeconds(MOST_FRAMES) < endSeconds
                || stage.retime().speedAt(0) < 0) {
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
