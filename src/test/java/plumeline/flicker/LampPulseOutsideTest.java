package plumeline.flicker;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.tidy.Outside;

/// Pulses against exposures: brute-force integration of the waveforms as they are defined, and published settings.
/// Grades: P published and read, F computed from a named formula.
@Outside(
        source = "definitions integrated step by step; a public note on flicker-free rates and angles",
        kind = "closed form")
final class LampPulseOutsideTest {
    private static final double BROADCAST_24 = 24000 / 1001.0;
    private static final double BROADCAST_30 = 30000 / 1001.0;

    /// `(max − min)/(max + min)` over beginnings, each exposure summed in small steps of one pulse: F.
    private static double counted(DoubleUnaryOperator light, double pulses) {
        int steps = 4000;
        double[] sums = new double[(int) Math.ceil(pulses) * steps + 2 * steps + 1];
        for (int i = 1; i < sums.length; i++) {
            sums[i] = sums[i - 1] + light.applyAsDouble((i - 0.5) / steps % 1) / steps;
        }
        int width = (int) Math.round(pulses * steps);
        double least = Double.MAX_VALUE;
        double most = 0;
        for (int from = 0; from < steps; from++) {
            double taken = sums[from + width] - sums[from];
            least = Math.min(least, taken);
            most = Math.max(most, taken);
        }
        return (most - least) / (most + least);
    }

    private static DoubleUnaryOperator withDepth(double depth, DoubleUnaryOperator form) {
        double steady = (1 - depth) / (1 + depth);
        return x -> steady + (1 - steady) * form.applyAsDouble(x);
    }

    @Test
    void everyForm_agreesWithCounting() {
        Random random = new Random(71);
        for (int i = 0; i < 60; i++) {
            double pulses = (1 + random.nextInt(24000)) / 4000.0;
            double depth = random.nextDouble();
            double duty = (1 + random.nextInt(3999)) / 4000.0;
            check(pulses, depth, new Waveform.Sine(), x -> (1 + Math.sin(2 * Math.PI * x)) / 2);
            check(pulses, depth, new Waveform.RectifiedSine(), x -> Math.abs(Math.sin(Math.PI * x)));
            check(pulses, depth, new Waveform.Square(duty), x -> x < duty ? 1 : 0);
        }
    }

    private static void check(double pulses, double depth, Waveform form, DoubleUnaryOperator light) {
        double found = new LampPulse(100, depth, form).ripple(pulses);
        assertThat(found)
                .as(form + " " + pulses + " " + depth)
                .isCloseTo(counted(withDepth(depth, light), pulses), within(2e-4));
    }

    /// A box over a sine by Fourier, `|sin πft/πft|`: F, rows H37 to H42 of the check values.
    @ParameterizedTest
    @CsvSource({
        "100, 48, 0.039545",
        "120, 48, 0.12732",
        "100, 50, 0",
        "120, 60, 0",
        "100, 60, 0.1654",
        "120, 50, 0.12614"
    })
    void sine_leavesWhatFourierSays(double hertz, double perSecond, double left) {
        assertThat(new LampPulse(hertz, 1, new Waveform.Sine()).ripple(hertz / perSecond))
                .isCloseTo(left, within(1e-5));
        assertThat(new LampPulse(hertz, 0.3, new Waveform.Sine()).ripple(hertz / perSecond))
                .isCloseTo(0.3 * left, within(1e-5));
    }

    /// On-time extremes over the beginning: F, rows H43 to H48.
    @ParameterizedTest
    @CsvSource({
        "1000, 2000, 0.5, 1",
        "1000, 48, 0.5, 0.008",
        "2000, 500, 0.3, 0",
        "400, 240, 0.2, 0.33333",
        "25000, 2000, 0.1, 0.04",
        "3000, 10000, 0.5, 1"
    })
    void square_swingsByItsOnTime(double hertz, double perSecond, double duty, double ripple) {
        assertThat(new LampPulse(hertz, 1, new Waveform.Square(duty)).ripple(hertz / perSecond))
                .isCloseTo(ripple, within(1e-4));
    }

    /// Angles of whole pulses: row H17 is published (P: a public note, 25 fps under 120 pulses a second: 75, 150, 225,
    /// 300 deg; 172.8 and 144 deg at 24 fps by handbooks), the rest `360 · fps · n/pulses` (F, rows H18 to H29).
    @Test
    void cleanExposures_areThePublishedAngles() {
        checkAngles(25, 120, 75, 150, 225, 300);
        checkAngles(24, 100, 86.4, 172.8, 259.2, 345.6);
        checkAngles(24, 120, 72, 144, 216, 288, 360);
        checkAngles(BROADCAST_24, 120, 71.928, 143.856, 215.784, 287.712, 359.640);
        checkAngles(25, 100, 90, 180, 270, 360);
        checkAngles(BROADCAST_30, 100, 107.892, 215.784, 323.676);
        checkAngles(48, 100, 172.8, 345.6);
        checkAngles(60, 100, 216);
        checkAngles(96, 120, 288);
        checkAngles(120, 120, 360);
        checkAngles(240, 120);
    }

