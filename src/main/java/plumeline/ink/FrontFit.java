package plumeline.ink;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.ink.ReadTake.FrontReading;
import plumeline.ranges.Ranges;

/// A front as read from takes, `z = k tⁿ`: the straight line through the logarithms, depths over times, by least
/// squares. Two readings fix it.
///
/// n is 0.5 (a puff) to 0.75 (a stream). Good between its readings and a little beyond.
///
/// **Source:** common practice; the interval carries what readings, starts and takes are off by through the line, own
/// derivation, docs/derivations/lesson.md.
///
/// @param factor k, m/sⁿ
/// @param exponent n, dimensionless, > 0
/// @param takes the readings of each take that can be told apart
public record FrontFit(double factor, double exponent, List<List<FrontReading>> takes) {
    /// What a reading off a monitor is off by at least, share of its time (common practice).
    private static final double LEAST_READING = 0.05;

    /// The first ink, from which a take's times count, is read as any time is, s, standard deviation.
    private static final double START_SECONDS = ReadTake.USUAL_SECONDS;

    /// Between readings n is from here: 0.5, and what readings are off by.
    static final double LEAST_EXPONENT = 0.3;

    /// Between readings n is up to here: 0.75, a pushed front's near its mouth 1, and what readings are off by.
    static final double MOST_EXPONENT = 1.2;

    /// The middle of 0.5 to 0.75, about.
    private static final double USUAL_EXPONENT = 0.6;

    private static final double SOME = 1e-9;

    /// A reading, off by as much as usual.
    ///
    /// @param seconds time from the first ink that leaves the nozzle, s, > 0
    /// @param metres depth of the front below the surface, m, > 0
    public record Reading(double seconds, double metres) {
        /// Checks the ranges.
        ///
        /// @throws IllegalArgumentException outside them
        public Reading {
            Ranges.checkPositive(seconds, "time");
            Ranges.checkPositive(metres, "depth");
        }

        private FrontReading usual() {
            return new FrontReading(seconds, ReadTake.USUAL_SECONDS, metres, ReadTake.USUAL_METRES);
        }
    }

    /// Copies the lists.
    public FrontFit {
        takes = takes.stream().map(List::copyOf).toList();
    }

    /// What 80 % of takes are off by at most from one that was read once, as a ratio, the reading's own error counted.
    static double nextTakeRatio() {
        double takes = 2 * Learnt.TAKE_SCATTER * Learnt.TAKE_SCATTER;
        return Math.exp(Gauss.EIGHTY * Math.sqrt(takes + LEAST_READING * LEAST_READING));
    }

    /// Tells whether a line can be laid through readings: two different times at least, deeper the later on the whole.
    ///
    /// @param readings the readings
    /// @return true where it can
    public static boolean isPossible(List<Reading> readings) {
        return find(readings.stream().map(Reading::usual).toList()).isPresent();
    }

    /// Lays the line through readings that are off by as much as usual.
    ///
    /// @param readings readings through which a line is possible, of one take or one take after another
    /// @return the fit
    public static FrontFit of(List<Reading> readings) {
        return find(readings.stream().map(Reading::usual).toList()).orElseThrow();
    }

    /// Finds the line through readings.
    ///
    /// @param readings readings of one take or one take after another
    /// @return the fit; empty where they have no two different times, or aren't deeper the later on the whole
    public static Optional<FrontFit> find(List<FrontReading> readings) {
        Sums sums = Sums.of(readings);
        if (readings.size() < 2 || sums.timeSquares < SOME || sums.products < SOME) {
            return Optional.empty();
        }
        double n = sums.products / sums.timeSquares;
        return Optional.of(new FrontFit(Math.exp(sums.meanDepth - n * sums.meanTime), n, apart(readings)));
    }

    /// Tells takes apart: a reading follows on that take in which n comes nearest to the usual, or begins another.
    private static List<List<FrontReading>> apart(List<FrontReading> readings) {
        List<List<FrontReading>> takes = new ArrayList<>();
        for (FrontReading reading : readings) {
            List<FrontReading> found = new ArrayList<>();
            double least = Double.POSITIVE_INFINITY;
            for (List<FrontReading> take : takes) {
                double away = away(take.getLast(), reading);
                if (away < least) {
                    found = take;
                    least = away;
                }
            }
            if (found.isEmpty()) {
                takes.add(found);
            }
            found.add(reading);
        }
        return takes;
    }

