package plumeline.plume;

import java.util.List;
import java.util.OptionalDouble;
import plumeline.ranges.Ranges;

/// A length at one instant in each of several runs, with the interval of a further take: what it has grown by since the
/// release differs from take to take as times do ([Times]), which is a little wide for a front and not for a width.
///
/// @param metres the lengths, metres
/// @param startMetres what it grows from, metres: none is less in an interval
/// @param mostMetres nor more, metres
public record Lengths(List<Double> metres, double startMetres, double mostMetres) {
    /// Growth that is less counts as this: no cell is finer.
    private static final double LEAST_METRES = 0.001;

    /// Copies the list.
    public Lengths {
        metres = List.copyOf(metres);
        Ranges.check(startMetres <= mostMetres, "startMetres", startMetres, "at most mostMetres " + mostMetres);
    }

    /// The middle one.
    ///
    /// @return metres; empty where there is none
    public OptionalDouble middle() {
        int n = metres.size();
        if (n == 0) {
            return OptionalDouble.empty();
        }
        List<Double> sorted = metres.stream().sorted().toList();
        return OptionalDouble.of((sorted.get((n - 1) / 2) + sorted.get(n / 2)) / 2);
    }

    /// The lower end of the middle 80 %.
    ///
    /// @return metres; empty where there is no length
    public OptionalDouble low() {
        OptionalDouble middle = middle();
        return middle.isEmpty()
                ? middle
                : OptionalDouble.of(
                        Math.min(middle.getAsDouble(), startMetres + next().low(grown(middle.getAsDouble()))));
    }

    /// The upper end of the middle 80 %.
    ///
    /// @return metres; empty where there is no length
    public OptionalDouble high() {
        OptionalDouble middle = middle();
        return middle.isEmpty()
                ? middle
                : OptionalDouble.of(Math.max(
                        middle.getAsDouble(),
                        Math.min(mostMetres, startMetres + next().high(grown(middle.getAsDouble())))));
    }

    private double grown(double length) {
        return Math.max(LEAST_METRES, length - startMetres);
    }

    private NextTake next() {
        return new NextTake(metres.stream().map(each -> each - startMetres).toList(), LEAST_METRES);
    }
}
