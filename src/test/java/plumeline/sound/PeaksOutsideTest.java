package plumeline.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.tidy.Outside;

/// True peaks of the standard's signals, within its tolerances.
@Outside(
        source = "EBU Tech 3341 v4 (2023), Table 1; ITU-R BS.1770-5, Annex 2, Attachment 1",
        place = "signals 15 to 23; the table of worst under-reading",
        kind = "standard")
final class PeaksOutsideTest {
    private static final double OVER = 0.2;
    private static final double UNDER = 0.4;

    private static void check(Sound sound, double expectedDecibels) {
        assertThat(Tones.value(Loudness.of(sound).truePeak()))
                .isBetween(expectedDecibels - UNDER, expectedDecibels + OVER);
    }

    @ParameterizedTest
    @CsvSource({
        "4, 0.50, 0, -6.0, -6.0206",
        "4, 0.50, 45, -6.0, -9.0309",
        "6, 0.50, 60, -6.0, -7.2700",
        "8, 0.50, 67.5, -6.0, -6.7083",
        "4, 1.41, 45, 3.0, -0.0259"
    })
    void signals15To19(double divisor, double peak, double phase, double expected, double sample) {
        Sound sound = Tones.faded(48_000, 1 / divisor, peak, phase);
        check(sound, expected);
        assertThat(Tones.value(Loudness.of(sound).samplePeak())).isEqualTo(sample, within(1e-3));
        // Far closer than asked.
        assertThat(Tones.value(Loudness.of(sound).truePeak())).isEqualTo(20 * Math.log10(peak), within(0.02));
    }

    /// One period of fs/4 of full scale in a sine of fs/6, made at four times the rate and taken down from there.
    @Test
    void signals20To23() {
        for (int offset = 0; offset < 4; offset++) {
            float[] row = ofFour(offset);
            check(new HeldSound(48_000, List.of(Speaker.LEFT, Speaker.RIGHT), row, row.clone()), 0);
        }
    }

    private static float[] ofFour(int offset) {
        int four = 4 * 4800;
        double[] high = new double[four];
        int middle = four / 2 / 24 * 24;
        for (int i = 0; i < four; i++) {
            boolean loud = i >= middle && i < middle + 16;
            double fade = Math.min(1, Math.min(i, four - i) / 1920.0);
            double phase = i < middle ? i / 24.0 : (i - middle - 16) / 24.0;
            high[i] = loud ? Math.sin(2 * Math.PI * (i - middle) / 16.0) : 0.5 * fade * Math.sin(2 * Math.PI * phase);
        }
        float[] row = new float[4800];
        int side = 4 * 64;
        for (int i = 0; i < row.length; i++) {
            int at = 4 * i + offset;
            double sum = 0;
            for (int k = Math.max(0, at - side); k < Math.min(four, at + side); k++) {
                double x = (k - at) / 4.0;
                double window = 0.5 + 0.5 * Math.cos(Math.PI * (k - at) / side);
                sum += high[k] * window * (x == 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x)) / 4;
            }
            row[i] = (float) sum;
        }
        return row;
    }

    /// A tone that peaks half-way between two of the eight places reads as much too low as the table says, no more.
    @ParameterizedTest
    @CsvSource({"0.45, 0.136", "0.40, 0.1075"})
    void worstUnderReading(double perSample, double worstDecibels) {
        int count = 4800;
        float[] row = new float[count];
        for (int i = 0; i < count; i++) {
            // Steady in the middle only once, so that no other peak comes nearer to a place.
            double fade = Math.exp(-Math.pow((i - count / 2 - 1 / 16.0) / 400, 2));
            row[i] = (float) (0.5 * fade * Math.cos(2 * Math.PI * perSample * (i - count / 2 - 1 / 16.0)));
        }
        double found = Tones.value(
                Loudness.of(new HeldSound(48_000, List.of(Speaker.CENTRE), row)).truePeak());
        assertThat(20 * Math.log10(0.5) - found).isBetween(-0.01, worstDecibels + 0.01);
    }

    @Test
    void steadyLevelAndLonePulse_readAsTheyAre() {
        float[] steady = new float[9600];
        java.util.Arrays.fill(steady, 1000, 8600, 0.25F);
        float[] pulse = new float[9600];
        pulse[4000] = 0.5F;
        Sound sound = new HeldSound(48_000, List.of(Speaker.CENTRE), pulse);
        assertThat(Tones.value(Loudness.of(sound).truePeak())).isEqualTo(20 * Math.log10(0.5), within(1e-9));
        // An edge overshoots by Gibbs's 9 % of its height.
        double edge = Tones.value(Loudness.of(new HeldSound(48_000, List.of(Speaker.CENTRE), steady))
                .truePeak());
        assertThat(Math.pow(10, edge / 20) / 0.25).isBetween(1.05, 1.16);
    }
}
