package plumeline.keys;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.motion.DeviceStep;
import plumeline.motion.Run;
import plumeline.motion.Usage;
import plumeline.plan.Move;
import plumeline.solve.ShotAnswer;
import plumeline.stage.MachineLimits;
import plumeline.stage.Stage;

/// One move of a solved shot, or of one of its passes: where its axis is at each real time.
public final class MovedAxis {
    private final ShotAnswer.Run shot;
    /// What was computed may miss a limit by so much.
    private static final double LITTLE = 1e-6;

    private final int index;
    private final Way way;
    private final double startSeconds;

    /// How an axis gets along.
    private sealed interface Way {
        /// By a move of its own, `sign` times as the run has it.
        record Driven(Run run, int sign) implements Way {}

        /// A pan, as what it keeps in the picture asks.
        record Followed(FollowedTurn turn) implements Way {}
    }

    private MovedAxis(ShotAnswer.Run shot, int index, Way way, double startSeconds) {
        this.shot = shot;
        this.index = index;
        this.way = way;
        this.startSeconds = startSeconds;
    }

    /// A move that has no figure yet.
    ///
    /// @param pass the pass's name; empty for the shot itself
    /// @param move the move's name
    /// @param why what is missing, in words that end a sentence
    public record Left(String pass, String move, String why) {}

    /// The axes of a shot.
    ///
    /// @param moved those that move, pass by pass in the plan's order
    /// @param left moves without a figure
    public record Found(List<MovedAxis> moved, List<Left> left) {
        /// Copies the lists.
        public Found {
            moved = List.copyOf(moved);
            left = List.copyOf(left);
        }
    }

    /// Lists the moves of a solved shot.
    ///
    /// @param answer the findings on the shot
    /// @return its axes
    public static Found of(ShotAnswer answer) {
        OpenMarks open = OpenMarks.of(answer);
        double[] values = answer.posed().values();
        List<MovedAxis> moved = new ArrayList<>();
        List<Left> left = new ArrayList<>();
        for (ShotAnswer.Run shot : answer.posed().stages()) {
            for (int i = 0; i < shot.stage().shot().moves().size(); i++) {
                Move move = shot.stage().shot().moves().get(i);
                Optional<String> lack = open.findLack(shot.stage().shot(), move);
                Optional<MovedAxis> axis = lack.isPresent() ? Optional.empty() : find(shot, i, values);
                axis.ifPresentOrElse(
                        moved::add,
                        () -> left.add(
                                new Left(shot.pass(), move.name(), lack.orElse("how far it goes, or in which time"))));
            }
        }
        return new Found(moved, left);
    }

    private static Optional<MovedAxis> find(ShotAnswer.Run shot, int index, double[] values) {
        Stage stage = shot.stage();
        if (!stage.shot().moves().get(index).kept().isEmpty()) {
            return Optional.of(new MovedAxis(shot, index, new Way.Followed(FollowedTurn.of(stage, values)), 0));
        }
        return stage.findRun(index, values)
                .map(run -> new MovedAxis(
                        shot, index, new Way.Driven(run, sign(stage, index, values)), stage.startSeconds(index)));
    }

    private static int sign(Stage stage, int index, double[] values) {
        double figure = stage.figureOf(index, values);
        if (figure != 0) {
            return figure < 0 ? -1 : 1;
        }
        var by = stage.wayOf(index, values);
        List<Double> parts = List.of(by.x(), by.y(), by.z());
        List<Double> moved = parts.stream().filter(part -> part != 0).toList();
        return moved.size() == 1 && moved.getFirst() < 0 ? -1 : 1;
    }

    /// Gives the pass.
    ///
    /// @return its name; empty for the shot itself
    public String pass() {
        return shot.pass();
    }

    /// Gives the shot as staged.
    ///
    /// @return the pass's where it is of one
    public Stage stage() {
        return shot.stage();
    }

    /// Tells whether it asks more of its machine than that does.
    ///
    /// @return false where no machine is written, and for a pan that follows
    public boolean isTooMuch() {
        return way instanceof Way.Driven driven
                && Usage.of(driven.run(), MachineLimits.of(move().machine())).worst() > 1 + LITTLE;
    }

    /// Gives the move's index in the shot.
    ///
    /// @return from 0
    public int index() {
        return index;
    }

    /// Gives the move as written.
    ///
    /// @return the move
    public Move move() {
        return stage().shot().moves().get(index);
    }

    /// Tells whether it follows what it keeps in the picture.
    ///
    /// @return false for a move of its own
    public boolean isFollowing() {
        return way instanceof Way.Followed;
    }

    /// Tells what its places are in.
    ///
    /// @return true for radians, false for metres
    public boolean isRound() {
        return move().axis().sort() == Move.Axis.Sort.ANGLE;
    }

    /// Gives its run, unsigned, times from its own start; of a pan that follows a fine table of it, from GO.
    ///
    /// @return the run
    public Run run() {
        return switch (way) {
            case Way.Driven(Run run, int _) -> run;
            case Way.Followed(FollowedTurn turn) -> turn.run();
        };
    }

    private int sign() {
        return switch (way) {
            case Way.Driven(Run _, int sign) -> sign;
            case Way.Followed _ -> 1;
        };
    }

    /// Gives when it begins to move.
    ///
    /// @return real seconds after GO
    public double firstSeconds() {
        return startSeconds + run().firstSeconds();
    }

    /// Gives when it is over.
    ///
    /// @return real seconds after GO
    public double lastSeconds() {
        return startSeconds + run().lastSeconds();
    }

    /// Gives where it is.
    ///
    /// @param seconds real seconds after GO
    /// @return metres or radians from where it begins, signed
    public double at(double seconds) {
        return switch (way) {
            case Way.Driven(Run run, int sign) -> sign * run.at(seconds - startSeconds);
            case Way.Followed(FollowedTurn turn) -> turn.at(seconds);
        };
    }

    /// Gives how fast it is.
    ///
    /// @param seconds real seconds after GO
    /// @return metres or radians per second, signed
    public double speedAt(double seconds) {
        return switch (way) {
            case Way.Driven(Run run, int sign) -> sign * run.speedAt(seconds - startSeconds);
            case Way.Followed(FollowedTurn turn) -> turn.speedAt(seconds);
        };
    }

    /// Gives its machine's smallest step.
    ///
    /// @return metres or radians; infinite where it isn't written
    public double resolution() {
        return MachineLimits.of(move().machine()).resolution();
    }

    /// Counts how many steps of its machine its way is.
    ///
    /// @return steps, 0 where the machine's aren't known
    public double countSteps() {
        double far = 0;
        double before = run().at(run().firstSeconds());
        List<Double> ends = new ArrayList<>(run().listTurns());
        ends.add(run().lastSeconds());
        for (double end : ends) {
            far += Math.abs(run().at(end) - before);
            before = run().at(end);
        }
        return far / resolution();
    }

    /// An instant at which the axis passes a whole step of its machine.
    ///
    /// @param seconds real seconds after GO
    /// @param place metres or radians from where it begins, signed
    /// @param speed metres or radians per second, signed
    public record Step(double seconds, double place, double speed) {}

    /// Lists the whole steps that it passes.
    ///
    /// @return the steps in order; none where the machine's aren't known
    public List<Step> listSteps() {
        double resolution = resolution();
        if (Double.isInfinite(resolution)) {
            return List.of();
        }
        return DeviceStep.list(run(), resolution).stream()
                .map(step -> new Step(
                        startSeconds + step.seconds(),
                        sign() * step.step() * resolution,
                        speedAt(startSeconds + step.seconds())))
                .toList();
    }
}
