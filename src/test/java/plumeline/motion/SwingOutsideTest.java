package plumeline.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.tidy.Outside;

/// What goes on swinging.
@Outside(
        source = "the damped oscillator of control texts: settling by the envelope, -ln(s sqrt(1 - z2))/(z w), from"
                + " memory; and its equation stepped through here",
        kind = "closed form",
        printedDigits = 5)
final class SwingOutsideTest {
    @ParameterizedTest
    @CsvSource({"5, 0.05, 0.02, 2.4913", "8, 0.03, 0.01, 3.0542", "12, 0.05, 0.05, 0.79497"})
    void afterAStep(double hertz, double damping, double share, double seconds) {
        assertThat(new Swing(hertz, damping).stepSeconds(share)).isEqualTo(seconds, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({"4, 6, 0.03, 2.4515", "1, 6, 0.03, 1.2258", "10, 4, 0.02, 7.3388"})
    void toAQuarterOfAPixel(double from, double hertz, double damping, double seconds) {
        assertThat(new Swing(hertz, damping).seconds(from, 0.25)).isEqualTo(seconds, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({"0.40, 0", "0.45, 0.57316", "0.50, 0.81057"})
    void afterARampWithoutDamping(double ramp, double millimetres) {
        assertThat(new Swing(5, 0).residue(400, ramp, 0)).isEqualTo(millimetres, within(1e-4));
    }

    /// x'' + 2ζωx' + ω²x = −a(t) in small steps; then the envelope from place and speed.
    @ParameterizedTest
    @CsvSource({"5, 0.05, 0.45, 0", "5, 0, 0.5, 0.1", "3, 0.1, 0.61, 0.2", "9, 0.02, 0.2, 0.1"})
    void afterARamp_steppedThrough(double hertz, double damping, double ramp, double jerk) {
        double omega = 2 * Math.PI * hertz;
        double damped = omega * Math.sqrt(1 - damping * damping);
        int steps = 400_000;
        double h = ramp / steps;
        double x = 0;
        double v = 0;
        for (int i = 0; i < steps; i++) {
            double t = (i + 0.5) * h;
            double push = 400 * (jerk == 0 ? 1 : Math.min(1, Math.min(t, ramp - t) / jerk));
            double vMiddle = v + h / 2 * (-push - 2 * damping * omega * v - omega * omega * x);
            double xMiddle = x + h / 2 * v;
            x += h * vMiddle;
            v += h * (-push - 2 * damping * omega * vMiddle - omega * omega * xMiddle);
        }
        double size = Math.hypot(x, (v + damping * omega * x) / damped);
        assertThat(new Swing(hertz, damping).residue(400, ramp, jerk)).isEqualTo(size, within(1e-6));
    }

    @Test
    void withoutDamping_itNeverSettles() {
        assertThat(new Swing(5, 0).seconds(2, 1)).isInfinite();
        assertThat(new Swing(5, 0).seconds(1, 2)).isZero();
    }
}
