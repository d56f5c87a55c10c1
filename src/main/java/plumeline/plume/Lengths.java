package plumeline.plume;

import java.util.List;
import java.util.OptionalDouble;
import plumeline.ranges.Ranges;

/// A length at one instant in each of several runs, with the interval of a further one as in [Times].
///
/// @param metres the lengths, metres
/// @param leastMetres no such length is less, metres
/// @param mostMetres nor more, metres
public record Lengths(List<Double> metres, double leastMetres, double mostMetres) {
    /// Copies the list.
    public Lengths {
        metres = List.copyOf(metres);
        Ranges.check(leastMetres <= mostMetres, "leastMetres", leastMetres, "at most mostMetres " + mostMetres);
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
    /// @return metres; empty for fewer than two runs
    public OptionalDouble low() {
        return metres.size() < 2
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.clamp(mean() - reach(), leastMetres, middle().orElseThrow()));
    }

    /// The upper end of the middle 80 %.
    ///
    /// @return metres; empty for fewer than two runs
    public OptionalDouble high() {
        return metres.size() < 2
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.clamp(mean() + reach(), middle().orElseThrow(), mostMetres));
    }

    private double mean() {
        return metres.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    private double reach() {
        int n = metres.size();
        double mean = mean();
        double squares = metres.stream()
                .mapToDouble(each -> (each - mean) * (each - mean))
                .sum();
        return Times.student(n - 1) * Math.sqrt(squares / (n - 1) * (1 + 1.0 / n));
    }
}
