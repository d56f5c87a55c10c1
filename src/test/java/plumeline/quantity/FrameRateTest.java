package plumeline.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

final class FrameRateTest {
    private static FrameRate rate(String text) {
        return FrameRate.of(Quantities.get(text));
    }

    private static void check(String text, long numerator, long denominator) {
        assertThat(rate(text)).as(text).isEqualTo(new FrameRate(numerator, denominator));
    }

    @Test
    void broadcastRates_areTheirFractions() {
        check("23.976 fps", 24_000, 1001);
        check("23.98 fps", 24_000, 1001);
        check("29.97 fps", 30_000, 1001);
        check("47.952 fps", 48_000, 1001);
        check("47.95 fps", 48_000, 1001);
        check("59.94 fps", 60_000, 1001);
        check("119.88 fps", 120_000, 1001);
        check("24000/1001 fps", 24_000, 1001);
    }

    @Test
    void otherRates_areTakenAsWritten() {
        check("24 fps", 24, 1);
        check("25.0 fps", 25, 1);
        check("12.5 fps", 25, 2);
        check("1/2 fps", 1, 2);
        check("2 1/2 fps", 5, 2);
        check("23.97 fps", 2397, 100);
        check("1e2 fps", 100, 1);
        check("0.001 fps", 1, 1000);
    }

    @Test
    void anHourOfFrames_tellsFractionFromDecimals() {
        double frames = 24 * 3600;
        assertThat(rate("23.976 fps").secondsOf(frames)).isEqualTo(3603.6);
        assertThat(frames / 23.976).isCloseTo(3603.6036, within(1e-4));
    }

    @Test
    void siOfARate_isTheFractionToo() {
        assertThat(Quantities.get("23.976 fps").si()).isEqualTo(24_000 / 1001.0);
        assertThat(rate("29.97 fps").framesPerSecond()).isEqualTo(30_000 / 1001.0);
        assertThat(Quantities.get("25 fps").si()).isEqualTo(25);
    }

    @Test
    void text_readsBackAsAnEqualRate() {
        for (String text : new String[] {
            "24 fps", "23.976 fps", "29.97 fps", "47.952 fps", "59.94 fps", "119.88 fps", "25/2 fps", "96000/1001 fps"
        }) {
            assertThat(rate(text).toText()).isEqualTo(text);
            assertThat(rate(rate(text).toText())).isEqualTo(rate(text));
        }
    }

    @Test
    void commonFactors_areTakenOut() {
        assertThat(new FrameRate(50, 2)).isEqualTo(new FrameRate(25, 1));
    }

    /// Every rate that reads can be made exact: none gets past the reader that would overflow behind it.
    @Test
    void ratesOfTooManyDigits_areRefused() {
        for (String text : List.of(
                "1/99999999999999999999999 fps",
                "0.0000000000000000001 fps",
                "1e-30 fps",
                "123456789.123456789123456789 fps",
                "1e-400 fps")) {
            assertThat(Quantities.read(text, Kind.RATE))
                    .as(text)
                    .isEqualTo(new Reading.Refused(text, "a frame rate of at most 18 digits", "Try 24 fps."));
        }
        check("0.000000000000000001 fps", 1, 1_000_000_000_000_000_000L);
        check("9999999/100000007 fps", 9_999_999, 100_000_007);
        check("1e15 fps", 1_000_000_000_000_000L, 1);
        assertThat(Quantities.get("0.0 fps").si()).isZero();
    }

    @Test
    void ratesThatAreNone_areABug() {
        for (String text : new String[] {"0 fps", "-24 fps", "24 mm"}) {
            assertThatThrownBy(() -> rate(text)).as(text).isInstanceOf(IllegalArgumentException.class);
        }
    }
}
