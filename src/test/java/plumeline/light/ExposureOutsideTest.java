package plumeline.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.tidy.Outside;

/// Needed light against published exposure values and rules of the trade.
@Outside(
        source = "exposure values of a free encyclopedia's table; worked examples; common practice",
        kind = "worked example")
final class ExposureOutsideTest {
    private static Exposure plain(double constant, double number, double seconds, double sensitivity) {
        return new Exposure(constant, number, seconds, sensitivity, 0, 1, 0);
    }

    /// Illuminance of exposure values at ISO 100 with C 250: 2.5 lx by 2 to the value (the article "Exposure value" of
    /// a free encyclopedia, its table 3).
    @ParameterizedTest
    @CsvSource({"-4, 0.156", "0, 2.5", "5, 80", "10, 2560", "14, 40960"})
    void exposureValues(int value, double lux) {
        double seconds = 1 / Math.pow(2, value);
        assertThat(plain(250, 1, seconds, 100).neededLux()).isCloseTo(lux, within(0.003 * lux));
    }

    /// Worked examples: f/2.8, 1/48 s, ISO 100; f/4, 1/50 s, ISO 800, C 330; f/16 at 1/100 s, ISO 100.
    @Test
    void workedExamples() {
        assertThat(plain(250, 2.8, 1.0 / 48, 100).neededLux()).isCloseTo(940.8, within(1e-9));
        assertThat(plain(330, 4, 1.0 / 50, 800).neededLux()).isCloseTo(330, within(1e-9));
        assertThat(plain(250, 16, 1.0 / 100, 100).neededLux()).isCloseTo(64000, within(1e-6));
    }

    /// "100 footcandles at ISO 100 is f/2.8" at 24 frames and 180 deg (common practice): 1076 lx, within a fifth of a
    /// stop.
    @Test
    void footcandles() {
        assertThat(plain(250, 2.8, 1.0 / 48, 100).marginStops(100 * 10.76391)).isBetween(0.0, 0.2);
    }

    /// Close focus: twice the extension costs two stops; a filter of one stop another.
    @Test
    void losses() {
        double plain = plain(250, 8, 1.0 / 50, 800).neededLux();
        assertThat(new Exposure(250, 8, 1.0 / 50, 800, 1, 1, 1).neededLux()).isCloseTo(8 * plain, within(1e-9));
        assertThat(plain(250, 8, 1.0 / 50, 800).marginStops(plain / 4)).isCloseTo(-2, within(1e-12));
    }
}
