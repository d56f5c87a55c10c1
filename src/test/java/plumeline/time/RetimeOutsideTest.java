package plumeline.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

/// Screen time and real time against figures that aren't ours.
final class RetimeOutsideTest {
    @Test
    @Outside(
            source = "brief A as a crew would hand it over, shots A1 and A2",
            place = "Expected findings",
            kind = "worked example",
            printedDigits = 2)
    void briefA_eightSecondsFillNinetySixFrames_andTheBottleGetsOneSecond() {
        // A1: a slide of 8.0 s, played at 200 %, fills a shot of 96 frames at 24 fps.
        assertThat(Retime.constant(2, 24).realSeconds(96)).isEqualTo(8.0, within(1e-12));
        assertThat(Retime.constant(2, 24).frameAt(8, 1000)).isEqualTo(96, within(1e-6));
        // A2: 120 screen frames at 20 % are 1.0 s real.
        assertThat(Retime.constant(0.2, 24).realSeconds(120)).isEqualTo(1.0, within(1e-12));
    }

    @Test
    @Outside(
            source = "brief B as a crew would hand it over, shots B2 and B3",
            place = "Expected findings",
            kind = "worked example",
            printedDigits = 2)
    void briefB_aLeafFallsThroughTwentySevenFrames() {
        // B2: 100 fps on a 25 fps line is 25 %: 75 frames are 0.75 s real; 0.27 s take 1.07 s of screen.
        Retime slow = Retime.constant(0.25, 25);
        assertThat(slow.realSeconds(75)).isEqualTo(0.75, within(1e-12));
        assertThat(slow.frameAt(0.267, 1000) / 25).isEqualTo(1.07, within(0.005));
        // B3: windows of 30 frames at 25 fps are 1.2 s.
        assertThat(Retime.constant(1, 25).realSeconds(30)).isEqualTo(1.2, within(1e-12));
    }

    @Test
    @Outside(
            source = "kinematics with constant acceleration: mean of both speeds times the time; school physics",
            kind = "closed form")
    void straightRamp_coversTheMeanSpeedTimesTheTime() {
        Retime ramp = new Retime(List.of(new Retime.Key(0, 1), new Retime.Key(48, 0.25)), Retime.Ease.STRAIGHT, 24);
        assertThat(ramp.realSeconds(48)).isEqualTo(2 * (1 + 0.25) / 2, within(1e-12));
        assertThat(ramp.realSeconds(72)).isEqualTo(1.25 + 0.25, within(1e-12));
    }

    @Test
    @Outside(
            source = "T. Flash and N. Hogan, The coordination of arm movements, J. Neuroscience 5 (1985) 1688-1703:"
                    + " the minimum-jerk step is point-symmetric about its middle, from memory",
            kind = "closed form")
    void smoothRamp_coversThatToo_andItsHalvesMirror() {
        List<Retime.Key> keys = List.of(new Retime.Key(0, 1), new Retime.Key(48, 0.25));
        Retime smooth = new Retime(keys, Retime.Ease.SMOOTH, 24);
        assertThat(smooth.realSeconds(48)).isEqualTo(1.25, within(1e-12));
        // Speeds at n and 48 − n add up to 1.25 all through; a central difference gives them.
        for (int n = 4; n < 24; n += 4) {
            double sum = speed(smooth, n) + speed(smooth, 48 - n);
            assertThat(sum).isEqualTo(1.25, within(1e-7));
        }
        // At a quarter the step has risen by 0.103515625.
        assertThat(speed(smooth, 12)).isEqualTo(1 - 0.75 * 0.103515625, within(1e-6));
    }

    private static double speed(Retime retime, double frame) {
        double h = 1e-3;
        return (retime.realSeconds(frame + h) - retime.realSeconds(frame - h)) / (2 * h) * 24;
    }
}
