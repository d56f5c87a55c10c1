package plumeline.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

/// Monotone cubics on two sets that are used for them everywhere.
@Outside(
        source = "SciPy 1.10.1 (BSD-3), interpolate.PchipInterpolator: data of its test suite, values of a run",
        place = "TestPCHIP; the nine points are Fritsch and Carlson's (1980) RPN 14, from memory",
        kind = "other program",
        printedDigits = 9)
final class FreeKeysOutsideTest {
    private static final double[] X = {7.99, 8.09, 8.19, 8.70, 9.20, 10, 12, 15, 20};
    private static final double[] Y = {0, .27643e-4, .43750e-1, .16918, .46943, .94374, .99864, .99992, .99999};

    private static FreeKeys keys(double[] x, double[] y, SlopeRule rule) {
        List<FreeKeys.Key> keys = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            keys.add(new FreeKeys.Key(x[i], y[i]));
        }
        return new FreeKeys(keys, rule, FreeKeys.Ends.RUNNING);
    }

    private static FreeKeys ninePoints() {
        return keys(X, Y, SlopeRule.FRITSCH_BUTLAND);
    }

    @Test
    void ninePoints_haveTheSameSpeeds() {
        double[] expected = {
            0, 5.5251068e-4, 0.33587302, 0.34944455, 0.59696239, 0.060325971, 8.9832791e-4, 2.9405169e-5, 0
        };
        List<Double> speeds = ninePoints().listSpeeds();
        assertThat(speeds).hasSize(expected.length);
        for (int i = 0; i < expected.length; i++) {
            assertThat(speeds.get(i)).isEqualTo(expected[i], within(1e-7 * expected[i] + 1e-15));
        }
    }

    @Test
    void ninePoints_passTheSamePlaces() {
        double[] expected = {
            0, 0.464016, 0.964471, 0.996492, 0.999243, 0.999773, 0.999926, 0.999955, 0.999975, 0.999986, 0.99999
        };
        checkEven(ninePoints().toRun(), expected, 1e-6);
    }

    private static void checkEven(CubicRun run, double[] expected, double near) {
        for (int i = 0; i < expected.length; i++) {
            assertThat(run.at(7.99 + 1.201 * i)).isEqualTo(expected[i], within(near));
        }
    }

    /// Simpson's rule is exact for a cubic.
    @Test
    void ninePoints_haveTheSameIntegrals() {
        CubicRun run = ninePoints().toRun();
        double whole = 0;
        for (int i = 0; i + 1 < X.length; i++) {
            whole += simpson(run, X[i], X[i + 1]);
        }
        assertThat(whole).isEqualTo(10.764815012, within(1e-8));
        assertThat(simpson(run, 10, 12)).isEqualTo(1.962189214, within(1e-8));
    }

    private static double simpson(CubicRun run, double from, double to) {
        return (to - from) / 6 * (run.at(from) + 4 * run.at((from + to) / 2) + run.at(to));
    }

    /// Worked from the 1980 paper's formulas, from memory: three-point slopes, then one sweep from left to right.
    @Test
    void ninePoints_byTheOlderRule() {
        FreeKeys older = keys(X, Y, SlopeRule.FRITSCH_CARLSON);
        double[] slopes = {0, 8.2929e-4, 0.4058658, 0.42497583, 0.59757212, 0.082288784, 1.2753305e-3, 4.2e-5, 0};
        for (int i = 0; i < slopes.length; i++) {
            assertThat(older.listSpeeds().get(i)).isEqualTo(slopes[i], within(1e-6));
        }
        double[] places = {
            0, 0.464023, 0.970013, 0.997844, 0.999403, 0.999852, 0.999928, 0.999964, 0.999982, 0.999989, 0.99999
        };
        checkEven(older.toRun(), places, 1e-6);
    }

    @Test
    void bothRules_neverTurnBack() {
        for (SlopeRule rule : SlopeRule.values()) {
            CubicRun run = keys(X, Y, rule).toRun();
            double last = 0;
            for (int i = 0; i <= 200_000; i++) {
                double here = run.at(7.99 + 12.01 * i / 200_000);
                assertThat(here).isGreaterThanOrEqualTo(last - 1e-15);
                last = here;
            }
            assertThat(run.listTurns()).isEmpty();
        }
    }

    @Test
    void tenIntegers_passTheSamePlaces() {
        double[] x = {0, 4, 12, 27, 47, 60, 79, 87, 99, 100};
        double[] y = {-33, -33, -19, -2, 12, 26, 38, 45, 53, 55};
        CubicRun run = keys(x, y, SlopeRule.FRITSCH_BUTLAND).toRun();
        double[] at = {2, 8, 20, 37, 53.5, 70, 83, 93, 99.5};
        double[] expected = {-33, -27.406234, -8.944120, 5.034755, 19.084516, 32.419328, 41.486446, 48.399186, 53.882702
        };
        for (int i = 0; i < at.length; i++) {
            assertThat(run.at(at[i])).isEqualTo(expected[i], within(1e-6));
        }
    }
}
