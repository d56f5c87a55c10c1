package plumeline.draw;

import java.util.Optional;
import plumeline.plan.Mark;
import plumeline.plan.Shot;
import plumeline.quantity.PaperUnit;
import plumeline.search.Leeway;
import plumeline.solve.MarkAnswer;
import plumeline.solve.Words;

/// Leeway in figures that a hand can use: rounded down, so that no paper promises more than there is.
///
/// @param unit the papers' unit
public record LeewayText(PaperUnit unit) {
    /// One way along a mark.
    public enum Way {
        /// Towards smaller values.
        MINUS,
        /// Towards larger values.
        PLUS;

        /// Gives a leeway's side.
        ///
        /// @param leeway both sides
        /// @return this way's
        public Leeway.Side of(Leeway leeway) {
            return this == MINUS ? leeway.minus() : leeway.plus();
        }
    }

    /// Says one side of a leeway.
    ///
    /// @param mark the mark
    /// @param side the side
    /// @return such as `7 mm`, `0.4 mm`, `12 deg`; `endless` where nothing ends it
    public String side(Mark mark, Leeway.Side side) {
        return switch (side) {
            case Leeway.Side.Endless() -> "endless";
            case Leeway.Side.Ends(double distance) -> withUnit(mark, distance);
        };
    }

    /// Says a distance along a mark, rounded down.
    ///
    /// @param mark the mark
    /// @param si the distance, SI, 0 or more
    /// @return the figure with its unit
    public String withUnit(Mark mark, double si) {
        return new Words(unit).leeway(mark, si);
    }

    /// Says how far off a hand may leave a mark, to the nearest step.
    ///
    /// @param answer the mark's answer
    /// @return the figure with its unit
    public String placingError(MarkAnswer answer) {
        return new Words(unit).difference(answer.mark(), answer.placingErrorSi());
    }

    /// Says a distance along a mark without its unit, rounded down.
    ///
    /// @param mark the mark
    /// @param si the distance, SI, 0 or more
    /// @return the figure
    public String figure(Mark mark, double si) {
        return new Words(unit).leewayFigure(mark, si);
    }

    /// Rounds a distance along a mark down to what [#figure] prints.
    ///
    /// @param mark the mark
    /// @param si the distance, SI, 0 or more
    /// @return the rounded distance, SI
    public double roundedDownSi(Mark mark, double si) {
        return new Words(unit).leewaySi(mark, si);
    }

    /// Says to where a side goes on, where that is as far as the mark itself can go: a machine has a travel, and under
    /// the table's top nothing stands. Leeway minds wants only and may be longer.
    ///
    /// @param answer the mark's answer
    /// @param way to which side
    /// @param shot the mark's shot
    /// @return such as `to the end of the travel`; nothing where the side's own figure counts, or none does
    public Optional<String> findStop(MarkAnswer answer, Way way, Shot shot) {
        return switch (answer.setting()) {
            case MarkAnswer.Setting.Open() -> Optional.<String>empty();
            case MarkAnswer.Setting.At at ->
                findStop(answer.mark(), at.si(), way, shot)
                        .filter(stop -> way.of(answer.leeway()) instanceof Leeway.Side.Ends(double distance)
                                && distance > stop.si())
                        .map(Stop::words);
        };
    }

    /// How far a mark can go, SI, and to where that is.
    private record Stop(double si, String words) {}

    private static Optional<Stop> findStop(Mark mark, double si, Way way, Shot shot) {
        if (mark.path().endsWith(".z")) {
            boolean stands = mark.kind() == Mark.Kind.HEIGHT || mark.kind() == Mark.Kind.HUNG;
            return stands && way == Way.MINUS && si >= 0
                    ? Optional.of(
                            new Stop(si, mark.kind() == Mark.Kind.HEIGHT ? "to the table top" : "all the way down"))
                    : Optional.empty();
        }
        return shot.moves().stream()
                .filter(move -> move.marks().stream().anyMatch(own -> own.path().equals(mark.path())))
                .flatMap(move -> move.machine().stream())
                .flatMap(machine -> machine.written().findQuantity("travel").stream())
                .map(travel -> new Stop(travel.si() + (way == Way.MINUS ? si : -si), "to the end of the travel"))
                .filter(stop -> stop.si() >= 0)
                .findFirst();
    }

    /// Says both sides without unit, for a drawing: `±7`, `−3 +2`, `−3 + loose`, `loose`.
    ///
    /// @param answer the mark's answer
    /// @return the figures
    public String both(MarkAnswer answer) {
        String minus = shortSide(answer.mark(), aboveTable(answer));
        String plus = shortSide(answer.mark(), answer.leeway().plus());
        if (minus.equals(plus)) {
            return minus.equals("loose") ? "loose" : "±" + minus;
        }
        return "−" + spaced(minus) + " +" + spaced(plus);
    }

    /// The lower side, no longer than down to the table top.
    private static Leeway.Side aboveTable(MarkAnswer answer) {
        Leeway.Side side = answer.leeway().minus();
        boolean isHeight = answer.mark().path().endsWith(".z") && answer.mark().kind() == Mark.Kind.HEIGHT;
        return isHeight
                        && side instanceof Leeway.Side.Ends(double distance)
                        && answer.setting() instanceof MarkAnswer.Setting.At at
                        && at.si() >= 0
                ? new Leeway.Side.Ends(Math.min(distance, at.si()))
                : side;
    }

    private static String spaced(String side) {
        return side.equals("loose") ? " loose" : side;
    }

    private String shortSide(Mark mark, Leeway.Side side) {
        return switch (side) {
            case Leeway.Side.Endless() -> "loose";
            case Leeway.Side.Ends(double distance) -> figure(mark, distance);
        };
    }
}
