package plumeline.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import plumeline.quantity.FrameRate;
import plumeline.tidy.Outside;

/// The guide track measured: where its clicks begin, how its whooshes follow the speed, how it pans.
@Outside(
        source = "own arithmetic",
        place = "onsets; zeros of a sine; the middle of a band; equal power",
        kind = "closed form")
final class GuideOutsideTest {
    private static final SampleGrid GRID = Guide.grid(new FrameRate(30_000, 1001));

    private static double[][] rows(Sound sound) {
        double[][] rows = new double[2][(int) sound.samples()];
        sound.read(0, (int) sound.samples(), rows);
        return rows;
    }

    private static Guide.Heard heard(long sample, Voice voice) {
        return new Guide.Heard(sample, voice, Pan.MIDDLE, 0);
    }

    @Test
    void clicks_beginOnTheirBeats() {
        TempoGrid tempo = new TempoGrid(new BigDecimal("120"), BigDecimal.ZERO, GRID);
        List<Guide.Heard> events = new ArrayList<>();
        for (int beat = 0; beat < 20; beat++) {
            events.add(heard(tempo.sample(beat), new Voice.Click(beat % 4 == 0 ? Voice.Beat.FIRST : Voice.Beat.OTHER)));
        }
        double[] left = rows(Guide.of(GRID, 300, events).sound())[0];
        assertThat(left).hasSize(480_480);
        for (int beat = 0; beat < 20; beat++) {
            int at = beat * 24_000;
            double before = power(left, Math.max(0, at - 2400), at);
            double after = power(left, at, at + 480);
            assertThat(before).isLessThan(1e-6);
            assertThat(after).isGreaterThan(1e-3);
            // 1600 Hz crosses zero 32 times in 10 ms, 1000 Hz 20 times.
            assertThat(zeros(left, at + 1, at + 480)).isBetween(beat % 4 == 0 ? 30 : 18, beat % 4 == 0 ? 33 : 21);
        }
    }

    /// Speed falls from three times real time to a half and rises again; level and pitch do as well.
    @Test
    void whoosh_followsItsSpeed() {
        List<Double> speeds = IntStream.range(0, 300)
                .mapToObj(n -> 0.5 + 2.5 * Math.pow((n - 150) / 150.0, 2))
                .toList();
        double[] left = rows(
                Guide.of(GRID, 300, List.of(heard(0, new Voice.Whoosh(speeds)))).sound())[0];
        int compared = 0;
        double full = 0.09 / Math.sqrt(2);
        for (int n = 5; n < 290; n += 10) {
            int from = (int) GRID.sample(n);
            int to = (int) GRID.sample(n + 10);
            double share = speeds.subList(n, n + 10).stream()
                            .mapToDouble(v -> v)
                            .average()
                            .orElseThrow()
                    / 3;
            double level = 20 * Math.log10(Math.sqrt(power(left, from, to)) / (full * share));
            assertThat(level).as("frame " + n).isBetween(-2.5, 2.5);
            assertThat(middleHertz(left, from, to) / (1800 * share))
                    .as("frame " + n)
                    .isBetween(0.7, 1.4);
            compared++;
        }
        assertThat(compared).isEqualTo(29);
        double slow = middleHertz(left, (int) GRID.sample(140), (int) GRID.sample(160));
        double fast = middleHertz(left, (int) GRID.sample(2), (int) GRID.sample(12));
        assertThat(fast / slow).isBetween(4.0, 7.0);
    }

    @Test
    void backwardSpeed_soundsAsForward_andAHoldIsSilent() {
        List<Double> back = IntStream.range(0, 60).mapToObj(_ -> -1.5).toList();
        List<Double> still = IntStream.range(0, 60).mapToObj(_ -> 0.0).toList();
        double[] left = rows(
                Guide.of(GRID, 60, List.of(heard(0, new Voice.Whoosh(back)))).sound())[0];
        assertThat(10 * Math.log10(power(left, 2000, 90_000) / (0.09 * 0.09 / 2)))
                .isEqualTo(0, within(1.5));
        assertThat(power(
                        rows(Guide.of(GRID, 60, List.of(heard(0, new Voice.Whoosh(still))))
                                .sound())[0],
                        0,
                        96_000))
                .isZero();
    }

