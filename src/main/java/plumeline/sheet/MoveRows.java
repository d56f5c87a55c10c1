package plumeline.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import plumeline.geom.Vec;
import plumeline.plan.Kit;
import plumeline.plan.Mark;
import plumeline.plan.Move;
import plumeline.plan.Named;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Stage;

/// The moves of a shot: end to end, in real seconds, with profile and machine.
final class MoveRows {
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
        return rows.stage.shot().moves().stream()
                .map(move -> new Rows.Pair(move.name(), rows.words(move)))
                .toList();
    }

    private String words(Move move) {
        List<String> words = new ArrayList<>();
        words.add(carried(move) + way(move));
        move.duration().ifPresent(duration -> words.add("in " + duration.valueText() + " of real time"));
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
        return String.join(", ", words) + "." + limits(move);
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
            case Move.Travel.Round(Mark mark) -> {
                double radians = values.getOrDefault(mark.path(), 0.0);
                yield "turns " + Print.fineDegrees(Math.abs(radians)) + (radians < 0 ? " anticlockwise" : " clockwise")
                        + " seen from above";
            }
            case Move.Travel along -> travelled(along);
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

    private String panned() {
        double[] at = answer.posed().values();
        double turn = stage.scene(at, (double) (stage.frames() - 1)).aim().turnRadians()
                - stage.scene(at, 0).aim().turnRadians();
        double turned = Math.IEEEremainder(turn, 2 * Math.PI);
        return Print.fineDegrees(Math.abs(turned)) + (turned < 0 ? " anticlockwise" : " clockwise")
                + " from the first frame to the last";
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
