package plumeline.ask.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumeline.ask.Asking.answer;
import static plumeline.ask.Asking.number;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.answer.Answer;
import plumeline.answer.Verdict;
import plumeline.tidy.Outside;

/// The question `turntable` against figures that aren't ours.
@Outside(
        source = "briefs A (shot A4) and B (shot B3) as a crew would hand them over; degrees a frame are 6 rpm/fps,"
                + " worked by hand",
        place = "Expected findings",
        kind = "worked example",
        printedDigits = 3)
final class TurntableOutsideTest {
    @Test
    void briefA4_turnsSixtyDegreesInTwentyFourFrames() {
        Answer answer = answer(
                "turntable",
                "speed: 10 rpm\nlabel: {arc: 82 deg, facing_at_start: -30 deg}\nrate: 24 fps\nframes: 24\n");
        assertThat(number(answer, "sweep")).isEqualTo(60, within(1e-9));
        assertThat(number(answer, "facing_end")).isEqualTo(30, within(1e-9));
        assertThat(number(answer, "readable")).isEqualTo(1, within(1e-9));
        assertThat(answer.verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void briefB3_turnsThirtySixDegreesInOnePointTwoSeconds() {
        Answer answer = answer("turntable", "time: 12 s\nlabel: {arc: 106 deg}\nrate: 25 fps\nframes: 30\n");
        assertThat(number(answer, "sweep")).isEqualTo(36, within(1e-9));
        assertThat(number(answer, "readable")).isEqualTo(1.2, within(1e-9));
        assertThat(number(answer, "facing_end")).isEqualTo(18, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"1, 24, 0.25", "2, 24, 0.5", "6, 25, 1.44", "3, 30, 0.6", "10, 60, 1"})
    void degreesAFrame(double rpm, double rate, double degrees) {
        Answer answer = answer(
                "turntable", "speed: " + rpm + " rpm\nlabel: {arc: 82 deg}\nrate: " + rate + " fps\nframes: 100\n");
        assertThat(number(answer, "per_frame")).isEqualTo(degrees, within(1e-9));
        assertThat(number(answer, "sweep")).isEqualTo(100 * degrees, within(1e-7));
    }

    /// One turn in 192 frames: 1.875 deg each, and frame 193 is the first again.
    @Test
    void seamlessTurn() {
        Answer answer = answer("turntable", "time: 8 s\nlabel: {arc: 82 deg}\nrate: 24 fps\nframes: 192\n");
        assertThat(number(answer, "per_frame")).isEqualTo(1.875, within(1e-9));
        assertThat(answer.notes().because()).anyMatch(text -> text.contains("would be the first again"));
    }

    /// 100 mm at 1 m with 5 µm, 22.2222 px a mm: 10 rpm at 21 mm are 21.99 mm/s, 0.4581 mm in 1/48 s.
    @Test
    void blur_ofTheFront() {
        Answer answer = answer(
                "turntable",
                "speed: 10 rpm\nlabel: {arc: 82 deg}\nrate: 24 fps\nframes: 24\ndiameter: 42 mm\n"
                        + "view: {distance: 1000 mm, focal_length: 100 mm,"
                        + " sensor: {width: 19.2 mm, height: 10 mm, across: 3840 px}}\n");
        assertThat(number(answer, "blur")).isEqualTo(0.4581 * 22.2222, within(2e-3));
    }
}
