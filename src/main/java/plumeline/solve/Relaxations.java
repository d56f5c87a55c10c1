package plumeline.solve;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import plumeline.search.Axis;
import plumeline.search.Margins;
import plumeline.search.Search;
import plumeline.want.Want;

/// The least that a want must ask less, the free marks moved for it, so that it holds with others.
final class Relaxations {
    private final Judged judged;
    private final Axes axes;
    private final List<double[]> starts;

    Relaxations(Judged judged, Axes axes, List<double[]> starts) {
        this.judged = judged;
        this.axes = axes;
        this.starts = starts;
    }

    /// What a failing want could ask for instead, in sentences.
    ///
    /// @param line the want
    /// @param si where the marks stand
    /// @param rest the parts that hold there and must go on holding
    List<String> of(Judged.Line line, double[] si, int[] rest) {
        return easier(line, axes.fromSi(si), axes.at(si), rest);
    }

    /// What a want that holds could ask for instead so that others hold too, in sentences.
    ///
    /// @param line the want
    /// @param si where the marks stand
    /// @param rest the parts that must hold then
    List<String> ofOther(Judged.Line line, double[] si, int[] rest) {
        var at = axes.at(si);
        Margins others = judged.margins(axes, rest);
        double[] start = Search.hold(at, others, starts);
        return Margins.least(others.at(start)) < 0 ? List.of() : easier(line, start, at, rest);
    }

    private List<String> easier(Judged.Line line, double[] start, List<Axis> at, int[] rest) {
        int[] held = IntStream.range(0, rest.length).toArray();
        Margins others = judged.margins(axes, rest);
        Margins margins = values -> concat(others.at(values), slack(judged, line, axes.toSi(values)));
        double[] raised = axes.anyFree() ? Search.raise(at, margins, held, start) : start;
        // On the steps of a hand the edge may be lost: then from where the search began.
        double[] there = axes.toSi(Margins.least(others.at(raised)) >= 0 ? raised : start);
        Judged fine = judged.withWorstFrames(there);
        double[] parts = fine.parts(there);
        double lack = -Margins.least(slack(fine, line, there));
        if (lack <= 0 || IntStream.of(rest).anyMatch(part -> parts[part] < 0)) {
            return List.of();
        }
        Judged.Instance worst = worst(fine, line, there);
        var moments = fine.moments(worst.run().stage(), there);
        return worst.want().listRelaxed(lack, moments).stream()
                .filter(relaxed -> holds(relaxed.want(), line, fine, there))
                .map(Want.Relaxed::sentence)
                .toList();
    }

    /// Whether a want that asks for less holds in each of the line's runs.
    private static boolean holds(Want want, Judged.Line line, Judged judged, double[] si) {
        return line.instances().stream()
                .allMatch(instance ->
                        want.margin(want.parts(judged.moments(instance.run().stage(), si))) >= 0);
    }

    private static Judged.Instance worst(Judged judged, Judged.Line line, double[] si) {
        Judged.Instance worst = line.instances().getFirst();
        double least = Double.POSITIVE_INFINITY;
        for (Judged.Instance instance : line.instances()) {
            double slack = Margins.least(slack(judged, instance, si));
            if (slack < least) {
                worst = instance;
                least = slack;
            }
        }
        return worst;
    }

    private static double[] slack(Judged judged, Judged.Line line, double[] si) {
        double[] all = new double[0];
        for (Judged.Instance instance : line.instances()) {
            all = concat(all, slack(judged, instance, si));
        }
        return all;
    }

    private static double[] slack(Judged judged, Judged.Instance instance, double[] si) {
        return instance.isComputed()
                ? instance.want().slack(judged.moments(instance.run().stage(), si))
                : new double[0];
    }

    private static double[] concat(double[] one, double[] other) {
        double[] both = Arrays.copyOf(one, one.length + other.length);
        System.arraycopy(other, 0, both, one.length, other.length);
        return both;
    }
}