    private static void checkAngles(double rate, double hertz, double... degrees) {
        List<Double> found = CleanSettings.exposures(hertz, rate, 100).stream()
                .map(seconds -> seconds * rate * 360)
                .toList();
        assertThat(found).hasSize(degrees.length);
        for (int i = 0; i < degrees.length; i++) {
            assertThat(found.get(i)).isCloseTo(degrees[i], within(0.005));
        }
    }

    /// Rates that are clean with any angle are 120/n under 60 Hz mains (P, row H15: the same note) and 100/n under
    /// 50 Hz (F, row H16); a shutter of whole pulses is clean at any rate it fits.
    @Test
    void cleanRates_areThePublishedOnes() {
        List<Double> modes = List.of(
                12.0,
                15.0,
                20.0,
                BROADCAST_24,
                24.0,
                25.0,
                BROADCAST_30,
                30.0,
                40.0,
                48.0,
                50.0,
                60.0,
                100.0,
                120.0,
                240.0);
        checkRates(120, modes, new ShutterSetting.Angle(0.37), 12, 15, 20, 24, 30, 40, 60, 120);
        checkRates(100, modes, new ShutterSetting.Angle(0.37), 20, 25, 50, 100);
        checkRates(
                100,
                modes,
                new ShutterSetting.Time(1 / 50.0),
                12,
                15,
                20,
                BROADCAST_24,
                24,
                25,
                BROADCAST_30,
                30,
                40,
                48,
                50);
    }

    private static void checkRates(double hertz, List<Double> modes, ShutterSetting shutter, double... clean) {
        assertThat(CleanSettings.rates(new LampPulse(hertz, 1, new Waveform.Sine()), modes, shutter))
                .containsExactlyElementsOf(Arrays.stream(clean).boxed().toList());
    }

    /// Aliasing, `|f − k · fps|` with the nearest k: F, rows H30 to H36.
    @ParameterizedTest
    @CsvSource({"100, 24, 4", "120, 25, 5", "100, 30, 10", "120, 24, 0"})
    void beat_isWhatAliasingLeaves(double hertz, double rate, double beat) {
        assertThat(frames(hertz, rate, 0.01).beatHertz()).isCloseTo(beat, within(1e-9));
    }

    @Test
    void beat_ofBroadcastRates_isSlow() {
        assertThat(frames(120, BROADCAST_24, 0.01).beatHertz()).isCloseTo(0.11988, within(1e-5));
        assertThat(frames(100, BROADCAST_24, 0.01).beatHertz()).isCloseTo(4.0959, within(1e-4));
        assertThat(frames(120, BROADCAST_30, 0.01).beatHertz()).isCloseTo(0.11988, within(1e-5));
    }

    /// Bars on the height, `f · T`: F, rows H49 to H52.
    @ParameterizedTest
    @CsvSource({"100, 0.016, 1.6", "120, 0.016, 1.92", "1000, 0.016, 16", "1000, 0.008, 8"})
    void bars_areThePulsesOfAReadout(double hertz, double readout, double bars) {
        assertThat(frames(hertz, 24, 0.01).bars(readout)).isCloseTo(bars, within(1e-9));
    }

    /// Rows of two frames in a row, each integrated step by step: where the next frame's are brightest lies as far as
    /// it is said to roll, and rows of one frame differ by no more than is said, at some frame by as much.
    @Test
    void bars_rollAndDiffer_asIntegratedRows() {
        PulsedFrames frames = new PulsedFrames(new LampPulse(100, 0.8, new Waveform.Sine()), 24, 1 / 90.0);
        double readout = 0.0125;
        double step = 1 / frames.bars(readout);
        double moved = brightest(frames, 8, readout) - brightest(frames, 7, readout);
        double rolled = (moved + frames.roll(readout)) / step;
        assertThat(rolled).isCloseTo(Math.rint(rolled), within(2e-3));
        for (double time : new double[] {0.0125, 0.005, 0.003, 0.001}) {
            double most = 0;
            for (int begin = 0; begin < 60; begin++) {
                most = Math.max(most, spread(frames, begin / 6000.0, time));
            }
            assertThat(most).isCloseTo(frames.barsDepth(time), within(2e-3));
        }
    }

    private static double brightest(PulsedFrames frames, int frame, double readout) {
        double best = 0;
        double at = 0;
        for (int row = 0; row < 2000; row++) {
            double light = row(frames, frame / frames.framesPerSecond() + row * readout / 2000);
            if (light > best) {
                best = light;
                at = row / 2000.0;
            }
        }
        return at;
    }

    private static double spread(PulsedFrames frames, double begin, double readout) {
        double least = Double.MAX_VALUE;
        double most = 0;
        for (int row = 0; row <= 100; row++) {
            double light = row(frames, begin + row * readout / 100);
            least = Math.min(least, light);
            most = Math.max(most, light);
        }
        return (most - least) / (most + least);
    }

    private static double row(PulsedFrames frames, double begin) {
        double sum = 0;
        for (int i = 0; i < 200; i++) {
            double time = begin + (i + 0.5) / 200 * frames.exposureSeconds();
            sum += 1
                    + frames.lamp().depth()
                            * Math.sin(2 * Math.PI * frames.lamp().hertz() * time);
        }
        return sum / 200;
    }

    private static PulsedFrames frames(double hertz, double rate, double exposure) {
        return new PulsedFrames(new LampPulse(hertz, 1, new Waveform.Sine()), rate, exposure);
    }
}
