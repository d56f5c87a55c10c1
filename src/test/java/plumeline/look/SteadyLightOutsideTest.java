package plumeline.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.tidy.Outside;

/// Pulses of a plan's lamp against its light summed over each frame's exposure.
@Outside(
        source = "the lamp's light summed over each of many exposures, one after the other; common practice of"
                + " cinematography for mains lamps",
        kind = "numerical integration")
final class SteadyLightOutsideTest {
    /// `(max − min)/(max + min)` over the frames of nine seconds, %, where the lamp's pulse is at its worst as they
    /// begin.
    private static double summed(double hertz, double depth, double rate, double exposure) {
        double worst = 0;
        for (int begin = 0; begin < 24; begin++) {
            double least = Double.POSITIVE_INFINITY;
            double most = 0;
            for (int frame = 0; frame < 9 * rate; frame++) {
                double sum = 0;
                int steps = 200;
                for (int i = 0; i < steps; i++) {
                    double t = frame / rate + exposure * (i + 0.5) / steps;
                    sum += 1 + depth * Math.sin(2 * Math.PI * (hertz * t + begin / 24.0));
                }
                least = Math.min(least, sum);
                most = Math.max(most, sum);
            }
            worst = Math.max(worst, 100 * (most - least) / (most + least));
        }
        return worst;
    }

    @ParameterizedTest
    @CsvSource({
        "100, 30, 24, 180",
        "100, 100, 24, 172.8",
        "100, 30, 120, 180",
        "120, 60, 23.976, 180",
        "100, 80, 25, 180",
        "1007, 100, 24, 10"
    })
    void margin_isThreePercentLessTheRipple(double hertz, double depth, double rate, double degrees) {
        String plan = LookPlan.STEADY
                .replace("PULSE", "pulse_rate: " + hertz + " Hz, depth: " + depth + " %")
                .replace("RATE", rate + " fps")
                .replace("SHUTTER", degrees + " deg");
        double ripple = summed(hertz, depth / 100, rate, degrees / 360 / rate);
        assertThat(LookPlan.margin(plan)).isCloseTo(3 - ripple, within(0.12));
    }

    /// At 50 Hz mains 172.8 deg are clean at 24 fps and 180 deg at 25: every camera assistant's table.
    @Test
    void usualSettings_areClean() {
        for (String set : new String[] {"24 fps|172.8 deg", "25 fps|180 deg", "24 fps|1/50 s", "24 fps|1/100 s"}) {
            String plan = LookPlan.STEADY
                    .replace("PULSE", "pulse_rate: 100 Hz")
                    .replace("RATE", set.split("\\|")[0])
                    .replace("SHUTTER", set.split("\\|")[1]);
            assertThat(LookPlan.margin(plan)).as(set).isCloseTo(3, within(0.01));
        }
    }
}
