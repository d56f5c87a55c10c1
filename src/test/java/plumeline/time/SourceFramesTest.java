package plumeline.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import plumeline.time.Retime.Ease;
import plumeline.time.Retime.Key;

/// Holds, reverse, the inverse, and which captured frame is seen.
final class SourceFramesTest {
    @Test
    void aFifthOf120_isOneFrameEach_exactly() {
        SourceFrames frames = SourceFrames.of(Retime.constant(0.2, 24), 120, 20_000);
        for (int n = 0; n < frames.count(); n++) {
            assertThat(frames.position(n)).isEqualTo(n);
        }
    }

    @Test
    void halves_areShownUp() {
        // 48 fps at 10 % of 24 fps: 0.2 captured frames each, so halves never are met; at 25 % every second is one.
        SourceFrames frames = SourceFrames.of(Retime.constant(0.25, 24), 48, 9);
        assertThat(frames.position(1)).isEqualTo(0.5);
        assertThat(List.of(0, 1, 2, 3, 4).stream().map(frames::shown)).containsExactly(0L, 1L, 1L, 2L, 2L);
        assertThat(frames.phase(1)).isEqualTo(-0.5);
        assertThat(frames.repeated()).isEqualTo(4);
        assertThat(frames.skipped()).isZero();
        // A rate that no double holds: 7 % of 24000/1001 at 100 times its rate is 7 a frame.
        double rate = 24_000 / 1001.0;
        SourceFrames odd = SourceFrames.of(Retime.constant(0.07, rate), 50 * rate, 1000);
        assertThat(odd.position(999)).isEqualTo(3496.5);
        assertThat(odd.shown(999)).isEqualTo(3497);
        assertThat(odd.skipped()).isEqualTo(3497 - 999);
    }

    @Test
    void aHold_repeats_andComesOutWhereItWentIn() {
        Retime held = new Retime(
                List.of(new Key(0, 1), new Key(10, 1), new Key(10, 0), new Key(34, 0), new Key(34, 1)),
                Ease.STRAIGHT,
                24);
        assertThat(held.realSeconds(34)).isEqualTo(10 / 24.0);
        assertThat(held.realSeconds(44)).isEqualTo(20 / 24.0, within(1e-15));
        assertThat(held.frameAt(10 / 24.0, 44)).isEqualTo(10, within(1e-9));
        assertThat(held.speedAt(9.99)).isEqualTo(1);
        assertThat(held.speedAt(10)).isZero();
        assertThat(held.speedAt(34)).isEqualTo(1);
        assertThat(held.slowestSpeed(0, 44)).isEqualTo(1);
        assertThat(held.slowestSpeed(12, 30)).isZero();
        assertThat(held.rests(0, 44)).isTrue();
        assertThat(held.rests(0, 10)).isFalse();
        assertThat(SourceFrames.of(held, 24, 44).repeated()).isEqualTo(24);
    }

    @Test
    void backward_beginsAtItsLatestInstant() {
        Retime back = Retime.constant(-0.5, 24);
        assertThat(back.realSeconds(48)).isEqualTo(-1);
        assertThat(back.frameAt(-0.5, 48)).isEqualTo(24, within(1e-9));
        assertThat(back.spanSeconds(48)).isEqualTo(1);
        Retime filmed = back.fromEarliest(48);
        assertThat(filmed.realSeconds(0)).isEqualTo(1);
        assertThat(filmed.realSeconds(48)).isZero();
        assertThat(filmed.frameAt(0.25, 48)).isEqualTo(36, within(1e-9));
        assertThat(filmed.earliestSeconds(48)).isZero();
        assertThat(filmed.latestSeconds(48)).isEqualTo(1);
        SourceFrames frames = SourceFrames.of(back, 48, 48);
        assertThat(frames.shown(0)).isEqualTo(48);
        assertThat(frames.shown(47)).isEqualTo(1);
        assertThat(frames.repeated()).isZero();
    }

    @Test
    void thereAndBack_turnsWhereTheSpeedIsNothing() {
        Retime ramp = new Retime(List.of(new Key(0, 1), new Key(48, -1)), Ease.STRAIGHT, 24);
        assertThat(ramp.realSeconds(24)).isEqualTo(0.5, within(1e-12));
        assertThat(ramp.realSeconds(48)).isZero();
        assertThat(ramp.spanSeconds(48)).isEqualTo(0.5, within(1e-12));
        assertThat(ramp.spanSeconds(12)).isEqualTo(0.375, within(1e-12));
        assertThat(ramp.frameAt(0.375, 48)).isEqualTo(12, within(1e-9));
        assertThat(ramp.frameAt(0.51, 48)).isEqualTo(48);
        assertThat(ramp.frameAt(-0.1, 60)).isEqualTo(50.4, within(1e-9));
        assertThat(ramp.rests(0, 48)).isTrue();
        assertThat(ramp.rests(0, 20)).isFalse();
        assertThat(ramp.slowestSpeed(0, 12)).isEqualTo(0.5);
        assertThat(ramp.fastestSpeed(12, 48)).isEqualTo(1);
    }

    @Test
    void wildMaps_agreeWithSmallSteps_andTheInverseIsTheFirstTime() {
        SplittableRandom random = new SplittableRandom(20_261_130);
        for (int round = 0; round < 40; round++) {
            Ease ease = round % 2 == 0 ? Ease.SMOOTH : Ease.STRAIGHT;
            List<Key> keys = random.doubles(5, -2, 2)
                    .mapToObj(speed -> new Key(random.nextInt(5, 60), speed))
                    .sorted((a, b) -> Double.compare(a.frame(), b.frame()))
                    .toList();
            Retime wild = new Retime(keys, ease, 25);
            int steps = 400;
            double sum = 0;
            double most = 0;
            for (int n = 0; n < 70 * steps; n++) {
                sum += wild.speedAt((n + 0.5) / steps) / steps / 25;
                most = Math.max(most, sum);
            }
            assertThat(wild.realSeconds(70)).isEqualTo(sum, within(2e-4));
            assertThat(wild.latestSeconds(70)).isEqualTo(most, within(2e-4));
            double sought = 0.7 * wild.latestSeconds(70);
            double found = wild.frameAt(sought, 70);
            assertThat(wild.realSeconds(found)).as(keys.toString()).isEqualTo(sought, within(1e-9));
            for (double frame = 0; frame < found - 1e-6; frame += found / 500) {
                assertThat(wild.realSeconds(frame)).isLessThan(sought);
            }
        }
    }
}
