package plumeline.flicker;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/// Steps, bars and edges of a pulsing lamp.
final class PulsedFramesTest {
    private static PulsedFrames frames(double hertz, double rate, double exposure) {
        return new PulsedFrames(new LampPulse(hertz, 1, new Waveform.Sine()), rate, exposure);
    }

    @Test
    void inStep_nothingRipples_butBarsStand() {
        PulsedFrames step = frames(120, 24, 1 / 48.0);
        assertThat(step.isInStep()).isTrue();
        assertThat(step.ripple()).isZero();
        assertThat(step.rows()).isCloseTo(0.12732, within(1e-5));
        assertThat(step.barsStand()).isTrue();
        assertThat(step.roll(0.016)).isZero();
        assertThat(frames(120, 24, 1 / 60.0).barsStand()).isFalse();
    }

    @Test
    void broadcastRate_isNotInStep() {
        PulsedFrames frames = frames(120, 24000 / 1001.0, 1 / 48.0);
        assertThat(frames.isInStep()).isFalse();
        assertThat(frames.ripple()).isCloseTo(0.12732, within(1e-5));
        assertThat(frames.barsStand()).isFalse();
        assertThat(frames(119.88, 24000 / 1001.0, 1 / 48.0).isInStep()).isTrue();
    }

    @Test
    void slowPulse_isNeverInStep_andHasNoCleanExposure() {
        PulsedFrames slow = frames(1, 1000, 0.0005);
        assertThat(slow.isInStep()).isFalse();
        assertThat(slow.ripple()).isGreaterThan(0.99);
        assertThat(CleanSettings.nearestPulses(slow)).isZero();
        assertThat(CleanSettings.exposures(1, 1000, 10)).isEmpty();
    }

    @Test
    void steadyLamps_areClean() {
        LampPulse steady = new LampPulse(100, 0, new Waveform.Square(0.2));
        assertThat(steady.ripple(0.3)).isZero();
        assertThat(new LampPulse(100, 1, new Waveform.Square(1)).ripple(0.3)).isZero();
        assertThat(CleanSettings.rates(steady, List.of(24.0, 60.0), new ShutterSetting.Time(1 / 50.0)))
                .containsExactly(24.0);
    }

    @Test
    void nearestPulses_fitIntoAFrame() {
        assertThat(CleanSettings.nearestPulses(frames(100, 24, 1 / 48.0))).isEqualTo(2);
        assertThat(CleanSettings.nearestPulses(frames(100, 60, 1 / 60.0))).isEqualTo(1);
        assertThat(CleanSettings.nearestPulses(frames(100, 24, 1 / 1000.0))).isEqualTo(1);
    }

    @Test
    void whatCantBe_throws() {
        assertThatThrownBy(() -> frames(0, 24, 0.01)).hasMessageContaining("hertz is 0.0; must be");
        assertThatThrownBy(() -> new LampPulse(100, 1.1, new Waveform.Sine())).hasMessageContaining("depth is 1.1");
        assertThatThrownBy(() -> new Waveform.Square(0)).hasMessageContaining("duty is 0.0");
        assertThatThrownBy(() -> frames(100, 24, 0.01).bars(0)).hasMessageContaining("readout is 0.0");
    }
}
