package plumeline.plume;

import java.util.List;
import java.util.OptionalDouble;
import plumeline.ink.Estimate;

/// When something came to pass in each of several runs.
///
/// The interval is that of one more take, which differs from these whatever is set, and is never narrower than what
/// takes differ by.
///
/// @param seconds the times of those runs in which it did, in the order of the runs
/// @param runs how many runs there were
/// @param untilSeconds to when all of them were followed, seconds
public record Times(List<Double> seconds, int runs, double untilSeconds) {
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
        NextTake next = next();
        return OptionalDouble.of(next.low(middle().orElse(next.middle())));
    }

    /// The late end of the middle 80 %.
    ///
    /// @return seconds; empty where it has no end: in one run or more it never came
    public OptionalDouble high() {
        if (seconds.size() < runs) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(next().high(middle().orElseThrow()));
    }

    /// How often it has come to pass by a time in one more take: as often as in these runs at all, and of those as
    /// their own interval has it.
    ///
    /// @param bySeconds the time, seconds
    /// @return share of takes, 0 to 1
    public double oddsBy(double bySeconds) {
        if (seconds.isEmpty()) {
            return 0;
        }
        var came = new Times(seconds, seconds.size(), untilSeconds);
        var when = new Estimate(
                came.middle().orElseThrow(),
                came.low().orElseThrow(),
                came.high().orElseThrow());
        return (double) seconds.size() / runs * when.oddsUnder(bySeconds);
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

    private NextTake next() {
        return new NextTake(seconds, EARLIEST_SECONDS);
    }
}