    @Test
    void pan_isOfEqualPower() {
        int compared = 0;
        for (double pan = -1; pan <= 1; pan += 0.25) {
            Guide.Heard tone = new Guide.Heard(0, new Voice.Tone(48_048), new Pan(pan, pan, pan, 0.5), 0);
            double[][] rows = rows(Guide.of(GRID, 30, List.of(tone)).sound());
            double left = power(rows[0], 2000, 46_000);
            double right = power(rows[1], 2000, 46_000);
            assertThat(left + right).isEqualTo(0.15 * 0.15 / 2, within(2e-5));
            assertThat(Math.atan2(Math.sqrt(right), Math.sqrt(left))).isEqualTo((pan + 1) * Math.PI / 4, within(1e-6));
            compared++;
        }
        assertThat(compared).isEqualTo(9);
        Pan across = new Pan(-1, 0.5, 1, 0.25);
        assertThat(across.at(0)).isEqualTo(-1);
        assertThat(across.at(0.125)).isEqualTo(-0.25);
        assertThat(across.at(0.25)).isEqualTo(0.5);
        assertThat(across.at(1)).isEqualTo(1);
    }

    @Test
    void everything_atOnce_staysUnderThreeDecibelsBelowFullScale_andIsTheSameAgain() {
        List<Double> speeds =
                IntStream.range(0, 120).mapToObj(n -> 0.2 + n / 60.0).toList();
        List<Guide.Heard> events = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            events.add(heard(4000, new Voice.Click(Voice.Beat.FIRST)));
            events.add(heard(0, new Voice.Whoosh(speeds)));
            events.add(heard(100, new Voice.Pour(90_000)));
            events.add(heard(-500, new Voice.Fizz(190_000)));
            events.add(heard(300, new Voice.Tone(30_000)));
            events.add(heard(4000, new Voice.Tick()));
        }
        Guide guide = Guide.of(GRID, 120, events);
        assertThat(guide.loweredDecibels()).isGreaterThan(3);
        double peak = Tones.value(Loudness.of(guide.sound()).samplePeak());
        assertThat(peak).isBetween(-3.6, -3.5);
        assertThat(Wav.write24(guide.sound()))
                .isEqualTo(Wav.write24(Guide.of(GRID, 120, events).sound()));
        assertThat(Guide.of(GRID, 120, events.subList(0, 1)).loweredDecibels()).isZero();
    }

    /// A pour's pitch falls, fizz is high.
    @Test
    void placeholders_areToldApart() {
        double[] pour = rows(
                Guide.of(GRID, 60, List.of(heard(0, new Voice.Pour(96_000)))).sound())[0];
        double[] fizz = rows(
                Guide.of(GRID, 60, List.of(heard(0, new Voice.Fizz(96_000)))).sound())[0];
        assertThat(zeros(pour, 1000, 20_000)).isGreaterThan((int) (1.6 * zeros(pour, 70_000, 89_000)));
        assertThat(zeros(fizz, 1000, 20_000)).isGreaterThan(4 * zeros(pour, 1000, 20_000));
    }

    private static double power(double[] row, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += row[i] * row[i];
        }
        return to == from ? 0 : sum / (to - from);
    }

    /// The middle of a band that is even on a scale of octaves: each pitch weighs by its power (Goertzel).
    private static double middleHertz(double[] row, int from, int to) {
        double sum = 0;
        double weights = 0;
        for (double hertz = 50; hertz < 10_000; hertz *= 1.03) {
            double factor = 2 * Math.cos(2 * Math.PI * hertz / 48_000);
            double s1 = 0;
            double s2 = 0;
            for (int i = from; i < to; i++) {
                double s0 = row[i] + factor * s1 - s2;
                s2 = s1;
                s1 = s0;
            }
            double power = s1 * s1 + s2 * s2 - factor * s1 * s2;
            sum += power * Math.log(hertz);
            weights += power;
        }
        return Math.exp(sum / weights);
    }

    private static int zeros(double[] row, int from, int to) {
        int count = 0;
        for (int i = from + 1; i < to; i++) {
            count += row[i - 1] < 0 != row[i] < 0 ? 1 : 0;
        }
        return count;
    }
}
