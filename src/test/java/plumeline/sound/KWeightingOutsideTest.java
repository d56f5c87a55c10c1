package plumeline.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plumeline.tidy.Outside;

/// The filters against the response that follows from the recommendation's tables, at 48 kHz and at other rates.
@Outside(
        source = "ITU-R BS.1770-5, Annex 1, Tables 1 and 2",
        place = "response worked out of the tables by numpy",
        kind = "standard",
        printedDigits = 5)
final class KWeightingOutsideTest {
    private static double decibels(int rate, double hertz) {
        double radians = 2 * Math.PI * hertz / rate;
        return 10
                * Math.log10(KWeighting.shelf(rate).power(radians)
                        * KWeighting.highPass(rate).power(radians));
    }

    @ParameterizedTest
    @CsvSource({
        "20, -13.2754",
        "50, -3.9341",
        "100, -1.1335",
        "200, -0.2649",
        "500, 0.0425",
        "997, 0.6910",
        "1000, 0.6977",
        "2000, 3.0713",
        "4000, 3.9680",
        "10000, 4.0419"
    })
    void response_at48kHz(double hertz, double expectedDecibels) {
        assertThat(decibels(48_000, hertz)).isEqualTo(expectedDecibels, within(1e-3));
        // The same by derivation, through another rate and back.
        Biquad there = KWeighting.shelf(44_100).at(44_100, 48_000);
        double radians = 2 * Math.PI * hertz / 48_000;
        assertThat(10
                        * Math.log10(
                                there.power(radians) / KWeighting.shelf(48_000).power(radians)))
                .isEqualTo(0, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(ints = {32_000, 44_100, 88_200, 96_000, 192_000})
    void response_atOtherRates_isThatAt48kHz(int rate) {
        int compared = 0;
        for (double hertz = 20; hertz <= 10_000; hertz *= 1.1) {
            assertThat(decibels(rate, hertz))
                    .as(hertz + " Hz")
                    .isEqualTo(decibels(48_000, hertz), within(rate < 44_100 ? 0.2 : 0.1));
            compared++;
        }
        assertThat(compared).isGreaterThan(60);
    }

    @Test
    void tone_readsAlikeAtEveryRate() {
        for (int rate : new int[] {22_050, 32_000, 44_100, 96_000, 192_000}) {
            Loudness found = Loudness.of(Tones.of(rate, 1000, Speaker.LEFT, Speaker.RIGHT)
                    .then(4, -23)
                    .sound());
            double allowed = rate < 44_100 ? 0.05 : 0.02;
            assertThat(Tones.value(found.integrated())).as("%s", rate).isEqualTo(-22.9933, within(allowed));
            assertThat(Tones.value(found.momentary())).isEqualTo(-22.9933, within(allowed));
        }
    }
}
