package plumeline.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

final class DeviceStepTest {
    @Test
    void even_stepsComeEvenly_bothWays() {
        for (int way : new int[] {1, -1}) {
            List<DeviceStep> steps = DeviceStep.list(Travel.inThirds(way * 0.006, 3, Profile.EVEN), 0.001);
            assertThat(steps).hasSize(6);
            for (int i = 0; i < 6; i++) {
                assertThat(steps.get(i).step()).isEqualTo(way * (i + 1L));
                assertThat(steps.get(i).way()).isEqualTo(way);
                assertThat(steps.get(i).seconds()).isEqualTo(0.5 * (i + 1), within(1e-9));
            }
        }
    }

    @Test
    void aTrapezoid_isAtEachStepWhenItSaysSo() {
        Travel travel = Travel.within(-0.6, 8, Profile.TRAPEZOID, 0.2);
        List<DeviceStep> steps = DeviceStep.list(travel, 0.0000125);
        assertThat(steps).hasSize(48_000);
        double before = 0;
        for (DeviceStep step : steps) {
            assertThat(travel.at(step.seconds())).isEqualTo(step.step() * 0.0000125, within(1e-11));
            assertThat(step.seconds()).isGreaterThan(before);
            before = step.seconds();
        }
    }

    @Test
    void aRunThatTurnsBack_passesItsStepsBack() {
        CubicRun run = new FreeKeys(
                        List.of(new FreeKeys.Key(0, 0), new FreeKeys.Key(1, 3.5), new FreeKeys.Key(2, 1)),
                        SlopeRule.FRITSCH_BUTLAND,
                        FreeKeys.Ends.AT_REST)
                .toRun();
        assertThat(DeviceStep.list(run, 1).stream().map(DeviceStep::step)).containsExactly(1L, 2L, 3L, 3L, 2L, 1L);
        CubicRun onAStep = new FreeKeys(
                        List.of(new FreeKeys.Key(0, 0), new FreeKeys.Key(1, 3), new FreeKeys.Key(2, 1)),
                        SlopeRule.FRITSCH_BUTLAND,
                        FreeKeys.Ends.AT_REST)
                .toRun();
        assertThat(DeviceStep.list(onAStep, 1).stream().map(DeviceStep::step)).containsExactly(1L, 2L, 3L, 2L, 1L);
        assertThatThrownBy(() -> DeviceStep.list(run, 1e-9)).isInstanceOf(IllegalArgumentException.class);
    }
}
