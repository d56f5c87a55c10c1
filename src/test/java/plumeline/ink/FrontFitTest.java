package plumeline.ink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.ink.FrontFit.Reading;
import plumeline.ink.ReadTake.FrontReading;

/// A line through readings: what it is, which takes it tells apart, how often its interval holds.
final class FrontFitTest {
    private static final int CREWS = 600;

    private static final double[] TAKE_SCATTERS = {0.12, 0.18};

    @Test
    void fit_isLeastSquaresInLogarithms() {
        // Three readings off z = 0.1 t^0.6 by +, −− and + a tenth in the depth's logarithm: slope unmoved, factor as
        // their mean.
        List<Reading> readings = List.of(
                new Reading(0.5, 0.1 * Math.pow(0.5, 0.6) * Math.exp(0.1)),
                new Reading(1, 0.1 * Math.exp(-0.2)),
                new Reading(2, 0.1 * Math.pow(2, 0.6) * Math.exp(0.1)));
        FrontFit fit = FrontFit.of(readings);
        assertThat(fit.exponent()).isCloseTo(0.6, within(1e-12));
        assertThat(fit.factor()).isCloseTo(0.1, within(1e-12));
        Estimate near = fit.seconds(0.1);
        Estimate far = fit.seconds(0.5);
        assertThat(far.high() / far.value()).isGreaterThan(near.high() / near.value());
        assertThat(near.high() / near.value()).isGreaterThan(1.2);
        Estimate depth = fit.frontMetres(near.high());
        assertThat(depth.low()).isCloseTo(0.1, within(0.002));
    }

    @Test
    void fit_needsTwoTimesAndAWayDown() {
        assertThat(FrontFit.isPossible(List.of(new Reading(1, 0.1)))).isFalse();
        assertThat(FrontFit.isPossible(List.of(new Reading(1, 0.1), new Reading(1, 0.2))))
                .isFalse();
        assertThat(FrontFit.isPossible(List.of(new Reading(1, 0.1), new Reading(2, 0.09))))
                .isFalse();
        assertThat(FrontFit.isPossible(List.of(new Reading(1, 0.1), new Reading(2, 0.15))))
                .isTrue();
    }

    @Test
    void takes_areToldApart_listedOrSortedByTime() {
        List<Reading> listed = List.of(
                new Reading(0.40, 0.070),
                new Reading(1.90, 0.188),
                new Reading(0.50, 0.068),
                new Reading(2.40, 0.190),
                new Reading(0.45, 0.090));
        assertThat(FrontFit.of(listed).takes()).extracting(List::size).containsExactly(2, 2, 1);
        List<Reading> sorted = listed.stream()
                .sorted(Comparator.comparingDouble(Reading::seconds))
                .toList();
        assertThat(FrontFit.of(sorted).takes()).hasSize(3);
    }

    /// The more takes and the better read, the surer; a reading's own ± counts.
    @Test
    void interval_narrowsWithTakes_andWithBetterReadings() {
        double[] ratios = new double[4];
        for (int takes = 1; takes <= 3; takes++) {
            List<FrontReading> readings = new ArrayList<>();
            for (int take = 0; take < takes; take++) {
                readings.add(new FrontReading(0.40, 0.03, 0.070, 0.003));
                readings.add(new FrontReading(1.90, 0.03, 0.188, 0.003));
            }
            ratios[takes] = ratio(readings);
        }
        assertThat(ratios[2]).isLessThan(0.98 * ratios[1]);
        assertThat(ratios[3]).isLessThan(0.99 * ratios[2]);
        double coarse =
                ratio(List.of(new FrontReading(0.40, 0.10, 0.070, 0.010), new FrontReading(1.90, 0.10, 0.188, 0.010)));
        assertThat(coarse).isGreaterThan(1.05 * ratios[1]);
    }

    private static double ratio(List<FrontReading> readings) {
        return ratio(FrontFit.find(readings).orElseThrow().seconds(0.120));
    }

    private static double ratio(Estimate seconds) {
        return seconds.high() / seconds.low();
    }

    /// Crews whose fronts follow z = k tⁿ, n 0.45 to 0.80, each take 12 to 18 % off, times read to 0.02 to 0.10 s,
    /// depths to 5 mm, the start to 0.02 s. **Source:** the bars are the issue's, 72 to 88 times in 100; n 0.5 to
    /// 0.75 common practice, the scatter of takes that of a trial solver's seeds.
    @Test
    void intervalsOfEighty_holdSeventyTwoToEightyEightTimes() {
        for (int takes = 1; takes <= 3; takes++) {
            for (int readings = 1; readings <= 3; readings++) {
                if (takes * readings > 1) {
                    Random random = new Random(100 * takes + readings);
                    int covered = 0;
                    for (int crew = 0; crew < CREWS; crew++) {
                        covered += isCovered(random, takes, readings) ? 1 : 0;
                    }
                    assertThat((double) covered / CREWS)
                            .as("%d takes of %d readings", takes, readings)
                            .isBetween(0.72, 0.88);
                }
            }
        }
    }

    private static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /// One crew: its readings, and whether its next take at a depth between them is in the interval.
    private static boolean isCovered(Random random, int takes, int readings) {
        double k = 0.1 * Math.exp(0.3 * random.nextGaussian());
        double n = between(random, 0.45, 0.80);
        double scatter = between(random, TAKE_SCATTERS[0], TAKE_SCATTERS[1]);
        double deviation = between(random, 0.02, 0.10);
        List<FrontReading> all = new ArrayList<>();
        for (int take = 0; take < takes; take++) {
            double off = Math.exp(scatter * random.nextGaussian());
            double start = 0.02 * random.nextGaussian();
            double first = between(random, 0.05, 0.08);
            double step = between(random, 0.05, 0.10) / Math.max(1, readings - 1);
            for (int i = 0; i < readings; i++) {
                double depth = readings == 1 ? between(random, 0.05, 0.16) : first + i * step;
                double seconds = off * Math.pow(depth / k, 1 / n) + start + deviation * random.nextGaussian();
                all.add(new FrontReading(
                        Math.max(0.03, seconds), deviation, depth + 0.005 * random.nextGaussian(), 0.005));
            }
        }
        var fit = FrontFit.find(all);
        if (fit.isEmpty()) {
            return isCovered(random, takes, readings);
        }
        double shallowest =
                all.stream().mapToDouble(FrontReading::depthMetres).min().orElseThrow();
        double deepest =
                all.stream().mapToDouble(FrontReading::depthMetres).max().orElseThrow();
        double depth = between(random, shallowest, deepest);
        double came = Math.pow(depth / k, 1 / n) * Math.exp(scatter * random.nextGaussian());
        Estimate seconds = fit.get().seconds(depth);
        return seconds.low() <= came && came <= seconds.high();
    }
}
