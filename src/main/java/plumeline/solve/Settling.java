package plumeline.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import plumeline.plan.WantLine;
import plumeline.search.Margins;
import plumeline.search.Search;
import plumeline.stage.StagedMark;

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

    private static final int HALVINGS = 14;

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
            if (!failing(found, dropped).isEmpty()) {
                // What holds between the steps of a hand doesn't on them: as good as a conflict.
                return dropOne(found, dropped);
            }
            return new Settled(dropped.isEmpty() ? found : near(found, dropped), dropped);
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

    /// Brings the shot's wants that are left out, first written first, as near as the others allow; then gives these
    /// back as much as they need to bear any single mark's placing error, where they did. What the film wants
    /// of every shot doesn't pull at a shot that can't give it.
    private double[] near(double[] best, Set<String> out) {
        List<Integer> parts = new ArrayList<>(
                IntStream.of(judged.partsOf(line -> isKept(line, out))).boxed().toList());
        List<Double> levels = new ArrayList<>(Collections.nCopies(parts.size(), 0.0));
        double[] si = best;
        for (Judged.Line line : judged.lines()) {
            if (line.isComputed() && out.contains(line.id()) && !line.ofFilm()) {
                int[] held = IntStream.range(0, parts.size()).toArray();
                line.parts().forEach(parts::add);
                levels.addAll(Collections.nCopies(parts.size() - levels.size(), 0.0));
                Margins margins = shifted(List.copyOf(parts), List.copyOf(levels));
                si = axes.engraved(axes.toSi(Search.raise(axes.at(si), margins, held, axes.fromSi(si))));
                double[] there = judged.parts(si);
                double least =
                        line.parts().mapToDouble(part -> there[part]).min().orElse(0);
                Collections.fill(levels.subList(held.length, levels.size()), least);
            }
        }
        return withRoom(si, best, out);
    }

    /// The place nearest to one on the way to another where the kept wants bear any single mark's placing error, as far
    /// as they do at the other.
    private double[] withRoom(double[] near, double[] best, Set<String> out) {
        Set<Integer> sturdy = sturdy(best, out);
        if (sturdy(near, out).containsAll(sturdy)) {
            return near;
        }
        double low = 0;
        double high = 1;
        double[] found = best;
        for (int i = 0; i < HALVINGS; i++) {
            double share = low + (high - low) / 2;
            double[] between = between(near, best, share);
            if (sturdy(between, out).containsAll(sturdy)) {
                high = share;
                found = between;
            } else {
                low = share;
            }
        }
        return found;
    }

    /// The kept parts that hold with every single mark off by its placing error either way.
    private Set<Integer> sturdy(double[] si, Set<String> out) {
        Set<Integer> sturdy = new HashSet<>();
        int[] kept = judged.partsOf(line -> isKept(line, out));
        IntStream.of(kept).forEach(sturdy::add);
        List<StagedMark> marks = axes.marks();
        for (int i = 0; i < marks.size(); i++) {
            for (int way = -1; way <= 1; way += 2) {
                double[] off = si.clone();
                off[i] += way * marks.get(i).placingErrorSi(si[i]);
                double[] parts = judged.parts(off);
                sturdy.removeIf(part -> parts[part] < 0);
            }
        }
        return sturdy;
    }

    /// A place on the way from one to another, on whole steps.
    private double[] between(double[] one, double[] other, double share) {
        double[] values = axes.fromSi(one);
        double[] there = axes.fromSi(other);
        for (int a = 0; a < values.length; a++) {
            values[a] += share * (there[a] - values[a]);
        }
        return axes.engraved(axes.toSi(Search.onSteps(axes.at(one), values)));
    }

    private static boolean isKept(Judged.Line line, Set<String> out) {
        return line.isComputed() && !out.contains(line.id());
    }

    /// Some parts, each counted from a level of its own.
    private Margins shifted(List<Integer> parts, List<Double> levels) {
        Margins counted =
                judged.margins(axes, parts.stream().mapToInt(Integer::intValue).toArray());
        return values -> {
            double[] some = counted.at(values);
            for (int i = 0; i < some.length; i++) {
                some[i] -= levels.get(i);
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
        double[] found = axes.engraved(axes.toSi(Search.solve(axes.at(start), margins(dropped), starts(start))));
        return WrittenOrder.of(axes, found, seeds.getFirst(), si -> height(si, dropped));
    }

    private Margins margins(Set<String> dropped) {
        return judged.margins(axes, judged.partsOf(line -> isKept(line, dropped)));
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
                if (!Search.feelsFree(axes.at(si), judged.margins(axes, parts), axes.fromSi(si))) {
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
