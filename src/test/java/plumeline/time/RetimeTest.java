package plumeline.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

final class RetimeTest {
    private static final List<Retime.Key> PLUNGE =
            List.of(new Retime.Key(0, 1), new Retime.Key(12, 1), new Retime.Key(24, 0.2), new Retime.Key(120, 0.2));

    @Test
    void realSeconds_constantDouble_runsTwiceAsFast() {
        assertThat(Retime.constant(2, 24).realSeconds(95)).isEqualTo(2 * 95 / 24.0, within(1e-12));
    }

    @Test
    void realSeconds_straightRamp_isTheTrapezoidSum() {
        Retime retime = new Retime(PLUNGE, Retime.Ease.STRAIGHT, 24);
        double frames = 12 + 12 * 0.6 + 96 * 0.2;
        assertThat(retime.realSeconds(120)).isEqualTo(frames / 24, within(1e-12));
    }

    @Test
    void realSeconds_agreesWithASumOfSmallSteps() {
        for (Retime.Ease ease : Retime.Ease.values()) {
            Retime retime = new Retime(PLUNGE, ease, 24);
            int steps = 200_000;
            double sum = 0;
            for (int i = 0; i < steps; i++) {
                double frame = (i + 0.5) * 60 / steps;
                double u = Math.clamp((frame - 12) / 12, 0, 1);
                double risen = ease == Retime.Ease.STRAIGHT ? u : u * u * u * (10 - 15 * u + 6 * u * u);
                sum += (1 - 0.8 * risen) * 60 / steps;
            }
            assertThat(retime.realSeconds(60)).isEqualTo(sum / 24, within(1e-9));
        }
    }

    @Test
    void frameAt_undoesRealSeconds() {
        Retime retime = new Retime(PLUNGE, Retime.Ease.SMOOTH, 24);
        assertThat(retime.frameAt(retime.realSeconds(20.25), 120)).isEqualTo(20.25, within(1e-9));
    }
}
