package plumeline.ink;

import java.util.List;
import plumeline.ranges.Ranges;

/// A front as read from takes, `z = k tⁿ`: the straight line by least squares through the logarithms.
///
/// n is 0.5 (a puff) to 0.75 (a stream). Good between its readings and a little beyond.
///
/// **Source:** common practice; the interval beyond the readings is a straight line's, own derivation as any text on
/// least squares has it.
///
/// @param factor k, m/sⁿ
/// @param exponent n, dimensionless, > 0
/// @param meanLog mean logarithm of the depths (m)
/// @param sumLogSquares sum of squares of the depths' logarithms about their mean
/// @param readings how many readings
/// @param readingShare how far a reading is off the line, share of its time
public record FrontFit(
        double factor, double exponent, double meanLog, double sumLogSquares, int readings, double readingShare) {
    /// One take against the next, share of the time, standard deviation (fitted to simulated takes).
    private static final double NEXT_TAKE = 0.18;

    /// What a reading off a monitor is off by at least, share of its time (common practice).
    private static final double LEAST_READING = 0.05;

    /// A reading.
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
    }

    /// What 80 % of takes are off by at most, as a ratio, one reading's own error counted.
    static double nextTakeRatio() {
        return Math.exp(Estimate.EIGHTY * Math.hypot(NEXT_TAKE, LEAST_READING));
    }

    /// Tells whether a line can be laid through readings: two different times at least, deeper the later on the whole.
    ///
    /// @param readings the readings
    /// @return true where it can
    public static boolean isPossible(List<Reading> readings) {
        Sums sums = Sums.of(readings);
        return readings.size() >= 2 && sums.timeSquares > 1e-9 && sums.products > 1e-9;
    }

    /// Lays the line.
    ///
    /// @param readings readings through which a line is possible
    /// @return the fit
    public static FrontFit of(List<Reading> readings) {
        Sums sums = Sums.of(readings);
        double n = sums.products / sums.timeSquares;
        double k = Math.exp(sums.meanDepth - n * sums.meanTime);
        double off = 0;
        for (Reading each : readings) {
            double log = Math.log(each.metres()) - Math.log(k) - n * Math.log(each.seconds());
            off += log * log;
        }
        int left = readings.size() - 2;
        double share = left > 0 ? Math.sqrt(off / left) / n : 0;
        return new FrontFit(k, n, sums.meanDepth, sums.depthSquares, readings.size(), Math.max(share, LEAST_READING));
    }

    /// Gives when the front is at a depth in the next take.
    ///
    /// @param metres depth below the surface, m, > 0
    /// @return s, with its interval
    public Estimate seconds(double metres) {
        var sum = new Estimate.Sum();
        sum.addBothWays(Math.exp(Estimate.EIGHTY * deviation(metres)));
        return sum.of(Math.pow(metres / factor, 1 / exponent));
    }

    /// Gives how deep the front is at a time in the next take.
    ///
    /// @param seconds time, s, > 0
    /// @return depth below the surface, m, with its interval
    public Estimate frontMetres(double seconds) {
        double metres = factor * Math.pow(seconds, exponent);
        var sum = new Estimate.Sum();
        sum.addBothWays(Math.exp(Estimate.EIGHTY * deviation(metres) * exponent));
        return sum.of(metres);
    }

    /// Standard deviation of the logarithm of the time.
    private double deviation(double metres) {
        double away = Math.log(metres) - meanLog;
        double line = readingShare * readingShare * (1.0 / readings + away * away / sumLogSquares);
        return Math.sqrt(NEXT_TAKE * NEXT_TAKE + line);
    }

    private record Sums(double meanTime, double meanDepth, double timeSquares, double products, double depthSquares) {
        static Sums of(List<Reading> readings) {
            double time = readings.stream()
                    .mapToDouble(each -> Math.log(each.seconds()))
                    .average()
                    .orElse(0);
            double depth = readings.stream()
                    .mapToDouble(each -> Math.log(each.metres()))
                    .average()
                    .orElse(0);
            double squares = 0;
            double products = 0;
            double depths = 0;
            for (Reading each : readings) {
                double dt = Math.log(each.seconds()) - time;
                double dz = Math.log(each.metres()) - depth;
                squares += dt * dt;
                products += dt * dz;
                depths += dz * dz;
            }
            return new Sums(time, depth, squares, products, depths);
        }
    }
}
