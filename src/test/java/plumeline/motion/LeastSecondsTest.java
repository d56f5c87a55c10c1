package plumeline.motion;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class LeastSecondsTest {
    /// A move in the least time asks no more than the device does, one a hundredth shorter does.
    @ParameterizedTest
    @CsvSource({
        "0.6, 0.08, 0.2",
        "0.01, 0.08, 0.2",
        "0.032, 0.08, 0.2",
        "1.5, 0.35, 0.7",
        "0.6, 0.08, Infinity",
        "0.6, Infinity, 0.2"
    })
    void move_inTheLeastTime_justFits(double distance, double speed, double acceleration) {
        for (Profile profile : Profile.values()) {
            double least = Travel.leastSeconds(distance, profile, speed, acceleration);
            if (least == 0) {
                assertThat(profile).isEqualTo(Profile.EVEN);
                continue;
            }
            assertThat(isMade(distance, least * 1.0001, profile, speed, acceleration))
                    .as("%s", profile)
                    .isTrue();
            assertThat(isMade(distance, least * 0.99, profile, speed, acceleration))
                    .as("%s", profile)
                    .isFalse();
        }
    }

    /// By position only: the highest speed and the highest change of speed on a fine grid.
    private static boolean isMade(double distance, double seconds, Profile profile, double speed, double acceleration) {
        Travel travel = Double.isFinite(acceleration) && profile != Profile.SMOOTH
                ? Travel.within(distance, seconds, profile, acceleration)
                : Travel.inThirds(distance, seconds, profile);
        int steps = 3000;
        double step = seconds / steps;
        double fastest = 0;
        double hardest = 0;
        for (int i = 1; i < steps; i++) {
            double before = travel.at((i - 1) * step);
            double here = travel.at(i * step);
            double after = travel.at((i + 1) * step);
            fastest = Math.max(fastest, (after - here) / step);
            hardest = Math.max(hardest, Math.abs(after - 2 * here + before) / step / step);
        }
        boolean minds = profile != Profile.EVEN;
        return fastest <= speed * 1.001 && (!minds || hardest <= acceleration * 1.005);
    }

    /// 600 mm at 80 mm/s with 200 mm/s2: 7.5 s and a ramp of 0.4 s (constant acceleration, any school book).
    @ParameterizedTest
    @CsvSource({"TRAPEZOID, 7.9", "EVEN, 7.5", "SMOOTH, 14.0625"})
    void handFigures(Profile profile, double seconds) {
        assertThat(Travel.leastSeconds(0.6, profile, 0.08, 0.2)).isCloseTo(seconds, Offset.offset(1e-9));
    }
}
