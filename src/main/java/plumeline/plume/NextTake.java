package plumeline.plume;

import java.util.List;
import plumeline.ink.Gauss;
import plumeline.ink.Learnt;

/// Where one more take would lie, by what several runs gave, in the middle 80 %.
///
/// Takes differ whatever is set: the interval is that of a further take, by Student's t on the logarithms of what the
/// runs gave, and never narrower than what takes differ by.
///
/// **Source:** prediction interval of a normal sample, any text on statistics; Student's t at 0.9 from memory of its
/// tables.
final class NextTake {
    /// How many runs it is worth what takes are known to differ by.
    private static final int ONE_TAKE_RUNS = 3;

    private static final double[] STUDENT = {3.078, 1.886, 1.638, 1.533, 1.476, 1.440, 1.415, 1.397, 1.383, 1.372};

    private final double mean;
    private final double reach;

    /// @param values what the runs gave, at least one
    /// @param least what is less counts as this, > 0
    NextTake(List<Double> values, double least) {
        int n = values.size();
        double[] logs = values.stream()
                .mapToDouble(each -> Math.log(Math.max(each, least)))
                .toArray();
        double sum = 0;
        for (double log : logs) {
            sum += log;
        }
        double squares = ONE_TAKE_RUNS * Learnt.TAKE_SCATTER * Learnt.TAKE_SCATTER;
        for (double log : logs) {
            squares += (log - sum / n) * (log - sum / n);
        }
        int degrees = ONE_TAKE_RUNS + n - 1;
        this.mean = sum / n;
        this.reach = student(degrees) * Math.sqrt(squares / degrees * (1 + 1.0 / n));
    }

    /// The middle of what came, by logarithms.
    double middle() {
        return Math.exp(mean);
    }

    /// The lower end.
    ///
    /// @param middle what is told as the middle
    double low(double middle) {
        return Math.min(middle / Learnt.TAKE_RATIO, Math.exp(mean - reach));
    }

    /// The upper end.
    ///
    /// @param middle what is told as the middle
    double high(double middle) {
        return Math.max(middle * Learnt.TAKE_RATIO, Math.exp(mean + reach));
    }

    /// Student's t at 0.9; past the table two terms of its expansion about the normal's.
    static double student(int degrees) {
        return degrees <= STUDENT.length
                ? STUDENT[degrees - 1]
                : Gauss.EIGHTY * (1 + 0.66 / degrees + 0.445 / ((double) degrees * degrees));
    }
}
