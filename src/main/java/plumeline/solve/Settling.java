package plumeline.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import plumeline.plan.WantLine;
import plumeline.search.Axis;
import plumeline.search.Margins;
import plumeline.search.Search;

/// Finds the free marks, leaving out as few wants as can be where they can't all hold.
final class Settling {
    /// Where the marks stand, and the wants that had to be left out.
    record Settled(double[] si, Set<String> dropped) {}

    private final Judged judged;
    private final Axes axes;
    private final List<double[]> seeds;

    private Settling(Judged judged, Axes axes, List<double[]> seeds) {
        this.judged = judged;
        this.axes = axes;
        this.seeds = seeds;
    }

    static Settled of(Judged judged, Axes axes, double[] start) {
        List<WantLine> lines =
                judged.lines().stream().map(Judged.Line::line).toList();
        List<double[]> seeds = new ArrayList<>();
        if (axes.anyFree()) {
            seeds.add(start);
            seeds.addAll(Seeds.of(judged.stage(), lines));
        }
        Settling settling = new Settling(judged, axes, seeds);
        if (!axes.anyFree()) {
            return new Settled(start, settling.failing(start, Set.of()));
        }
        return settling.settle(start, Set.of());
    }

    private Settled settle(double[] start, Set<String> dropped) {
        double[] found = solve(start, dropped);
        Set<String> failing = failing(found, dropped);
        if (failing.isEmpty()) {
            return new Settled(found, dropped);
        }
        // A want that no free mark moves can't be helped by moving: leave it out first.
        Set<String> deaf = deaf(found, failing);
        if (!deaf.isEmpty()) {
            return settle(found, union(dropped, deaf));
        }
        return dropOne(found, dropped);
    }

    private Settled dropOne(double[] start, Set<String> dropped) {
        List<Judged.Line> candidates = judged.lines().stream()
                .filter(line -> line.isComputed() && !dropped.contains(line.id()))
                .sorted(Comparator.comparing((Judged.Line line) -> !line.ofFilm()))
                .toList();
        Settled best = new Settled(start, dropped);
        double height = Double.NEGATIVE_INFINITY;
        for (Judged.Line line : candidates) {
            Set<String> without = union(dropped, Set.of(line.id()));
            double[] found = solve(start, without);
            double reached = height(found, without);
            if (failing(found, without).isEmpty()) {
                reached += Search.LOOSE;
            }
            if (reached > height + 1e-6) {
                best = new Settled(found, without);
                height = reached;
            }
        }
        return failing(best.si(), best.dropped()).isEmpty() || candidates.isEmpty()
                ? best
                : settle(best.si(), best.dropped());
    }

    private double[] solve(double[] start, Set<String> dropped) {
        List<Axis> at = axes.at(start);
        List<double[]> starts = Stream.concat(seeds.stream(), Stream.of(start))
                .map(axes::fromSi)
                .toList();
        return axes.engraved(axes.toSi(Search.solve(at, margins(dropped), starts)));
    }

    private Margins margins(Set<String> dropped) {
        int[] parts = judged.partsOf(line -> line.isComputed() && !dropped.contains(line.id()));
        Margins all = values -> judged.parts(axes.toSi(values));
        return all.only(parts);
    }

    private double height(double[] si, Set<String> dropped) {
        return Search.height(axes.at(si), margins(dropped), axes.fromSi(si));
    }

    private Set<String> failing(double[] si, Set<String> dropped) {
        double[] parts = judged.parts(si);
        Set<String> failing = new HashSet<>();
        for (Judged.Line line : judged.lines()) {
            if (line.isComputed()
                    && !dropped.contains(line.id())
                    && line.parts().anyMatch(part -> parts[part] < 0)) {
                failing.add(line.id());
            }
        }
        return failing;
    }

    private Set<String> deaf(double[] si, Set<String> failing) {
        Set<String> deaf = new HashSet<>();
        for (Judged.Line line : judged.lines()) {
            if (failing.contains(line.id())) {
                int[] parts = line.parts().toArray();
                Margins own = values -> judged.parts(axes.toSi(values));
                if (!Search.feelsFree(axes.at(si), own.only(parts), axes.fromSi(si))) {
                    deaf.add(line.id());
                }
            }
        }
        return deaf;
    }

    private static Set<String> union(Set<String> one, Set<String> other) {
        Set<String> all = new HashSet<>(one);
        all.addAll(other);
        return all;
    }
}
