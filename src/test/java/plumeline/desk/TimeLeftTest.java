package plumeline.desk;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

/// What is said of long work, by a clock that the test turns.
final class TimeLeftTest {
    private final AtomicLong nanos = new AtomicLong(77);
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final TimeLeft left = new TimeLeft(
            "ink",
            new Console(new ByteArrayInputStream(new byte[0]), new ByteArrayOutputStream(), err),
            nanos::get,
            () -> "; more");

    private String hear(double seconds, double share) {
        nanos.set(77 + Math.round(seconds * 1e9));
        err.reset();
        left.hear(share);
        return err.toString(UTF_8);
    }

    @Test
    void firstSecond_saysNothing() {
        assertThat(hear(0, 0)).isEmpty();
        assertThat(hear(0.9, 0.5)).isEmpty();
    }

    @Test
    void evenWork_saysHowLongIsLeft() {
        hear(0, 0);
        assertThat(hear(1, 0.02)).isEqualTo("plumeline: ink 2 %; more\n");
        assertThat(hear(5.9, 0.118)).isEmpty();
        assertThat(hear(6, 0.125)).isEqualTo("plumeline: ink 12 %, about 42 s left; more\n");
    }

    @Test
    void longWork_isToldInMinutesAndMoreSeldom() {
        hear(0, 0);
        hear(1, 0.001);
        assertThat(hear(100, 0.1)).isEqualTo("plumeline: ink 10 %, about 15 min left; more\n");
        assertThat(hear(119, 0.119)).isEmpty();
        assertThat(hear(120, 0.12)).startsWith("plumeline: ink 12 %, about 15 min left");
    }

    /// Less than a hundredth tells no pace.
    @Test
    void slowStart_saysHowFarOnly() {
        hear(0, 0);
        assertThat(hear(2, 0.009)).isEqualTo("plumeline: ink 0 %; more\n");
    }

    /// The first second of 3,529 files: lists and sounds first, 1.5 % of them, then masks, which are quick.
    @Test
    void oddFirstPieces_areNoPace() {
        hear(0, 0);
        assertThat(hear(1.1, 0.015)).isEqualTo("plumeline: ink 1 %; more\n");
    }

    /// Work that was begun earlier comes in a leap; the pace is that since.
    @Test
    void workTakenUpAgain_isNoPace() {
        hear(0.01, 0.6);
        assertThat(hear(10, 0.7)).isEqualTo("plumeline: ink 70 %, about 30 s left; more\n");
    }

    /// The pace is that of the last lines, not of the beginning.
    @Test
    void workThatSlowsDown_isToldByItsLastPace() {
        hear(0, 0);
        double seconds = 0;
        double share = 0;
        for (int line = 0; line < 6; line++) {
            seconds += 10 + 0.2 * seconds;
            share += 0.1;
            hear(seconds, share);
        }
        // From the oldest line that counts (10 s, a tenth) to here: half of it in 109.3 s, four tenths are left.
        assertThat(Math.round(seconds)).isEqualTo(99);
        assertThat(hear(seconds + 20, 0.6)).isEqualTo("plumeline: ink 60 %, about 87 s left; more\n");
    }

    @Test
    void end_isNotAnnounced() {
        hear(0, 0);
        assertThat(hear(50, 1)).isEmpty();
    }
}
