package plumeline.solve;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plumeline.plan.Mark;
import plumeline.search.Leeway;
import plumeline.stage.Stage;
import plumeline.stage.StagedMark;
import plumeline.want.Course;

/// Which wants would fail once some single mark is off by its placing error, and by which mark.
final class Tightness {
    /// @param rest what a thing rests on that would have to go lower; empty for any other cause
    private record Cause(StagedMark mark, double errorSi, double margin, String rest) {
        /// A jig helps nobody against a floor: any other cause comes before one that can't happen.
        boolean isBefore(Cause other) {
            return rest.isEmpty() == other.rest.isEmpty() ? margin < other.margin : rest.isEmpty();
        }
    }

    private final Map<Judged.Instance, Cause> causes = new HashMap<>();

    private Tightness() {}

    static Tightness of(Judged judged, Axes axes, double[] si, double[] parts) {
        Tightness tightness = new Tightness();
        List<StagedMark> marks = axes.marks();
        for (int i = 0; i < marks.size(); i++) {
            double error = marks.get(i).placingErrorSi(si[i]);
            for (int way = -1; way <= 1 && error > 0; way += 2) {
                double[] off = si.clone();
                off[i] += way * error;
                double[] there = judged.parts(off);
                String rest = way < 0 ? rest(judged.stage(), si, marks.get(i).mark()) : "";
                for (Judged.Line line : judged.lines()) {
                    for (Judged.Instance instance : line.instances()) {
                        Cause cause = new Cause(marks.get(i), error, least(instance, there), rest);
                        tightness.note(instance, least(instance, parts), cause);
                    }
                }
            }
        }
        return tightness;
    }

    private static double least(Judged.Instance instance, double[] parts) {
        return Arrays.stream(parts, instance.from(), instance.from() + instance.count())
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static String rest(Stage stage, double[] si, Mark mark) {
        return mark.path().endsWith(".z")
                ? new Course(stage, Arrays.stream(si).boxed().toList(), mark.path(), Set.of())
                        .findRest()
                        .orElse("")
                : "";
    }

    private void note(Judged.Instance instance, double set, Cause cause) {
        if (set >= 0 && cause.margin() < 0) {
            causes.merge(instance, cause, (known, other) -> other.isBefore(known) ? other : known);
        }
    }

    boolean isTight(Judged.Instance instance) {
        return causes.containsKey(instance);
    }

    /// Says which mark makes it tight: how far off it may be, and how far off a hand may leave it.
    ///
    /// @param marks the shot's marks with their leeway
    String sentence(Judged.Instance instance, List<MarkAnswer> marks, Words words) {
        Cause cause = causes.get(instance);
        if (cause == null) {
            return "";
        }
        Mark mark = cause.mark().mark();
        if (!cause.rest().isEmpty()) {
            return mark.path() + ": it rests on " + cause.rest() + ", so it can't go lower.";
        }
        return marks.stream()
                .filter(answer -> answer.mark().path().equals(mark.path()))
                .findFirst()
                .map(answer -> mark.path() + ": " + room(answer, cause.errorSi(), words) + "; "
                        + words.tooCoarse(mark, cause.errorSi()))
                .orElse("");
    }

    /// The sides that are shorter than a hand is fine.
    private static String room(MarkAnswer answer, double errorSi, Words words) {
        Mark mark = answer.mark();
        String minus = size(mark, answer.leeway().minus(), words);
        String plus = size(mark, answer.leeway().plus(), words);
        boolean isMinusShort = answer.leeway().minus().distance() < errorSi;
        boolean isPlusShort = answer.leeway().plus().distance() < errorSi;
        if (isMinusShort && isPlusShort) {
            return minus.equals(plus)
                    ? "±" + minus + words.bothWays(mark)
                    : minus + " " + words.way(mark, -1) + ", " + plus + " " + words.way(mark, 1);
        }
        if (isMinusShort || isPlusShort) {
            return isPlusShort ? plus + " " + words.way(mark, 1) : minus + " " + words.way(mark, -1);
        }
        return "less than " + words.difference(mark, errorSi);
    }

    private static String size(Mark mark, Leeway.Side side, Words words) {
        return words.leewaySi(mark, side.distance()) > 0 ? words.leeway(mark, side.distance()) : "no room";
    }
}
