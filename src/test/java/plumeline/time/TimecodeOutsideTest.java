package plumeline.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plumeline.quantity.FrameRate;
import plumeline.tidy.Outside;
import plumeline.time.Timecode.Counting;
import plumeline.time.Timecode.Meaning;

/// Labels and frames as others print them.
@Outside(
        source = "an open library for timeline interchange (Apache-2.0), its own tests; npm smpte-timecode 1.3.6,"
                + " run 2026-11-25; SMPTE ST 12-1, from memory",
        place = "timecode at 24, 23.976, 29.97 with and without drop-frame; labels refused",
        kind = "other program")
final class TimecodeOutsideTest {
    private static final Timecode DROP = timecode(30_000, 1001, Counting.DROP);
    private static final Timecode FULL = timecode(30_000, 1001, Counting.NON_DROP);
    private static final Timecode TWICE = timecode(60_000, 1001, Counting.DROP);
    private static final Timecode FILM = timecode(24, 1, Counting.NON_DROP);

    private static Timecode timecode(long above, long below, Counting counting) {
        return new Timecode(new FrameRate(above, below), counting);
    }

    private static void check(Timecode timecode, long frame, String label) {
        assertThat(timecode.label(frame)).isEqualTo(label);
        assertThat(timecode.read(label)).isEqualTo(new Meaning.Frame(frame));
    }

    @ParameterizedTest
    @CsvSource({
        "24000, 1001, 24, 1440, 14400, 86400, 2073600",
        "24, 1, 24, 1440, 14400, 86400, 2073600",
        "25, 1, 25, 1500, 15000, 90000, 2160000",
        "30000, 1001, 30, 1800, 18000, 108000, 2592000",
        "30, 1, 30, 1800, 18000, 108000, 2592000",
        "48, 1, 48, 2880, 28800, 172800, 4147200",
        "50, 1, 50, 3000, 30000, 180000, 4320000",
        "60000, 1001, 60, 3600, 36000, 216000, 5184000",
        "60, 1, 60, 3600, 36000, 216000, 5184000"
    })
    void frames_ofRoundLabels(long above, long below, long second, long minute, long ten, long hour, long day) {
        Timecode timecode = timecode(above, below, Counting.NON_DROP);
        check(timecode, second, "00:00:01:00");
        check(timecode, minute, "00:01:00:00");
        check(timecode, ten, "00:10:00:00");
        check(timecode, hour, "01:00:00:00");
        assertThat(timecode.framesPerDay()).isEqualTo(day);
    }

    @ParameterizedTest
    @CsvSource({
        "1799, 00:00:59;29", "1800, 00:01:00;02", "17982, 00:10:00;00", "107892, 01:00:00;00",
        "10789, 00:05:59;29", "10790, 00:06:00;02", "17981, 00:09:59;29", "17983, 00:10:00;01",
        "17984, 00:10:00;02", "1084319, 10:03:00;05", "8991, 00:04:59;29", "8992, 00:05:00;02",
        "215783, 01:59:59;29", "215784, 02:00:00;00", "1084315, 10:02:59;29", "1084316, 10:03:00;02",
        "1000000, 09:16:06;22", "109690, 01:00:59;28", "109694, 01:01:00;04", "125874, 01:10:00;00",
        "125875, 01:10:00;01", "109720, 01:01:01;00", "2589407, 23:59:59;29"
    })
    void dropFrame_at2997(long frame, String label) {
        check(DROP, frame, label);
    }

    @ParameterizedTest
    @CsvSource({
        "3599, 00:00:59;59",
        "3600, 00:01:00;04",
        "35964, 00:10:00;00",
        "215784, 01:00:00;00",
        "1084319, 05:01:30;03"
    })
    void dropFrame_at5994(long frame, String label) {
        check(TWICE, frame, label);
        assertThat(TWICE.framesPerDay()).isEqualTo(5_178_816);
    }

    @ParameterizedTest
    @CsvSource({
        "10789, 00:05:59:19", "10790, 00:05:59:20", "17981, 00:09:59:11", "17982, 00:09:59:12",
        "17983, 00:09:59:13", "17984, 00:09:59:14", "1084319, 10:02:23:29", "1000000, 09:15:33:10"
    })
    void theSameFrames_withNoneDropped(long frame, String label) {
        check(FULL, frame, label);
    }

    @Test
    void aMillionFrames_atWholeRates() {
        check(FILM, 1_000_000, "11:34:26:16");
        check(timecode(25, 1, Counting.NON_DROP), 1_000_000, "11:06:40:00");
    }

    @ParameterizedTest
    @ValueSource(strings = {"01:01:00;00", "01:01:00;01", "01:00:60;00", "00:61:00;00", "24:00:00;00", "01:00:00;30"})
    void dropFrame_refuses(String label) {
        assertThat(DROP.read(label)).isInstanceOf(Meaning.Nothing.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"01:00:00:24", "01:00:13:24", "-01:00:13:13", "pink elephants", "01:00:13;23"})
    void film_refuses(String label) {
        assertThat(FILM.read(label)).isInstanceOf(Meaning.Nothing.class);
    }

    @Test
    void filmAt1001_hasNoDropFrame() {
        assertThat(Timecode.canDrop(new FrameRate(24_000, 1001))).isFalse();
        assertThat(Timecode.find(new FrameRate(24_000, 1001), Counting.DROP)).isEmpty();
        assertThat(Timecode.rates().stream().map(FrameRate::toText))
                .containsExactly(
                        "23.976 fps",
                        "24 fps",
                        "25 fps",
                        "29.97 fps",
                        "30 fps",
                        "47.952 fps",
                        "48 fps",
                        "50 fps",
                        "59.94 fps",
                        "60 fps");
        assertThat(Timecode.rates().stream().filter(Timecode::canDrop).map(FrameRate::toText))
                .containsExactly("29.97 fps", "59.94 fps");
    }

    @Test
    @Outside(
            source = "D. Heidelberger, a page on drop-frame timecode (2010); dropframetimecode.org: 2*60-2*6=108",
            kind = "worked example",
            printedDigits = 2)
    void anHourOfLabels_isLongerThanAnHour_orNearlyOne() {
        FrameRate rate = DROP.rate();
        assertThat(rate.secondsOf(108_000)).isEqualTo(3603.6, within(1e-9));
        assertThat(rate.secondsOf(107_892)).isEqualTo(3599.9964, within(1e-9));
        assertThat(rate.secondsOf(DROP.framesPerDay())).isEqualTo(86_399.9136, within(1e-9));
        assertThat(rate.secondsOf(17_982)).isEqualTo(599.9994, within(1e-9));
        assertThat(FULL.framesPerDay() - DROP.framesPerDay()).isEqualTo(2592);
        assertThat(108_000 - 107_892).isEqualTo(108);
    }
}
