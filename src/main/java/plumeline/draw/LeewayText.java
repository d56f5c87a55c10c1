package plumeline.draw;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import plumeline.plan.Mark;
import plumeline.plan.Shot;
import plumeline.quantity.PaperUnit;
import plumeline.search.Leeway;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.solve.Words;
import plumeline.stage.Stage;
import plumeline.want.Course;

/// Leeway in figures that a hand can use: rounded down, so that no paper promises more than there is.
///
/// @param unit the papers' unit
public record LeewayText(PaperUnit unit) {
    /// So far a body is looked for where no want ends a side, metres.
    private static final double FAR_METRES = 20;

    /// Last words of the marks that say where something is.
    private static final Set<String> PLACING = Set.of("x", "y", "z", "turn", "tilt");

    /// Leeway is true to this share of itself.
    private static final double SAME = 0.01;

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

    /// Says to where a side goes on, where that is nearer than where a want ends it: a machine has a travel, under the
    /// table's top nothing stands, and a thing, a lamp or the camera meets what stands in its way at the first
    /// frame. Leeway minds wants only and may be longer.
    ///
    /// @param answer the mark's answer
    /// @param way to which side
    /// @param shot the mark's shot, its marks set
    /// @return such as `to the end of the travel`; nothing where the side's own figure counts, or none does
    public Optional<String> findStop(MarkAnswer answer, Way way, ShotAnswer shot) {
        return findNearest(answer, way, shot).map(stop -> stop.words(this, answer.mark()));
    }

    /// Says what a side runs into, where that is nearer than anything else that ends it.
    ///
    /// @param answer the mark's answer
    /// @param way to which side
    /// @param shot the mark's shot, its marks set
    /// @return such as `267 mm until it meets the tank's wall`, `it rests on the table`; nothing where nothing is
    /// met
    public Optional<String> findMet(MarkAnswer answer, Way way, ShotAnswer shot) {
        return findNearest(answer, way, shot)
                .filter(stop -> !(stop instanceof Stop.Edge))
                .map(stop -> stop.words(this, answer.mark()));
    }

    /// How far a mark can go, SI, and to where that is.
    private sealed interface Stop {
        double si();

        default String words(LeewayText text, Mark mark) {
            return switch (this) {
                case Edge(double _, String words) -> words;
                case Rest(String upon) -> "it rests on " + upon;
                case Meets(Course.Met met) -> text.withUnit(mark, met.metres()) + " until it meets " + met.name();
            };
        }

        /// Where a travel or the table ends.
        record Edge(double si, String words) implements Stop {}

        /// A thing lies on something.
        record Rest(String upon) implements Stop {
            @Override
            public double si() {
                return 0;
            }
        }

        /// Something stands in the way.
        record Meets(Course.Met met) implements Stop {
            @Override
            public double si() {
                return met.metres();
            }
        }
    }

    private static Optional<Stop> findNearest(MarkAnswer answer, Way way, ShotAnswer shot) {
        if (!(answer.setting() instanceof MarkAnswer.Setting.At(double si, var _))) {
            return Optional.empty();
        }
        Mark mark = answer.mark();
        Stage stage = shot.posed().stages().getFirst().stage();
        double end = way.of(answer.leeway()).distance();
        Optional<Stop> edge = findEdge(mark, si, way, stage.shot())
                .filter(stop -> Double.isFinite(end) && end > stop.si())
                .map(Stop.class::cast);
        Set<String> unplaced = unplaced(shot);
        if (unplaced.contains(owner(mark))) {
            // What stands nowhere yet rests on nothing and meets nothing.
            return edge;
        }
        Course course = new Course(stage, shot.posed().valuesSi(), mark.path(), unplaced);
        Optional<String> rest = way == Way.MINUS ? course.findRest() : Optional.empty();
        if (rest.isPresent()) {
            return rest.map(Stop.Rest::new);
        }
        double nearest = edge.map(Stop::si).orElse(end);
        if (!(nearest > answer.placingErrorSi())) {
            return edge;
        }
        // What a want that minds bodies ends is met there too, a trifle sooner or later.
        double trifle = edge.isPresent() ? 0 : SAME * end + answer.placingErrorSi() / 40;
        return course.findMet(way == Way.PLUS ? 1 : -1, Math.min(nearest, FAR_METRES))
                .filter(met -> !Double.isFinite(end) || met.metres() < nearest - trifle)
                .map(met -> (Stop) new Stop.Meets(met))
                .or(() -> edge);
    }

    /// What has no place yet, or isn't turned yet.
    private static Set<String> unplaced(ShotAnswer shot) {
        return shot.marks().stream()
                .filter(answer -> answer.setting() instanceof MarkAnswer.Setting.Open)
                .map(MarkAnswer::mark)
                .filter(mark ->
                        PLACING.contains(mark.path().substring(mark.path().lastIndexOf('.') + 1)))
                .map(LeewayText::owner)
                .collect(Collectors.toSet());
    }

    /// What a mark places.
    private static String owner(Mark mark) {
        return mark.path().substring(0, Math.max(0, mark.path().lastIndexOf('.')));
    }

    private static Optional<Stop.Edge> findEdge(Mark mark, double si, Way way, Shot shot) {
        if (mark.path().endsWith(".z")) {
            boolean stands = mark.kind() == Mark.Kind.HEIGHT || mark.kind() == Mark.Kind.HUNG;
            return stands && way == Way.MINUS && si >= 0
                    ? Optional.of(new Stop.Edge(
                            si, mark.kind() == Mark.Kind.HEIGHT ? "to the table top" : "all the way down"))
                    : Optional.empty();
        }
        if (mark.path().endsWith(".level")) {
            return Optional.of(way == Way.MINUS ? new Stop.Edge(si, "to off") : new Stop.Edge(1 - si, "to full level"));
        }
        return shot.moves().stream()
                .filter(move -> move.marks().stream().anyMatch(own -> own.path().equals(mark.path())))
                .flatMap(move -> move.machine().stream())
                .flatMap(machine -> machine.written().findQuantity("travel").stream())
                .map(travel -> new Stop.Edge(travel.si() + (way == Way.MINUS ? si : -si), "to the end of the travel"))
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
