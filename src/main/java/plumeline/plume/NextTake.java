package plumeline.plume;

import java.util.List;

/// Where one more take would lie, by what several runs gave, in the middle 80 %.
///
/// One take differs from the next by 12 to 18 % whatever is set: the interval is that of a further take, by Student's t
/// on the logarithms of what the runs gave, and never narrower than a fifth to either side.
///
/// **Source:** prediction interval of a normal sample, any text on statistics; Student's t at 0.9 from memory of its
/// tables.
final class NextTake {
    private static final double LEAST_RATIO = 1.2;

    /// One take against the next, standard deviation of the logarithm, and how many runs that knowledge is worth.
    private static final double ONE_TAKE = 0.18;

    private static final int ONE_TAKE_RUNS = 3;

    private static final double NORMAL = 1.2816;
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
        double squares = ONE_TAKE_RUNS * ONE_TAKE * ONE_TAKE;
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
        return Math.min(middle / LEAST_RATIO, Math.exp(mean - reach));
    }

    /// The upper end.
    ///
    /// @param middle what is told as the middle
    double high(double middle) {
        return Math.max(middle * LEAST_RATIO, Math.exp(mean + reach));
    }

    /// Student's t at 0.9; past the table two terms of its expansion about the normal's.
    static double student(int degrees) {
        return degrees <= STUDENT.length
                ? STUDENT[degrees - 1]
                : NORMAL * (1 + 0.66 / degrees + 0.445 / ((double) degrees * degrees));
    }
}
