package plumeline.look;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.colour.Chromaticity;

/// Names of lights, as a crew says them.
final class WordsTest {
    /// Glow lamp, noon, shade; a candle's glow and a saturated yellow, which lies not far from whites, are none.
    @ParameterizedTest
    @CsvSource({
        "0.4369, 0.4041, warm white",
        "0.3302, 0.3391, white",
        "0.2807, 0.2883, cool white",
        "0.5857, 0.3931, orange",
        "0.4726, 0.4710, yellow",
        "0.3000, 0.6000, green",
        "0.1500, 0.0600, blue"
    })
    void lights_areNamed(double x, double y, String name) {
        assertThat(Words.hue(Chromaticity.ofXy(x, y))).isEqualTo(name);
    }

    @ParameterizedTest
    @CsvSource({"85, yellow", "165, green", "208, cyan", "275, blue", "345, rose", "30, red", "-90, blue"})
    void hues_areNamed(double degrees, String name) {
        assertThat(Words.hue(Math.toRadians(degrees))).isEqualTo(name);
    }
}
