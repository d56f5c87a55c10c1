package plumeline.solve;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

    /// Says which mark makes it tight.
    String sentence(Judged.Instance instance, Words words) {
        Cause cause = causes.get(instance);
        if (cause == null) {
            return "";
        }
        return cause.mark().mark().path() + " off by "
                + words.difference(cause.mark().mark(), cause.errorSi()) + ", as a hand may leave it, breaks it.";
    }
}
