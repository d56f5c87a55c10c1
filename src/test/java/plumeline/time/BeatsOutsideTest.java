package plumeline.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.quantity.FrameRate;
import plumeline.tidy.Outside;

/// Beats on frames, worked by hand: an interval is 60 seconds over the tempo.
@Outside(
        source = "musical arithmetic: 60 s over beats a minute, times the rate; tables worked by hand 2026-11-25",
        kind = "worked example",
        printedDigits = 8)
final class BeatsOutsideTest {
    private static Beats beats(String tempo, long above, long below) {
        return new Beats(new BigDecimal(tempo), BigDecimal.ZERO, new FrameRate(above, below));
    }

    private static List<Long> frames(Beats beats, int count, int step) {
        return IntStream.range(0, count)
                .mapToObj(k -> beats.frame((long) k * step))
                .toList();
    }

    @ParameterizedTest
    @CsvSource({"24, 1, 12", "25, 1, 12.5", "24000, 1001, 11.988012", "30000, 1001, 14.985015", "30, 1, 15", "50, 1, 25"
    })
    void framesPerBeat_at120(long above, long below, double frames) {
        assertThat(beats("120", above, below).intervalFrames()).isEqualTo(frames, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({
        "24, 180 144 120 96 90 80 72 60, 8 10 12 15 16 18 20 24",
        "25, 150 125 100 75 60, 10 12 15 20 25",
        "30, 150 120 100 90 75, 12 15 18 20 24"
    })
    void tempos_withWholeFrames(long rate, String tempos, String frames) {
        String[] each = tempos.split(" ");
        for (int i = 0; i < each.length; i++) {
            Beats beats = beats(each[i], rate, 1);
            assertThat(beats.isWhole()).isTrue();
            assertThat(beats.intervalFrames()).isEqualTo(Double.parseDouble(frames.split(" ")[i]));
            assertThat(beats.driftFrames(1000)).isZero();
        }
    }

    @Test
    void beats_at128_landHalvesUp_andDontDrift() {
        Beats film = beats("128", 24, 1);
        assertThat(frames(film, 17, 1))
                .containsExactly(
                        0L, 11L, 23L, 34L, 45L, 56L, 68L, 79L, 90L, 101L, 113L, 124L, 135L, 146L, 158L, 169L, 180L);
        // Beats by elevens come to 176 instead.
        assertThat(film.driftFrames(16)).isEqualTo(176 - 180);
        assertThat(frames(beats("128", 25, 1), 9, 1)).containsExactly(0L, 12L, 23L, 35L, 47L, 59L, 70L, 82L, 94L);
        assertThat(frames(beats("100", 24, 1), 11, 1))
                .containsExactly(0L, 14L, 29L, 43L, 58L, 72L, 86L, 101L, 115L, 130L, 144L);
    }

    @Test
    void beats_at2997() {
        assertThat(frames(beats("120", 30_000, 1001), 9, 8))
                .containsExactly(0L, 120L, 240L, 360L, 480L, 599L, 719L, 839L, 959L);
    }

    @Test
    void barNine_at124() {
        assertThat(beats("124", 25, 1).position(32)).isEqualTo(387.0968, within(1e-4));
        assertThat(beats("124", 25, 1).position(32) / 25).isEqualTo(15.483871, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"96, 48", "100, 50", "120, 60", "128, 64", "140, 70"})
    void beats_inThirtySeconds(String tempo, long count) {
        assertThat(beats(tempo, 24, 1).frame(count)).isEqualTo(720);
    }

    @Test
    @Outside(
            source = "briefs A and B as a crew would hand them over",
            place = "Crew/time: 12 frames a beat, 40 beats; 15 frames a beat, 25 beats",
            kind = "worked example")
    void theBriefsFilms() {
        assertThat(beats("120", 24, 1).frame(40)).isEqualTo(480);
        assertThat(beats("100", 25, 1).frame(25)).isEqualTo(375);
    }
}
