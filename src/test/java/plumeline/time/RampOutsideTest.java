package plumeline.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.tidy.Outside;
import plumeline.time.Retime.Ease;
import plumeline.time.Retime.Key;

/// Ramps worked by hand: polynomials, mean speeds, counts.
@Outside(
        source = "closed forms worked apart from this code 2026-11-25: integrals of polynomials (any calculus text),"
                + " frames a second over frames a second, 360 deg a frame",
        kind = "closed form",
        printedDigits = 7)
final class RampOutsideTest {
    private static final List<Key> DOWN = List.of(new Key(0, 1), new Key(24, 0.2));
    private static final List<Key> WHOLE = List.of(new Key(0, 1), new Key(24, 0.2), new Key(72, 0.2), new Key(96, 1));

    @ParameterizedTest
    @CsvSource({
        "48, 24, 2",
        "60, 24, 2.5",
        "96, 24, 4",
        "100, 25, 4",
        "120, 24, 5",
        "240, 24, 10",
        "240, 25, 9.6",
        "500, 25, 20",
        "1000, 24, 41.6667",
        "1000, 25, 40"
    })
    void slowFactor(double captured, double played, double factor) {
        // Played at its own slowest without a repeat, a second of the table lasts so many times as long.
        Retime slow = Retime.constant(played / captured, played);
        assertThat(slow.frameAt(1, 1e6) / played).isEqualTo(factor, within(1e-4));
        SourceFrames frames = SourceFrames.of(slow, captured, 200);
        assertThat(frames.repeated()).isZero();
        assertThat(frames.skipped()).isZero();
    }

    @Test
    void aQuarterSecond_inFourSeconds_needs384() {
        assertThat(CaptureMode.leastRate(24, 0.25 / 4)).isEqualTo(384, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "24, 1, 24", "24, 0.5, 48", "24, 0.4, 60", "24, 0.25, 96", "24, 0.2, 120", "24, 0.1, 240", "24, 0.05, 480",
        "25, 1, 25", "25, 0.5, 50", "25, 0.4, 62.5", "25, 0.25, 100", "25, 0.2, 125", "25, 0.1, 250", "25, 0.05, 500"
    })
    void leastRate(double timeline, double speed, double least) {
        double computed = CaptureMode.leastRate(timeline, speed);
        assertThat(computed).isEqualTo(least, within(1e-9));
        assertThat(CaptureMode.isEnough(least, computed)).isTrue();
        Retime slow = Retime.constant(speed, timeline);
        assertThat(SourceFrames.of(slow, least, 1000).repeated()).isZero();
        assertThat(SourceFrames.of(slow, 0.99 * least, 1000).repeated()).isPositive();
    }

