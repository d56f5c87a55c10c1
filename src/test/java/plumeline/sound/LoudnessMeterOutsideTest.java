package plumeline.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

/// The same noise, metered here and by a meter that others wrote, which keeps another filter at other rates than 48 kHz
/// and looks for peaks at four places a sample (two at 96 kHz); peaks are measured by Fourier too.
@Outside(
        source = "libebur128 1.2.6 (MIT), by src/test/resources/outside/sound/meter.py",
        place = "src/test/resources/outside/sound/meter.csv",
        kind = "program",
        printedDigits = 6)
final class LoudnessMeterOutsideTest {
    @Test
    void noise_readsAsInAnotherMeter() throws IOException {
        int compared = 0;
        for (String line : lines()) {
            String[] row = line.split(",");
            Loudness found = Loudness.of(noise(row));
            double filters = row[0].equals("48000") ? 1e-3 : 0.03;
            close(line, found.integrated(), row[5], filters);
            close(line, found.momentary(), row[6], filters);
            close(line, found.shortTerm(), row[7], filters);
            close(line, found.range(), row[8], 0.01);
            // Nothing is looked for at finer places than eight; white noise is up to half the rate, where both fall
            // off.
            double peak = Tones.value(found.truePeak());
            double exact = Double.parseDouble(row[10]);
            assertThat(peak).as(line).isBetween(exact - (row[3].equals("1.0") ? 0.9 : 0.1), exact + 0.05);
            assertThat(Math.abs(peak - exact)).isLessThan(Math.abs(Double.parseDouble(row[9]) - exact));
            compared++;
        }
        assertThat(compared).isEqualTo(6);
    }

    private static void close(String line, Level level, String expected, double allowed) {
        assertThat(Tones.value(level)).as(line).isEqualTo(Double.parseDouble(expected), within(allowed));
    }

    private static Sound noise(String[] row) {
        int rate = Integer.parseInt(row[0]);
        int channels = Integer.parseInt(row[1]);
        int count = rate * Integer.parseInt(row[2]);
        double soft = Double.parseDouble(row[3]);
        String[] levels = row[4].split(" ");
        float[][] rows = new float[channels][count];
        for (int c = 0; c < channels; c++) {
            long state = 7 + 10 * c;
            double y = 0;
            for (int i = 0; i < count; i++) {
                state = (1_103_515_245L * state + 12_345) & 0x7FFF_FFFF;
                y += soft * (state / 0x1p30 - 1 - y);
                double level = Double.parseDouble(levels[(int) (i / (0.7 * rate)) % levels.length]);
                rows[c][i] = (float) (y * Math.pow(10, level / 20));
            }
        }
        return new HeldSound(rate, Speaker.ofCount(channels), rows);
    }

    private static List<String> lines() throws IOException {
        var stream = LoudnessMeterOutsideTest.class.getResourceAsStream("/outside/sound/meter.csv");
        try (var reader =
                new BufferedReader(new InputStreamReader(Objects.requireNonNull(stream), StandardCharsets.UTF_8))) {
            return reader.lines().filter(line -> !line.startsWith("#")).toList();
        }
    }
}
