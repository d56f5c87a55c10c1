package plumeline.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.motion.Registration.Move;
import plumeline.motion.Registration.Start;
import plumeline.tidy.Outside;

/// Passes beside each other.
@Outside(
        source = "briefs A (shot A5) and B (shot B4) as a crew would hand them over",
        place = "Expected findings",
        kind = "worked example",
        printedDigits = 2)
final class RegistrationOutsideTest {
    /// mm/s, fps, mm a pixel, repeats in mm; px: A5, A5 slower with the slider's repeatability, B4.
    @ParameterizedTest
    @CsvSource({
        "40, 24, 0.073, 0, 11.4",
        "10, 120, 0.073, 0, 0.57",
        "10, 120, 0.073, 0.1, 1.94",
        "5, 25, 0.083, 0, 1.2",
        "10, 100, 0.083, 0, 0.6"
    })
    void briefs(double speed, double rate, double pixel, double repeats, double pixels) {
        Registration passes = new Registration(new Move(speed / pixel, rate, Start.FREE), repeats / pixel, 0, 0);
        assertThat(passes.sumPixels()).isEqualTo(pixels, within(0.01 * pixels));
    }

    /// 200 mm/s at 24 fps: half a frame is 4.1667 mm; 22.2222 px a mm by 100 mm at 1 m and 5 µm.
    @Test
    void halfAFrame() {
        Registration passes = new Registration(new Move(200 * 22.2222, 24, Start.FREE), 0, 0, 0);
        assertThat(passes.phasePixels()).isEqualTo(4.1667 * 22.2222, within(0.01));
    }

    @Test
    void advice_meetsTheLimitExactly() {
        Registration passes = new Registration(new Move(40 / 0.073, 24, Start.FREE), 1.37, 0.1, 0.2);
        double slower = passes.findSlower(2).orElseThrow();
        double rate = passes.findRate(2).orElseThrow();
        Move slow = new Move(40 / 0.073 / slower, 24, Start.FREE);
        assertThat(new Registration(slow, 1.37, 0.1, 0.2).sumPixels()).isEqualTo(2, within(1e-12));
        Move fast = new Move(40 / 0.073, rate, Start.FREE);
        assertThat(new Registration(fast, 1.37, 0.1, 0.2).sumPixels()).isEqualTo(2, within(1e-12));
        assertThat(passes.isMetTriggered(2)).isTrue();
        assertThat(new Registration(new Move(40 / 0.073, 24, Start.TRIGGERED), 1.37, 0.1, 0.2).sumPixels())
                .isEqualTo(1.67, within(1e-12));
        assertThat(passes.findSlower(1.6)).isEmpty();
        assertThat(passes.isMetTriggered(1.6)).isFalse();
        assertThat(passes.findSlower(20)).hasValue(1);
        assertThat(passes.findRate(20)).hasValue(24);
    }
}
