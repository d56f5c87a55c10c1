package plumeline.ink;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/// Narrows the unknowns by readings of takes: a least-squares fit of the laws to the readings in which the prior, the
/// difference from take to take and an unsure start count as readings too. Formulas: docs/derivations/lesson.md.
final class Learning {
    /// So many takes must speak before their own scatter counts as much as that.
    private static final double SCATTER_WEIGHT = 12;

    /// How far a front wanders off its law within a take, share of the time, standard deviation (our guess).
    static final double WANDER = 0.03;

    private static final int ROUNDS = 14;

    /// At first times are compared by their logarithms, which finds the way from anywhere; then as they were read, to
    /// which their errors belong.
    private static final int LOGARITHMIC_ROUNDS = 3;

    /// No unknown is believed to be further from its middle than this, standard deviations.
    private static final double FURTHEST = 15;

    /// Degrees of freedom of the unknowns' spread: few, as an ink that nobody has measured may be unlike any.
    private static final double TAILS = 2;

    /// A crew counts from a wrong frame in all takes alike, or in each otherwise: half of the variance each.
    private static final double HALF = Math.sqrt(0.5);

    private static final int COMMON_START = Unknowns.COUNT;
    private static final int FIRST_TAKE = Unknowns.COUNT + 1;

    private final List<ReadTake> takes;
    private final int count;
    private final double[] at;
    private double scatter = Learnt.TAKE_SCATTER;
    private double trust = 1;
    private double[][] covariance = {};

    private Learning(List<ReadTake> takes) {
        this.takes = takes;
        count = FIRST_TAKE + 2 * takes.size();
        at = new double[count];
    }

    static Learning of(List<ReadTake> takes) {
        Learning learning = new Learning(takes);
        for (int round = 0; round < ROUNDS; round++) {
            learning.narrow(round);
        }
        return learning;
    }

    /// The laws' unknowns, as they are most likely.
    double[] means() {
        return Arrays.copyOf(at, Unknowns.COUNT);
    }

    /// The variance of something that changes so with each of the laws' unknowns.
    double variance(double[] slopes) {
        double variance = 0;
        for (int i = 0; i < Unknowns.COUNT; i++) {
            for (int j = 0; j < Unknowns.COUNT; j++) {
                variance += slopes[i] * slopes[j] * covariance[i][j];
            }
        }
        return variance;
    }

    /// One take against the next, share of the time, standard deviation.
    double scatter() {
        return scatter;
    }

    private int takeAt(int take) {
        return FIRST_TAKE + 2 * take;
    }

    private void narrow(int round) {
        Normal normal = new Normal(count, Unknowns.COUNT, trust);
        for (int take = 0; take < takes.size(); take++) {
            ReadTake read = takes.get(take);
            for (ReadTake.FrontReading front : read.fronts()) {
                readFront(normal, take, front, round);
            }
            for (ReadTake.WidthReading width : read.widths()) {
                readWidth(normal, read, width);
            }
        }
        double[] means = normal.means();
        for (int i = 0; i < count; i++) {
            at[i] = Math.clamp(means[i], -FURTHEST, FURTHEST);
        }
        covariance = normal.covariance();
        if (round >= LOGARITHMIC_ROUNDS && round + 1 < ROUNDS) {
            scatter = likelyScatter();
            trust = trust();
        }
    }

    /// How far the published ranges are believed, as a factor on their precision: less where readings lie far outside.
    /// The step of expectation and maximisation for unknowns whose spread has long tails.
    private double trust() {
        double squares = 0;
        for (int i = 0; i < Unknowns.COUNT; i++) {
            squares += at[i] * at[i] + covariance[i][i];
        }
        return Math.min(1, (TAILS + Unknowns.COUNT) / (TAILS + squares));
    }

    /// The scatter from take to take that goes best with what each take is off by.
    private double likelyScatter() {
        double squares = SCATTER_WEIGHT * Learnt.TAKE_SCATTER * Learnt.TAKE_SCATTER;
        for (int take = 0; take < takes.size(); take++) {
            int i = takeAt(take);
            squares += scatter * scatter * (at[i] * at[i] + covariance[i][i]);
        }
        return Math.sqrt(squares / (SCATTER_WEIGHT + takes.size()));
    }

    private void readFront(Normal normal, int take, ReadTake.FrontReading front, int round) {
        ReadTake read = takes.get(take);
        Unknowns.Law law = Unknowns.seconds(read.descent(), front.depthMetres());
        OptionalDouble found = law.find(at);
        if (found.isEmpty()) {
            return;
        }
        double off = scatter * at[takeAt(take)];
        double start = HALF * read.startDeviationSeconds();
        double seconds = Math.exp(found.getAsDouble() + off);
        boolean isLogarithmic = round < LOGARITHMIC_ROUNDS;
        double share = isLogarithmic ? Math.max(front.seconds(), read.startDeviationSeconds()) : seconds;
        double[] slopes = slopes(law);
        double value = isLogarithmic ? Math.log(front.seconds() / seconds) : (front.seconds() - seconds) / seconds;
        slopes[takeAt(take)] = scatter;
        slopes[takeAt(take) + 1] = start / share;
        slopes[COMMON_START] = start / share;
        double depth = depthSlope(read.descent(), front.depthMetres()) * front.deviationMetres();
        double time = front.deviationSeconds() / share;
        normal.read(slopes, value + off + known(slopes), WANDER * WANDER + time * time + depth * depth);
    }

    private double[] slopes(Unknowns.Law law) {
        return Arrays.copyOf(law.slopes(Arrays.copyOf(at, Unknowns.COUNT)), count);
    }

    /// What the laws' unknowns, where they are, make of the value.
    private double known(double[] slopes) {
        double known = 0;
        for (int i = 0; i < Unknowns.COUNT; i++) {
            known += slopes[i] * at[i];
        }
        return known;
    }

    /// How the logarithm of the time grows with depth, 1/m.
    private static double depthSlope(Descent descent, double depth) {
        double step = 0.05 * (depth - descent.startMetres());
        OptionalDouble more = descent.findSeconds(depth + step);
        OptionalDouble less = descent.findSeconds(depth - step);
        return more.isPresent() && less.isPresent()
                ? Math.log(more.getAsDouble() / less.getAsDouble()) / (2 * step)
                : 1 / (depth - descent.startMetres());
    }

    private void readWidth(Normal normal, ReadTake read, ReadTake.WidthReading width) {
        Unknowns.Law law = Unknowns.halfWidth(read.descent(), width.depthMetres());
        double[] slopes = slopes(law);
        double value = Math.log(width.halfWidthMetres()) - law.find(at).orElseThrow();
        double share = width.deviationMetres() / width.halfWidthMetres();
        normal.read(slopes, value + known(slopes), Learnt.BILLOWS * Learnt.BILLOWS + share * share);
    }
}