    /// How far n is from the usual between two readings, as a ratio's logarithm; endless where they can't be of one
    /// take.
    private static double away(FrontReading before, FrontReading after) {
        double time = Math.log(after.seconds() / before.seconds());
        double exponent = Math.log(after.depthMetres() / before.depthMetres()) / time;
        return time > 0 && exponent > LEAST_EXPONENT && exponent < MOST_EXPONENT
                ? Math.abs(Math.log(exponent / USUAL_EXPONENT))
                : Double.POSITIVE_INFINITY;
    }

    /// Tells whether it goes as a front may: n 0.3 to 1.2, what badly read fronts have.
    ///
    /// @return false where the readings are misread, or of takes too different for one line
    public boolean isFront() {
        return exponent >= LEAST_EXPONENT && exponent <= MOST_EXPONENT;
    }

    /// Gives when the front is at a depth in the next take.
    ///
    /// @param metres depth below the surface, m, > 0
    /// @return s, with its interval
    public Estimate seconds(double metres) {
        return spread(fitted(metres), deviation(metres));
    }

    /// Gives how deep the front is at a time in the next take.
    ///
    /// @param seconds time, s, > 0
    /// @return depth below the surface, m, with its interval
    public Estimate frontMetres(double seconds) {
        double metres = factor * Math.pow(seconds, exponent);
        return spread(metres, deviation(metres) * exponent);
    }

    private static Estimate spread(double value, double deviation) {
        var sum = new Estimate.Sum();
        sum.addBothWays(Math.exp(Gauss.EIGHTY * deviation));
        return sum.of(value);
    }

    private double fitted(double metres) {
        return Math.pow(metres / factor, 1 / exponent);
    }

    /// Standard deviation of the logarithm of the time: how far the line is off there, and the next take off the line.
    private double deviation(double metres) {
        List<FrontReading> all = takes.stream().flatMap(List::stream).toList();
        Sums sums = Sums.of(all);
        double away = (Math.log(fitted(metres)) - sums.meanTime) / sums.timeSquares;
        double line = 0;
        for (List<FrontReading> take : takes) {
            double weights = 0;
            double starts = 0;
            for (FrontReading reading : take) {
                double weight = 1.0 / all.size() + away * (Math.log(reading.seconds()) - sums.meanTime);
                weights += weight;
                starts += weight * START_SECONDS / fitted(reading.depthMetres());
                line += weight * weight * variance(reading);
            }
            line += weights * weights * Learnt.TAKE_SCATTER * Learnt.TAKE_SCATTER + starts * starts;
        }
        return Math.sqrt(line * excess(all) + Learnt.TAKE_SCATTER * Learnt.TAKE_SCATTER);
    }

    /// What a reading is off the line by within its take.
    private double variance(FrontReading reading) {
        double time = reading.deviationSeconds() / fitted(reading.depthMetres());
        double depth = reading.deviationMetres() / reading.depthMetres() / exponent;
        return time * time + depth * depth + Learning.WANDER * Learning.WANDER;
    }

    /// How many times more the readings are off the line than they should be; one at least.
    private double excess(List<FrontReading> all) {
        double read = 0;
        double expected = 0;
        for (FrontReading reading : all) {
            double off = Math.log(reading.seconds() / fitted(reading.depthMetres()));
            read += off * off;
            expected += variance(reading) + Learnt.TAKE_SCATTER * Learnt.TAKE_SCATTER;
        }
        int left = all.size() - 2;
        return left == 0 ? 1 : Math.max(1, read / left / (expected / all.size()));
    }

    private record Sums(double meanTime, double meanDepth, double timeSquares, double products) {
        static Sums of(List<FrontReading> readings) {
            double time = readings.stream()
                    .mapToDouble(each -> Math.log(each.seconds()))
                    .average()
                    .orElse(0);
            double depth = readings.stream()
                    .mapToDouble(each -> Math.log(each.depthMetres()))
                    .average()
                    .orElse(0);
            double squares = 0;
            double products = 0;
            for (FrontReading each : readings) {
                double dt = Math.log(each.seconds()) - time;
                double dz = Math.log(each.depthMetres()) - depth;
                squares += dt * dt;
                products += dt * dz;
            }
            return new Sums(time, depth, squares, products);
        }
    }
}
