package plumeline.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

/// Steps of the screen's scale against the standard's curve.
@Outside(source = "IEC 61966-2-1:1999", place = "5.2, the transfer of linear to non-linear values", kind = "standard")
final class ScreenScaleOutsideTest {
    /// The standard's own sums: `12.92 x` up to 0.0031308, `1.055 x^(1/2.4) − 0.055` above, times 255, to the nearest.
    private static long step(double share) {
        double coded = share <= 0.0031308 ? 12.92 * share : 1.055 * Math.pow(share, 1 / 2.4) - 0.055;
        return Math.round(255 * coded);
    }

    /// 18 % grey is 118 of 255: 0.4613 · 255 is 117.6.
    @Test
    void knownShares() {
        List<double[]> rows = List.of(
                new double[] {0, 0},
                new double[] {0.0031308, 10},
                new double[] {0.18, 118},
                new double[] {0.2140, 127},
                new double[] {0.5, 188},
                new double[] {1, 255});
        int compared = 0;
        for (double[] row : rows) {
            assertThat(ScreenScale.step(row[0])).as("share " + row[0]).isEqualTo((int) row[1]);
            compared++;
        }
        assertThat(compared).isEqualTo(6);
    }

    @Test
    void everyShare_isShownByTheNearestStep() {
        int compared = 0;
        for (int i = 0; i <= 200_000; i++) {
            double share = i / 200_000.0;
            assertThat((long) ScreenScale.step(share)).isEqualTo(step(share));
            compared++;
        }
        assertThat(compared).isEqualTo(200_001);
    }

    @Test
    void whatNoScreenHas_isBlackOrWhite() {
        assertThat(ScreenScale.step(-0.3)).isZero();
        assertThat(ScreenScale.step(Double.NaN)).isZero();
        assertThat(ScreenScale.step(3)).isEqualTo(255);
    }
}
