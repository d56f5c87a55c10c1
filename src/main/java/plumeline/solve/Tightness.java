package plumeline.solve;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plumeline.plan.Mark;
import plumeline.search.Leeway;
import plumeline.stage.StagedMark;

/// Which wants would fail once some single mark is off by its placing error, and by which mark.
final class Tightness {
    private record Cause(StagedMark mark, double errorSi, double margin) {}

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
                for (Judged.Line line : judged.lines()) {
                    for (Judged.Instance instance : line.instances()) {
                        tightness.note(instance, least(instance, parts), least(instance, there), marks.get(i), error);
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

    private void note(Judged.Instance instance, double set, double off, StagedMark mark, double errorSi) {
        if (set >= 0 && off < 0) {
            Cause known = causes.get(instance);
            if (known == null || off < known.margin()) {
                causes.put(instance, new Cause(mark, errorSi, off));
            }
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
