package plumeline.ask.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumeline.ask.Asking.answer;
import static plumeline.ask.Asking.number;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.answer.Answer;
import plumeline.answer.Verdict;
import plumeline.tidy.Outside;

/// `ramp`, `beat` and `media` against figures worked elsewhere.
@Outside(
        source = "tables worked apart from this code 2026-11-25: integrals of polynomials, 60 s over the tempo, pixels"
                + " times bits times frames a second",
        kind = "worked example",
        printedDigits = 6)
final class TimeQuestionsOutsideTest {
    @ParameterizedTest
    @CsvSource({
        "24, 50, 48",
        "24, 40, 60",
        "24, 25, 96",
        "24, 20, 120",
        "24, 10, 240",
        "24, 5, 480",
        "25, 40, 62.5",
        "25, 20, 125"
    })
    void ramp_leastRates(double rate, double percent, double least) {
        Answer slow = answer(
                "ramp",
                "timeline_rate: " + rate + " fps\nspeeds: [{at: 4 s, speed: " + percent + " %}]\nmodes: [" + least
                        + " fps, 1000 fps]\n");
        assertThat(number(slow, "least_capture_rate")).isCloseTo(least, within(1e-9));
        assertThat(number(slow, "chosen_rate")).isEqualTo(least);
        assertThat(number(slow, "repeated_frames")).isZero();
        assertThat(slow.verdict()).isEqualTo(Verdict.HOLDS);
    }

    @ParameterizedTest
    @CsvSource({"straight", "smooth"})
    void ramp_downHeldAndUp(String ease) {
        Answer ramp = answer("ramp", """
            timeline_rate: 24 fps
            speeds: [{at: 0 s, speed: 100 %}, {at: 1 s, speed: 20 %}, {at: 3 s, speed: 20 %}, {at: 4 s, speed: 100 %}]
            """ + "ease: " + ease + "\n");
        assertThat(number(ramp, "screen_time")).isEqualTo(4);
        assertThat(number(ramp, "real_time")).isCloseTo(1.6, within(1e-9));
        assertThat(number(ramp, "source_frames")).isCloseTo(192, within(1e-6));
        assertThat(number(ramp, "least_capture_rate")).isCloseTo(120, within(1e-9));
        assertThat(number(ramp, "repeated_frames")).isZero();
        assertThat(number(ramp, "light_change")).isCloseTo(-2.32, within(0.005));
    }

    @Test
    @Outside(
            source = "briefs A and B as a crew would hand them over",
            place = "A1 8.0 s at 200 %; A2 120 frames are 1.0 s real; B2 75 frames at 100 fps are 0.75 s",
            kind = "worked example",
            printedDigits = 2)
    void ramp_ofTheBriefs() {
        assertThat(number(briefs("24", "96", "200"), "real_time")).isCloseTo(8, within(1e-9));
        Answer ink = briefs("24", "120", "20");
        assertThat(number(ink, "real_time")).isCloseTo(1, within(1e-9));
        assertThat(number(ink, "chosen_rate")).isCloseTo(120, within(1e-9));
        assertThat(number(briefs("25", "75", "25"), "real_time")).isCloseTo(0.75, within(1e-9));
        assertThat(number(briefs("25", "75", "25"), "least_capture_rate")).isCloseTo(100, within(1e-9));
    }

    private static Answer briefs(String rate, String frames, String percent) {
        return answer(
                "ramp",
                "timeline_rate: " + rate + " fps\nspeeds: [{at: " + frames + " frames, speed: " + percent + " %}]\n");
    }

    @Test
    void beat_at128_and100() {
        Answer fast = answer("beat", "tempo: 128 bpm\nrate: 24 fps\nbars: 4\n");
        assertThat(frames(fast, 16))
                .containsExactly(
                        0.0, 11.0, 23.0, 34.0, 45.0, 56.0, 68.0, 79.0, 90.0, 101.0, 113.0, 124.0, 135.0, 146.0, 158.0,
                        169.0);
        assertThat(number(fast, "drift")).isEqualTo(176 - 180);
        Answer waltz = answer("beat", "tempo: 100 bpm\nrate: 24 fps\nbars: 3\nbeats_per_bar: 3\n");
        assertThat(frames(waltz, 9)).containsExactly(0.0, 14.0, 29.0, 43.0, 58.0, 72.0, 86.0, 101.0, 115.0);
        Answer film = answer("beat", "tempo: 120 bpm\nrate: 24 fps\nfirst: 1/2 s\nbars: 10\n");
        assertThat(number(film, "frame_40")).isEqualTo(12 + 39 * 12);
        assertThat(number(film, "drift")).isZero();
        Answer broadcast = answer("beat", "tempo: 120 bpm\nrate: 29.97 fps\nbars: 17\n");
        assertThat(number(broadcast, "frame_65")).isEqualTo(959);
    }

    private static List<Double> frames(Answer answer, int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(n -> number(answer, "frame_" + n))
                .toList();
    }

    @Test
    void media_rawHighSpeed() {
        Answer raw = answer("media", """
            size: [1920 px, 1080 px]
            depth: 12
            rate: 1000 fps
            takes: [{seconds: 2 s, count: 6}]
            """);
        assertThat(number(raw, "gigabytes")).isCloseTo(37.3248, within(1e-9));
        // 24883.2 Mb/s.
        assertThat(number(raw, "minutes_per_card")).isCloseTo(512e9 * 8 / 24_883.2e6 / 60, within(1e-9));
        Answer full = answer("media", """
            size: [1920 px, 1080 px]
            depth: 10
            samples: 2
            rate: 24 fps
            takes: [{seconds: 1 min}]
            """);
        assertThat(number(full, "gigabytes")).isCloseTo(7.46496, within(1e-9));
        Answer packed = answer("media", """
            size: [3840 px, 2160 px]
            depth: 12
            rate: 240 fps
            ratio: "5:1"
            takes: [{seconds: 10, count: 2}]
            """);
        assertThat(number(packed, "gigabytes")).isCloseTo(11.943936, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"50, 22.5", "100, 45", "220, 99", "440, 198", "880, 396"})
    void media_gigabytesAnHour(double megabits, double gigabytes) {
        Answer hour = answer("media", "bit_rate: " + megabits + " Mb/s\ntakes: [{seconds: 1 h}]\ncard: 45 GB\n");
        assertThat(number(hour, "gigabytes")).isCloseTo(gigabytes, within(1e-9));
        assertThat(number(hour, "minutes_per_card")).isCloseTo(45 / gigabytes * 60, within(1e-9));
    }

    @Test
    @Outside(
            source = "the rule of three copies on two kinds of media, one elsewhere: common practice",
            kind = "worked example")
    void media_copies() {
        Answer copies = answer("media", "bit_rate: 800 Mb/s\ntakes: [{seconds: 80 s, count: 100}]\ncopies: 3\n");
        assertThat(number(copies, "gigabytes")).isCloseTo(2400, within(1e-9));
        assertThat(copies.notes().because())
                .contains(
                        "133.3 min at 800 Mb/s are 800 GB: 2 cards of 512 GB, more where takes are not to be parted.",
                        "gigabytes counts 3 copies of it, the card's own among them.");
        assertThat(copies.notes().attempts()).isEmpty();
    }
}
