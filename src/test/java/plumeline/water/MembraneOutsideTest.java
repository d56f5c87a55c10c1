package plumeline.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

/// A round plate that bows far, by energy: its bending shape of a small bow, the stretching for that shape exact.
final class MembraneOutsideTest {
    private static final double NU = 0.3;
    private static final int RINGS = 20_000;

    private static double slope(double r) {
        return -4 * (3 + NU) / (5 + NU) * r + 4 * (1 + NU) / (5 + NU) * r * r * r;
    }

    private static double bend(double r) {
        return -4 * (3 + NU) / (5 + NU) + 12 * (1 + NU) / (5 + NU) * r * r;
    }

    private static double integral(DoubleUnaryOperator f) {
        double sum = 0;
        for (int i = 0; i < RINGS; i++) {
            sum += f.applyAsDouble((i + 0.5) / RINGS) / RINGS;
        }
        return sum;
    }

    /// With E, thickness and radius 1: `x + A x³` is as the load, A = 2 U_stretch / U_bend for a bow of 1.
    @Test
    @Outside(
            source = "Ritz's method: von Kármán's strains of a simply supported round plate whose edge doesn't draw in",
            place = "own integration, Poisson 0.3",
            kind = "other method",
            printedDigits = 3)
    void constants_areThoseOfAPlateByEnergy() {
        double bending = integral(r -> {
                    double c = slope(r) / r;
                    double sum = bend(r) + c;
                    return (sum * sum - 2 * (1 - NU) * bend(r) * c) * r;
                })
                / (12 * (1 - NU * NU));
        // Radial way in: (1/r (r u)')' = −(1 − ν) w'²/(2r) − w' w''; u is 0 in the middle and at the edge.
        double[] inner = new double[RINGS + 1];
        double[] way = new double[RINGS + 1];
        for (int i = 1; i <= RINGS; i++) {
            double r = (i - 0.5) / RINGS;
            double f = -(1 - NU) / (2 * r) * slope(r) * slope(r) - slope(r) * bend(r);
            inner[i] = inner[i - 1] + f / RINGS;
            way[i] = way[i - 1] + (inner[i - 1] + inner[i]) / 2 * r / RINGS;
        }
        double stretching = 0;
        double middle = 0;
        for (int i = 1; i <= RINGS; i++) {
            double r = (i - 0.5) / RINGS;
            double u = (way[i] + way[i - 1]) / 2 / r - way[RINGS] * r;
            double radial = (way[i] * RINGS / i
                                    - way[RINGS] * i / RINGS
                                    - (i == 1 ? 0 : way[i - 1] * RINGS / (i - 1) - way[RINGS] * (i - 1) / RINGS))
                            * RINGS
                    + slope(r) * slope(r) / 2;
            double round = u / r;
            stretching += (radial * radial + round * round + 2 * NU * radial * round) / (1 - NU * NU) * r / RINGS;
            middle = i == 2 ? (radial + NU * round) / (1 - NU * NU) : middle;
        }
        double stiffening = 2 * stretching / bending;
        assertThat(stiffening).isCloseTo(1.852, within(0.003));
        assertThat(middle).isCloseTo(0.905, within(0.004));
        assertThat(PaneBending.leastBowShare(0)).isEqualTo(1);
        for (double bow : new double[] {0.01, 0.1, 0.3, 0.5}) {
            double linear = bow + stiffening * bow * bow * bow;
            assertThat(PaneBending.leastBowShare(linear)).isCloseTo(bow / linear, within(0.001));
            double bent = 3 * (3 + NU) / 8 / (3 * (1 - NU) * (5 + NU) / 16);
            assertThat(PaneBending.leastStressShare(linear))
                    .isCloseTo((bent * bow + middle * bow * bow) / (bent * linear), within(0.001));
        }
    }
}
