package plumeline.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.quantity.FrameRate;
import plumeline.tidy.Outside;
import plumeline.time.Beats;

/// Samples a frame, and beats in samples.
@Outside(
        source = "C. Poynton, Digital Video and HD; a public digital-television fact book; SMPTE 272 from memory",
        place = "samples a frame at 48 and 44.1 kHz; the run of five at 29.97",
        kind = "handbook")
final class SampleGridOutsideTest {
    @ParameterizedTest
    @CsvSource({
        "48000, 24000, 1001, 1, 2002",
        "48000, 24, 1, 1, 2000",
        "48000, 25, 1, 1, 1920",
        "48000, 30000, 1001, 5, 8008",
        "48000, 30, 1, 1, 1600",
        "48000, 48000, 1001, 1, 1001",
        "48000, 48, 1, 1, 1000",
        "48000, 50, 1, 1, 960",
        "48000, 60000, 1001, 5, 4004",
        "48000, 60, 1, 1, 800",
        "44100, 25, 1, 1, 1764",
        "44100, 30000, 1001, 100, 147147",
        "96000, 24000, 1001, 1, 4004"
    })
    void samples_inSoManyFrames(int samples, long above, long below, long frames, long expected) {
        SampleGrid grid = new SampleGrid(samples, new FrameRate(above, below));
        assertThat(grid.sample(frames)).isEqualTo(expected);
        assertThat(grid.sample(1_000_000 * frames)).isEqualTo(1_000_000 * expected);
        assertThat(grid.sample(-frames)).isEqualTo(-expected);
    }

    @Test
    void runOfFive_at2997() {
        SampleGrid grid = new SampleGrid(48_000, new FrameRate(30_000, 1001));
        List<Long> lengths = new ArrayList<>();
        for (long frame = 0; frame < 10; frame++) {
            lengths.add(grid.sample(frame + 1) - grid.sample(frame));
        }
        assertThat(lengths).containsExactly(1602L, 1601L, 1602L, 1601L, 1602L, 1602L, 1601L, 1602L, 1601L, 1602L);
    }

    @Test
    void frameAt_isWhereItsSamplesLie() {
        for (long above : new long[] {24_000, 30_000, 60_000, 24_024}) {
            SampleGrid grid = new SampleGrid(48_000, new FrameRate(above, 1001));
            for (long frame = -40; frame < 400; frame++) {
                assertThat(grid.frameAt(grid.sample(frame))).isEqualTo(frame);
                assertThat(grid.frameAt(grid.sample(frame + 1) - 1)).isEqualTo(frame);
            }
        }
    }

    @Test
    void beats_fallOnTheirOwnSamples() {
        // 128 bpm: 60 · 48000 / 128 = 22500 samples a beat; at 24 frames a second 11.25 frames.
        TempoGrid grid = new TempoGrid(
                new BigDecimal("128"), new BigDecimal("0.5"), new SampleGrid(48_000, new FrameRate(24, 1)));
        assertThat(grid.sample(0)).isEqualTo(24_000);
        assertThat(grid.sample(16)).isEqualTo(24_000 + 16 * 22_500);
        assertThat(grid.frame(16)).isEqualTo(12 + 180);
        assertThat(grid.firstFrom(24_001)).isEqualTo(1);
        assertThat(grid.firstFrom(24_000)).isZero();
        assertThat(grid.firstFrom(0)).isEqualTo(-1);
        // 124 bpm: beat 32 at 15.483871 s, 743 225.8 samples.
        TempoGrid odd =
                new TempoGrid(new BigDecimal("124"), BigDecimal.ZERO, new SampleGrid(48_000, new FrameRate(25, 1)));
        assertThat(odd.sample(32)).isEqualTo(743_226);
        assertThat(odd.frame(32)).isEqualTo(387);
        TempoGrid same = TempoGrid.of(
                new Beats(new BigDecimal("124"), BigDecimal.ZERO, new FrameRate(25, 1)),
                new SampleGrid(48_000, new FrameRate(25, 1)));
        assertThat(same.sample(32)).isEqualTo(743_226);
        assertThat(same.frame(32)).isEqualTo(387);
    }
}
