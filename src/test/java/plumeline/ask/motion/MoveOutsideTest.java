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

/// The question `move` against figures that aren't ours.
@Outside(
        source = "briefs A and B as a crew would hand them over; mm to px worked by hand from the thin lens",
        place = "Expected findings",
        kind = "worked example",
        printedDigits = 3)
final class MoveOutsideTest {
    /// 3840 px on 19.2 mm: 5 µm; on 23.04 mm: 6 µm.
    private static String view(String distance, String focalLength, String width, String more) {
        return "view: {distance: " + distance + ", focal_length: " + focalLength + ", sensor: {width: " + width
                + ", height: 10 mm, across: 3840 px}" + more + "}\n";
    }

    @Test
    void briefA1_isTooFast_andTwiceTheTimeJustFits() {
        String limits = "limits: {speed: 80 mm/s, acceleration: 200 mm/s2, travel: 600 mm}\n";
        Answer even = answer("move", "by: 600 mm\nin: 4 s\nprofile: even\n" + limits);
        assertThat(number(even, "peak_speed")).isEqualTo(150, within(1e-9));
        assertThat(even.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(even.notes().attempts())
                .anyMatch(text -> text.startsWith("Run it in 8.0 s as a trapezoid, play at 200 %"));
        Answer fast = answer("move", "by: 600 mm\nin: 4 s\nprofile: trapezoid\n" + limits);
        assertThat(fast.notes().attempts()).anyMatch(text -> text.startsWith("Run it in 8.0 s, play at 200 %"));
        Answer slow = answer("move", "by: 600 mm\nin: 8 s\nprofile: trapezoid\n" + limits);
        assertThat(number(slow, "peak_speed")).isEqualTo(78.9, within(0.05));
        assertThat(number(slow, "shortest_time")).isEqualTo(7.9, within(1e-9));
        assertThat(slow.verdict()).isEqualTo(Verdict.HOLDS);
        // An even 75 mm/s overruns the rail with its run-up.
        Answer overrun = answer("move", "by: 600 mm\nin: 8 s\nprofile: even\n" + limits);
        assertThat(overrun.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(overrun.notes().because()).anyMatch(text -> text.contains("It takes 628 mm"));
    }

    /// A5: 0.073 mm a pixel; B4: 0.083 mm, here by a distance for it with 100 mm and 9.375 µm.
    @ParameterizedTest
    @CsvSource({
        "120, 3, 24, 0, 877, 11.4",
        "120, 12, 120, 0, 877, 0.57",
        "120, 12, 120, 0.1, 877, 1.94",
        "150, 30, 25, 0, 985, 1.2",
        "150, 15, 100, 0, 985, 0.6"
    })
    void briefsA5AndB4_passesLieSoFarApart(
            double by, double time, double rate, double repeats, double distance, double pixels) {
        Answer answer = answer(
                "move",
                "by: " + by + " mm\nin: " + time + " s\nrepeats: " + repeats + " mm\n"
                        + view(distance + " mm", "100 mm", "36 mm", ", rate: " + rate + " fps"));
        assertThat(number(answer, "pass_error")).isEqualTo(pixels, within(0.02 * pixels));
        assertThat(number(answer, "peak_acceleration")).isZero();
    }

    /// 100 mm at 1 m with 5 µm: 22.2222 px a mm; 100 mm/s for 1/48 s blur by 46.30 px.
    @Test
    void blur_ofAHundredMillimetresASecond() {
        Answer answer = answer(
                "move",
                "by: 100 mm\nin: 1 s\nrepeats: 0.05 mm\ntriggered: yes\n"
                        + view("1000 mm", "100 mm", "19.2 mm", ", rate: 24 fps, shutter: 180 deg"));
        assertThat(number(answer, "blur_peak")).isEqualTo(46.30, within(0.005));
        assertThat(number(answer, "pass_error")).isEqualTo(1.111, within(5e-4));
    }

    /// 0.01 deg with 50 mm and 6 µm: 1.4544 px on what is far away; nearer by focus more, as 1 + magnification.
    @Test
    void pan_ofAHundredthOfADegree() {
        String move = "by: 10 deg\nin: 10 s\nrepeats: 0.01 deg\ntriggered: yes\n";
        Answer far = answer("move", move + view("100 m", "50 mm", "23.04 mm", ""));
        assertThat(number(far, "pass_error")).isEqualTo(1.4544, within(1e-3));
        Answer near = answer("move", move + view("550 mm", "50 mm", "23.04 mm", ""));
        assertThat(number(near, "pass_error")).isEqualTo(1.4544 * 1.1, within(1e-3));
    }

    /// 200 mm/s at 24 fps: half a frame is 4.1667 mm, here by 22.2222 px a mm.
    @Test
    void halfAFrame() {
        Answer answer = answer("move", "by: 200 mm\nin: 1 s\n" + view("1000 mm", "100 mm", "19.2 mm", ""));
        assertThat(number(answer, "pass_error")).isEqualTo(4.1667 * 22.2222, within(0.01));
    }

    /// Flash and Hogan's constants; thirds of the time, 6.75 d/T²; seven segments by the double-S formulas.
    @ParameterizedTest
    @CsvSource({
        "smooth, 600, 4, '', 281.25, 216.5064",
        "s-curve, 4000, 1, '', 6000, 27000",
        "trapezoid, 4000, 1, '', 6000, 18000",
        "s-curve, 600, 3.7, 'limits: {speed: 200 mm/s, acceleration: 400 mm/s2, jerk: 2000 mm/s3}', 200, 400",
        "s-curve, 600, 7.4142136, 'limits: {speed: 100 mm/s, acceleration: 400 mm/s2, jerk: 200 mm/s3}', 100, 141.42136"
    })
    void peaks(String profile, double by, double time, String limits, double speed, double acceleration) {
        Answer answer =
                answer("move", "by: " + by + " mm\nin: " + time + " s\nprofile: " + profile + "\n" + limits + "\n");
        assertThat(number(answer, "peak_speed")).isEqualTo(speed, within(1e-5 * speed));
        assertThat(number(answer, "peak_acceleration")).isEqualTo(acceleration, within(1e-5 * acceleration));
    }
}
