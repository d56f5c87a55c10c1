package plumeline.plume;

import java.util.List;
import java.util.OptionalDouble;

/// When something came to pass in each of several runs.
///
/// One take differs from the next by 12 to 18 % whatever is set: the interval is that of a further take, by Student's t
/// on the logarithms of the runs' times, and never narrower than a fifth to either side.
///
/// **Source:** prediction interval of a normal sample, any text on statistics; Student's t at 0.9 from memory of its
/// tables.
///
/// @param seconds the times of those runs in which it did, in the order of the runs
/// @param runs how many runs there were
/// @param untilSeconds to when all of them were followed, seconds
public record Times(List<Double> seconds, int runs, double untilSeconds) {
    private static final double LEAST_RATIO = 1.2;

    /// One take against the next, standard deviation of the logarithm, and how many runs that knowledge is worth.
    private static final double ONE_TAKE = 0.18;

    private static final int ONE_TAKE_RUNS = 3;

    private static final double NORMAL = 1.2816;
    private static final double[] STUDENT = {3.078, 1.886, 1.638, 1.533, 1.476, 1.440, 1.415, 1.397, 1.383, 1.372};
    private static final double EARLIEST_SECONDS = 1e-3;

    /// Copies the list.
    public Times {
        seconds = List.copyOf(seconds);
        if (runs < 1 || seconds.size() > runs) {
            throw new IllegalArgumentException("times of " + seconds.size() + " of " + runs + " runs");
        }
    }

    /// The middle time; those in which it never came count as late.
    ///
    /// @return seconds; empty where it came in half of them or fewer
    public OptionalDouble middle() {
        if (2 * seconds.size() <= runs) {
            return OptionalDouble.empty();
        }
        List<Double> sorted = seconds.stream().sorted().toList();
        double low = sorted.get((runs - 1) / 2);
        boolean between = runs % 2 == 0;
        double high = between && runs / 2 < sorted.size() ? sorted.get(runs / 2) : low;
        return OptionalDouble.of((low + high) / 2);
    }

    /// The early end of the middle 80 %.
    ///
    /// @return seconds; empty where it never came
    public OptionalDouble low() {
        if (seconds.isEmpty()) {
            return OptionalDouble.empty();
        }
        double middle = middle().orElse(meanLog());
        return OptionalDouble.of(Math.min(middle / LEAST_RATIO, Math.exp(Math.log(meanLog()) - reach())));
    }

    /// The late end of the middle 80 %.
    ///
    /// @return seconds; empty where it has no end: in one run or more it never came
    public OptionalDouble high() {
        if (seconds.size() < runs) {
            return OptionalDouble.empty();
        }
        double middle = middle().orElseThrow();
        return OptionalDouble.of(Math.max(middle * LEAST_RATIO, Math.exp(Math.log(meanLog()) + reach())));
    }

    /// In how many runs it came to pass within a span.
    ///
    /// @param fromSeconds its beginning
    /// @param toSeconds its end
    /// @return runs
    public int within(double fromSeconds, double toSeconds) {
        return (int) seconds.stream()
                .filter(each -> each >= fromSeconds && each <= toSeconds)
                .count();
    }

    private double meanLog() {
        return Math.exp(seconds.stream()
                .mapToDouble(each -> Math.log(Math.max(each, EARLIEST_SECONDS)))
                .average()
                .orElseThrow());
    }

    /// From the mean to either end, in logarithms.
    private double reach() {
        int n = seconds.size();
        double mean = Math.log(meanLog());
        double squares = ONE_TAKE_RUNS * ONE_TAKE * ONE_TAKE;
        for (double each : seconds) {
            double off = Math.log(Math.max(each, EARLIEST_SECONDS)) - mean;
            squares += off * off;
        }
        int degrees = ONE_TAKE_RUNS + n - 1;
        return student(degrees) * Math.sqrt(squares / degrees * (1 + 1.0 / n));
    }

    /// Student's t at 0.9; past the table two terms of its expansion about the normal's.
    static double student(int degrees) {
        return degrees <= STUDENT.length
                ? STUDENT[degrees - 1]
                : NORMAL * (1 + 0.66 / degrees + 0.445 / ((double) degrees * degrees));
    }
}
