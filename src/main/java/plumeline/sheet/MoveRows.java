package plumeline.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import plumeline.geom.Vec;
import plumeline.plan.Kit;
import plumeline.plan.Mark;
import plumeline.plan.Move;
import plumeline.plan.Named;
import plumeline.plan.Playback;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Stage;

/// The moves of a shot: end to end, in real seconds, with profile and machine.
final class MoveRows {
    private static final int QUARTERS = 4;

    private final Print print;
    private final ShotAnswer answer;
    private final Stage stage;
    private final Map<String, Double> values;

    private MoveRows(Subject subject) {
        print = subject.print();
        answer = subject.answer();
        stage = subject.stage();
        values = answer.marks().stream()
                .filter(mark -> mark.setting() instanceof MarkAnswer.Setting.At)
                .collect(Collectors.toMap(
                        mark -> mark.mark().path(), mark -> ((MarkAnswer.Setting.At) mark.setting()).si()));
    }

    static List<Rows.Pair> of(Subject subject) {
        MoveRows rows = new MoveRows(subject);
        List<Rows.Pair> all = new ArrayList<>();
        rows.stage.shot().moves().forEach(move -> all.add(new Rows.Pair(move.name(), rows.words(move))));
        playback(subject.shot().playback()).ifPresent(text -> all.add(new Rows.Pair("Playback", text)));
        return all;
    }

    private static Optional<String> playback(Playback playback) {
        return switch (playback) {
            case Playback.Constant(double speed, var _) -> speed == 1 ? Optional.empty() : Optional.of(playback(speed));
            case Playback.Curve(List<Playback.Key> keys, Playback.Ease ease, var _) ->
                Optional.of(keys.stream()
                                .map(key ->
                                        Print.share(key.speed(), 0) + " at frame " + Print.number(key.frame() + 1, 0))
                                .collect(Collectors.joining(", "))
                        + ", " + ease.name().toLowerCase(Locale.ROOT) + " between.");
        };
    }

    static String playback(double speed) {
        return Print.share(speed, 0) + " of real speed throughout.";
    }

    private String words(Move move) {
        List<String> words = new ArrayList<>();
        words.add(carried(move) + way(move));
        move.findTime().ifPresent(duration -> words.add("in " + duration.valueText() + " of real time"));
        move.start()
                .ifPresentOrElse(
                        start -> words.add("starting "
                                + (start.kind() == Kind.FRAMES
                                        ? Print.number(start.value(), 0) + " screen frames"
                                        : start.valueText())
                                + " after the first frame"),
                        () -> words.add("from the first frame on"));
        move.profile()
                .ifPresent(profile ->
                        words.add(profile.name().toLowerCase(Locale.ROOT).replace('_', '-') + " profile"));
        move.machine().map(Kit.Machine::name).ifPresent(name -> words.add("by " + name));
        speed(move).ifPresent(words::add);
        return String.join(", ", words) + "." + limits(move);
    }

    /// What is dialled: the even speed, or the highest of a move that speeds up and slows down.
    private Optional<String> speed(Move move) {
        boolean isRound = move.axis().sort() == Move.Axis.Sort.ANGLE;
        return stage.findRun(stage.shot().moves().indexOf(move), answer.posed().values())
                .map(run -> (move.isEven() ? "at " : "at most ")
                        + (isRound ? turning(run.peakSpeed()) : new Told(print).speed(run.peakSpeed())));
    }

    private static String turning(double radiansPerSecond) {
        return Print.number(Math.toDegrees(radiansPerSecond), 1) + " deg/s ("
                + Print.number(radiansPerSecond * 30 / Math.PI, 1) + " rpm)";
    }

    private static String carried(Move move) {
        List<Named> carried = move.listCarried();
        return carried.isEmpty()
                ? "The camera "
                : carried.stream().map(Named::name).collect(Collectors.joining(", ")) + " ";
    }

    private String way(Move move) {
        if (!move.kept().isEmpty()) {
            return "turns to keep " + move.kept().stream().map(Named::name).collect(Collectors.joining(", "))
                    + " in the middle: " + panned();
        }
        if (move.travel().isEmpty()) {
            return "moves";
        }
        if (move.travel().get().marks().stream().anyMatch(mark -> !values.containsKey(mark.path()))) {
            return "moves; how far isn't found yet";
        }
        return switch (move.travel().get()) {
            case Move.Travel.Round(Mark mark) -> turns(move.axis(), values.getOrDefault(mark.path(), 0.0));
            case Move.Travel.Length(Mark mark) -> {
                double metres = values.getOrDefault(mark.path(), 0.0);
                String length = print.length(Math.abs(metres), Print.Hand.MOTOR);
                yield move.axis() == Move.Axis.ZOOM
                        ? "zooms to a focal length " + length + (metres < 0 ? " shorter" : " longer")
                        : "pulls focus " + length + (metres < 0 ? " nearer" : " farther");
            }
            case Move.Travel along -> travelled(along);
        };
    }

    private static String turns(Move.Axis axis, double radians) {
        return switch (axis) {
            case TILT -> "tilts " + MarkWords.turned(Print.fineDegrees(Math.abs(radians)), radians, "up", "down");
            case ROLL -> "rolls " + turned(radians) + " seen from behind it";
            default -> "turns " + turned(radians) + " seen from above";
        };
    }

    private String travelled(Move.Travel travel) {
        double[] by = travel.vectorMetres(mark -> values.get(mark.path()));
        Vec way = new Vec(by[0], by[1], by[2]);
        return "goes " + print.length(way.lengthMetres(), Print.Hand.MOTOR) + " end to end" + toward(way);
    }

    /// Where a way leads, as in ` to camera left and up`.
    static String toward(Vec way) {
        List<String> ways = new ArrayList<>();
        double least = way.lengthMetres() * 0.02;
        if (Math.abs(way.x()) > least) {
            ways.add(way.x() < 0 ? "camera left" : "camera right");
        }
        if (Math.abs(way.y()) > least) {
            ways.add(way.y() < 0 ? "the crew's side" : "the far side");
        }
        String level = ways.isEmpty() ? "" : " to " + String.join(" and ", ways);
        return Math.abs(way.z()) > least ? level + (way.z() < 0 ? " and down" : " and up") : level;
    }

    /// A pan follows the move, so it is told at quarters of the shot.
    private String panned() {
        List<String> turns = new ArrayList<>();
        for (int quarter = 1; quarter <= QUARTERS; quarter++) {
            double frame = Math.rint((stage.frames() - 1.0) * quarter / QUARTERS);
            turns.add(turnedAt(frame) + " at frame " + Print.number(frame + 1, 0));
        }
        return "turned since the first frame " + String.join(", ", turns);
    }

    private String turnedAt(double frame) {
        double[] at = answer.posed().values();
        double turn = stage.scene(at, frame).aim().turnRadians()
                - stage.scene(at, 0).aim().turnRadians();
        return turned(Math.IEEEremainder(turn, 2 * Math.PI));
    }

    private static String turned(double radians) {
        return MarkWords.turned(Print.fineDegrees(Math.abs(radians)), radians, "clockwise", "anticlockwise");
    }

    private String limits(Move move) {
        return move.machine()
                .map(machine -> {
                    List<String> limits = new ArrayList<>();
                    for (String key : List.of("travel", "speed", "acceleration", "repeats")) {
                        machine.written()
                                .findQuantity(key)
                                .map(new Told(print)::quantity)
                                .ifPresent(text -> limits.add(key + " " + text));
                    }
                    return limits.isEmpty() ? "" : " The " + machine.name() + "'s: " + String.join(", ", limits) + ".";
                })
                .orElse("");
    }
}