    @ParameterizedTest
    @CsvSource({
        "0.25, 0.103515625, 0.007080078125",
        "0.5, 0.5, 0.078125",
        "0.75, 0.896484375, 0.257080078125",
        "1, 1, 0.5"
    })
    void smooth_isTheQuintic(double u, double risen, double sum) {
        assertThat(Ease.SMOOTH.risen(u)).isEqualTo(risen, within(1e-12));
        assertThat(Ease.SMOOTH.sum(u)).isEqualTo(sum, within(1e-12));
        assertThat(Ease.STRAIGHT.risen(u)).isEqualTo(u);
        assertThat(Ease.STRAIGHT.sum(u)).isEqualTo(u * u / 2, within(1e-15));
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 0", "6, 5.4, 5.8640625", "12, 9.6, 10.5", "18, 12.6, 13.0640625", "24, 14.4, 14.4"})
    void fromRealTimeToAFifth(double frame, double straight, double smooth) {
        assertThat(24 * new Retime(DOWN, Ease.STRAIGHT, 24).realSeconds(frame)).isEqualTo(straight, within(1e-9));
        assertThat(24 * new Retime(DOWN, Ease.SMOOTH, 24).realSeconds(frame)).isEqualTo(smooth, within(1e-9));
        for (Ease ease : Ease.values()) {
            Retime ramp = new Retime(DOWN, ease, 24);
            assertThat(ramp.frameAt(ramp.realSeconds(frame), 24)).isEqualTo(frame, within(1e-9));
        }
    }

    @Test
    void downHeldAndUp_isOnePointSixSeconds() {
        for (Ease ease : Ease.values()) {
            Retime ramp = new Retime(WHOLE, ease, 24);
            assertThat(ramp.realSeconds(96)).isEqualTo(1.6, within(1e-12));
            assertThat(ramp.slowestSpeed(0, 96)).isEqualTo(0.2);
            SourceFrames frames = SourceFrames.of(ramp, 120, 97);
            assertThat(frames.position(24)).isEqualTo(72);
            assertThat(frames.position(48)).isEqualTo(96);
            assertThat(frames.position(72)).isEqualTo(120);
            assertThat(frames.position(96)).isEqualTo(192);
            assertThat(frames.repeated()).isZero();
            for (int n = 24; n < 72; n++) {
                assertThat(frames.shown(n)).isEqualTo(48 + n);
                assertThat(frames.phase(n)).isZero();
            }
        }
    }

    @Test
    void aClipFittedIntoAFixedLength() {
        // 48 frames' worth into 72: 12 down from real time, 48 held at 60 %, 12 up again.
        List<Key> keys = List.of(new Key(0, 1), new Key(12, 0.6), new Key(60, 0.6), new Key(72, 1));
        assertThat(24 * new Retime(keys, Ease.SMOOTH, 24).realSeconds(72)).isEqualTo(48, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "24, 180, 1, 180",
        "120, 180, 5, 36",
        "120, 360, 5, 72",
        "240, 180, 10, 18",
        "48, 180, 2, 90",
        "48, 360, 2, 180"
    })
    void theShutterThatIsSeen(double captured, double degrees, double step, double seen) {
        double radians = Math.toRadians(degrees);
        assertThat(Math.toDegrees(new PlayedShutter(radians, step).seenRadians()))
                .isEqualTo(seen, within(1e-9));
        // 360 · exposure · capture rate / step.
        double exposure = PlayedShutter.exposureSeconds(radians, captured);
        assertThat(360 * exposure * captured / step).isEqualTo(seen, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"5, 2.5", "10, 5", "4, 2"})
    void framesToAverage_forAHalfTurn(double step, double frames) {
        assertThat(new PlayedShutter(2 * Math.PI, step).framesToAverage(Math.PI))
                .isEqualTo(frames, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"180, 24, 48", "172.8, 24, 50", "180, 25, 50", "90, 120, 480", "180, 1000, 2000"})
    void exposure(double degrees, double rate, double below) {
        assertThat(1 / PlayedShutter.exposureSeconds(Math.toRadians(degrees), rate))
                .isEqualTo(below, within(1e-9));
    }

    @Test
    @Outside(
            source = "brief A as a crew would hand it over, shot A1; a stop is a factor of two (common practice)",
            place = "played at 200 %: open the shutter to 360 deg to keep smear natural",
            kind = "worked example",
            printedDigits = 3)
    void briefA_twiceAsFast_isOpenedAllTheWay() {
        PlayedShutter twice = new PlayedShutter(Math.PI, 2);
        assertThat(Math.toDegrees(twice.openedRadians(Math.PI))).isEqualTo(360, within(1e-9));
        assertThat(CaptureMode.lightStops(120, 24)).isEqualTo(-2.32, within(0.005));
        CaptureMode wide = new CaptureMode(120, 1);
        CaptureMode half = new CaptureMode(240, 0.5);
        List<CaptureMode> modes = List.of(half, new CaptureMode(24, 1), new CaptureMode(60, 1), wide);
        assertThat(CaptureMode.findLeast(modes, CaptureMode.leastRate(24, 0.2))).isEqualTo(Optional.of(wide));
        assertThat(CaptureMode.findLeast(modes, CaptureMode.leastRate(24, 0.15)))
                .isEqualTo(Optional.of(half));
        assertThat(CaptureMode.findLeast(modes, CaptureMode.leastRate(24, 0.05)))
                .isEmpty();
    }
}
