package plumeline.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

/// Rules of thirds, and the ramps of an S-curve.
@Outside(
        source = "rules of thirds of drive sizing, as public knowledge bases on automation work them: 4 m in 1 s, from"
                + " memory",
        kind = "worked example")
final class ThirdsOutsideTest {
    @Test
    void trapezoid_fourMetresInOneSecond() {
        Travel travel = Travel.inThirds(4, 1, Profile.TRAPEZOID);
        assertThat(travel.peakSpeed()).isEqualTo(6, within(1e-12));
        assertThat(travel.peakAcceleration()).isEqualTo(18, within(1e-12));
    }

    @Test
    void sCurve_fourMetresInOneSecond() {
        Travel travel = Travel.inThirds(4, 1, Profile.S_CURVE);
        assertThat(travel.peakSpeed()).isEqualTo(6, within(1e-12));
        assertThat(travel.peakAcceleration()).isEqualTo(27, within(1e-12));
        assertThat(travel.peakJerk()).isEqualTo(243, within(1e-10));
    }

    /// 0 to 10 in/s with 200 in/s2: 0.5 in with 4000 in/s3, 0.375 in with 8000 in/s3.
    @Test
    void ramps_coverWhatTablesSay() {
        assertThat(RunUp.find(10, Limits.of(20, 200, 4000)).orElseThrow().distance())
                .isEqualTo(0.5, within(1e-12));
        assertThat(RunUp.find(10, Limits.of(20, 200, 8000)).orElseThrow().distance())
                .isEqualTo(0.375, within(1e-12));
    }

    @Test
    void smooth_sixHundredInFour() {
        Travel travel = Travel.inThirds(0.6, 4, Profile.SMOOTH);
        assertThat(travel.peakSpeed()).isEqualTo(0.28125, within(1e-12));
        assertThat(travel.peakAcceleration()).isEqualTo(0.2165064, within(5e-8));
        assertThat(travel.accelerationAt(4 * (3 - Math.sqrt(3)) / 6)).isEqualTo(0.2165064, within(5e-8));
        assertThat(travel.peakJerk()).isEqualTo(60 * 0.6 / 64, within(1e-12));
    }
}
