package plumeline.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

/// Labels on turntables.
@Outside(
        source = "brief A, shot A4 and brief B, shot B3 as a crew would hand them over: 60 deg in 24 frames from"
                + " -30 to +30; 5 rpm turns 36 deg in 1.2 s",
        place = "Expected findings",
        kind = "worked example",
        printedDigits = 2)
final class LabelWindowOutsideTest {
    private static List<LabelWindow> windows(double sweep, double seconds, double start, double within) {
        return LabelWindow.list(
                Travel.inThirds(Math.toRadians(sweep), seconds, Profile.EVEN),
                Math.toRadians(start),
                Math.toRadians(within));
    }

    @Test
    void briefs_readThroughout() {
        assertThat(windows(60, 1, -30, 30)).hasSize(1);
        assertThat(windows(60, 1, -30, 30).getFirst().seconds()).isEqualTo(1, within(1e-9));
        assertThat(windows(36, 1.2, -18, 30).getFirst().seconds()).isEqualTo(1.2, within(1e-12));
    }

    @Test
    void label_readsAgainEveryTurn() {
        List<LabelWindow> windows = windows(900, 9, 10, 30);
        assertThat(windows).hasSize(3);
        assertThat(windows.get(0).fromSeconds()).isZero();
        assertThat(windows.get(0).toSeconds()).isEqualTo(0.2, within(1e-9));
        assertThat(windows.get(1).fromSeconds()).isEqualTo(3.2, within(1e-9));
        assertThat(windows.get(1).toSeconds()).isEqualTo(3.8, within(1e-9));
        assertThat(windows.get(2).toSeconds()).isEqualTo(7.4, within(1e-9));
        List<LabelWindow> back = windows(-900, 9, -10, 30);
        assertThat(back).hasSize(3);
        assertThat(back.get(1).fromSeconds()).isEqualTo(3.2, within(1e-9));
    }

    @Test
    void label_neverOrAlwaysSeen() {
        assertThat(windows(60, 1, 90, 30)).isEmpty();
        assertThat(windows(900, 9, 10, 180)).hasSize(1);
        assertThat(windows(900, 9, 10, 180).getFirst().seconds()).isEqualTo(9, within(1e-9));
    }

    /// Against looking at every ten-thousandth of a run that turns back.
    @Test
    void label_onARunThatTurnsBack() {
        CubicRun run = new FreeKeys(
                        List.of(
                                new FreeKeys.Key(0, -1),
                                new FreeKeys.Key(2, 0.2),
                                new FreeKeys.Key(3, -0.4),
                                new FreeKeys.Key(5, 3)),
                        SlopeRule.FRITSCH_BUTLAND,
                        FreeKeys.Ends.AT_REST)
                .toRun();
        assertThat(run.listTurns()).hasSize(2);
        for (double reach : new double[] {0.1, 0.3, 0.9, 2}) {
            int seen = 0;
            int steps = 50_000;
            for (int i = 0; i < steps; i++) {
                double turn = Math.IEEEremainder(run.at((i + 0.5) * 5 / steps) + 0.05, 2 * Math.PI);
                seen += Math.abs(turn) <= reach ? 1 : 0;
            }
            double total = LabelWindow.list(run, 0.05, reach).stream()
                    .mapToDouble(LabelWindow::seconds)
                    .sum();
            assertThat(total).isEqualTo(seen * 5.0 / steps, within(1e-3));
        }
    }
}
