package plumeline.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import plumeline.plan.WantLine;
import plumeline.search.Margins;
import plumeline.search.Search;

/// Finds the free marks, leaving out as few wants as can be where they can't all hold.
final class Settling {
    /// Where the marks stand, and the wants that had to be left out.
    record Settled(List<Double> values, Set<String> dropped) {
        Settled(double[] si, Set<String> dropped) {
            this(Arrays.stream(si).boxed().toList(), dropped);
        }

        double[] si() {
            return values.stream().mapToDouble(Double::doubleValue).toArray();
        }
    }

    private final Judged judged;
    private final Axes axes;
    private final List<double[]> seeds;

    private Settling(Judged judged, Axes axes, List<double[]> seeds) {
        this.judged = judged;
        this.axes = axes;
        this.seeds = seeds;
    }

    static Settled of(Judged judged, Axes axes, double[] start) {
        List<WantLine> lines = judged.lines().stream().map(Judged.Line::line).toList();
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
        double[] held = hold(start, dropped);
        Set<String> failing = failing(held, dropped);
        if (failing.isEmpty()) {
            double[] found = solve(held, dropped);
            Set<String> out = union(dropped, failing(found, dropped));
            return new Settled(out.isEmpty() ? found : near(found, out), out);
        }
        // A want that no free mark moves can't be helped by moving: leave it out first.
        Set<String> deaf = deaf(held, failing);
        return deaf.isEmpty() ? dropOne(held, dropped) : settle(held, union(dropped, deaf));
    }

    /// Leaves out the want without which the others do best; the film's own are left out before the shot's, and what is
    /// written last yields first.
    private Settled dropOne(double[] start, Set<String> dropped) {
        List<Judged.Line> candidates = judged.lines().reversed().stream()
                .filter(line -> line.isComputed() && !dropped.contains(line.id()))
                .sorted(Comparator.comparing((Judged.Line line) -> !line.ofFilm()))
                .toList();
        Set<String> best = dropped;
        double height = Double.NEGATIVE_INFINITY;
        for (Judged.Line line : candidates) {
            Set<String> without = union(dropped, Set.of(line.id()));
            double reached = height(hold(start, without), without);
            if (reached > height) {
                best = without;
                height = reached;
            }
            if (height >= 0) {
                break;
            }
        }
        return best.equals(dropped) ? new Settled(start, dropped) : settle(start, best);
    }

    /// Brings the wants that are left out, first written first, as near as the others allow; these keep room for one
    /// placing error of everything at once where they have it.
    private double[] near(double[] start, Set<String> out) {
        double[] si = start;
        List<Integer> parts = new ArrayList<>();
        List<Double> kept = new ArrayList<>();
        List<Double> lost = new ArrayList<>();
        double room = Math.clamp(height(si, out), 0, 1);
        judged.lines().stream()
                .filter(line -> line.isComputed() && !out.contains(line.id()))
                .flatMap(line -> line.parts().boxed())
                .forEach(part -> {
                    parts.add(part);
                    kept.add(room);
                    lost.add(0.0);
                });
        for (Judged.Line line : judged.lines()) {
            if (line.isComputed() && out.contains(line.id())) {
                int from = parts.size();
                line.parts().forEach(part -> {
                    parts.add(part);
                    kept.add(Double.NaN);
                    lost.add(0.0);
                });
                Margins margins = shifted(List.copyOf(parts), List.copyOf(lost));
                double[] keptNow = kept.stream().mapToDouble(Double::doubleValue).toArray();
                si = axes.engraved(axes.toSi(Search.raise(axes.at(si), margins, keptNow, axes.fromSi(si))));
                double[] there = judged.parts(si);
                double least = line.parts().mapToDouble(part -> there[part]).min().orElse(0);
                for (int i = from; i < parts.size(); i++) {
                    kept.set(i, 0.0);
                    lost.set(i, least);
                }
            }
        }
        return si;
    }

    /// Some parts, each counted from a level of its own.
    private Margins shifted(List<Integer> parts, List<Double> levels) {
        return values -> {
            double[] all = judged.parts(axes.toSi(values));
            double[] some = new double[parts.size()];
            for (int i = 0; i < some.length; i++) {
                some[i] = all[parts.get(i)] - levels.get(i);
            }
            return some;
        };
    }

    private double[] hold(double[] start, Set<String> dropped) {
        return axes.toSi(Search.hold(axes.at(start), margins(dropped), starts(start)));
    }

    private List<double[]> starts(double[] start) {
        return Stream.concat(seeds.stream(), Stream.of(start)).map(axes::fromSi).toList();
    }

    private double[] solve(double[] start, Set<String> dropped) {
        return axes.engraved(axes.toSi(Search.solve(axes.at(start), margins(dropped), starts(start))));
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
