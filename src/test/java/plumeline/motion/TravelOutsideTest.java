package plumeline.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

/// Moves against figures that aren't ours.
final class TravelOutsideTest {
    private static final String FLASH_HOGAN =
            "T. Flash and N. Hogan, The coordination of arm movements, J. Neuroscience 5 (1985) 1688-1703, from memory";

    @Test
    @Outside(source = FLASH_HOGAN, place = "minimum-jerk trajectory", kind = "closed form")
    void smooth_passesTheKnownPlaces() {
        Travel travel = Travel.inThirds(1, 1, Profile.SMOOTH);
        assertThat(travel.at(0.1)).isEqualTo(0.00856, within(1e-12));
        assertThat(travel.at(0.25)).isEqualTo(0.103515625, within(1e-12));
        assertThat(travel.at(0.5)).isEqualTo(0.5, within(1e-12));
        assertThat(travel.at(0.75)).isEqualTo(1 - 0.103515625, within(1e-12));
    }

    @Test
    @Outside(
            source = FLASH_HOGAN,
            place = "peak speed 1.875 d/T, peak acceleration 10/sqrt(3) d/T2",
            kind = "closed form")
    void smooth_peaksAtTheKnownSpeedAndAcceleration() {
        double distance = 0.12;
        double time = 3;
        Travel travel = Travel.inThirds(distance, time, Profile.SMOOTH);
        assertThat(travel.peakSpeed()).isEqualTo(1.875 * distance / time, within(1e-12));
        double h = 1e-4 * time;
        double fastest = 0;
        double hardest = 0;
        for (int i = 1; i < 9999; i++) {
            double t = i * h;
            fastest = Math.max(fastest, (travel.at(t + h) - travel.at(t - h)) / (2 * h));
            hardest = Math.max(hardest, (travel.at(t + h) - 2 * travel.at(t) + travel.at(t - h)) / (h * h));
        }
        assertThat(fastest).isEqualTo(1.875 * distance / time, within(1e-7));
        assertThat(hardest).isEqualTo(10 / Math.sqrt(3) * distance / (time * time), within(1e-6));
    }

    @Test
    @Outside(
            source = "brief A as a crew would hand it over, shot A1: 600 mm in 8.0 s with 200 mm/s2",
            place = "Expected findings",
            kind = "worked example",
            printedDigits = 3)
    void briefA_theSlidePeaksAtSeventyEightPointNine() {
        Travel slide = Travel.within(0.6, 8, Profile.TRAPEZOID, 0.2);
        assertThat(slide.peakSpeed() * 1e3).isEqualTo(78.9, within(0.05));
        // An even 75 mm/s is what the brief says overruns the rail with its run-up; 4.0 s would need 150 mm/s.
        assertThat(Travel.inThirds(0.6, 8, Profile.EVEN).peakSpeed() * 1e3).isEqualTo(75, within(1e-9));
        assertThat(Travel.inThirds(0.6, 4, Profile.EVEN).peakSpeed() * 1e3).isEqualTo(150, within(1e-9));
    }

    @Test
    @Outside(
            source = "brief A, shot A4 and brief B, shot B3: 10 rpm turn 60 deg in 24 frames at 24 fps, 5 rpm 36"
                    + " deg in 1.2 s",
            place = "Expected findings",
            kind = "worked example",
            printedDigits = 2)
    void briefs_platesTurnAtTheirRate() {
        assertThat(Travel.inThirds(Math.toRadians(60), 24 / 24.0, Profile.EVEN).peakSpeed())
                .isEqualTo(10 * 2 * Math.PI / 60, within(1e-12));
        assertThat(Travel.inThirds(Math.toRadians(36), 1.2, Profile.EVEN).peakSpeed())
                .isEqualTo(5 * 2 * Math.PI / 60, within(1e-12));
    }

    @Test
    @Outside(source = "kinematics with constant acceleration, s = a t^2 / 2; school physics", kind = "closed form")
    void trapezoid_speedsUpAtTheGivenRateAndCoversTheArea() {
        Travel slide = Travel.within(0.6, 8, Profile.TRAPEZOID, 0.2);
        assertThat(slide.at(0.25)).isEqualTo(0.2 * 0.25 * 0.25 / 2, within(1e-12));
        // The area under a trapezoid of speeds: peak times (time − ramp).
        double peak = slide.peakSpeed();
        assertThat(peak * (8 - peak / 0.2)).isEqualTo(0.6, within(1e-12));
    }

    @Test
    @Outside(source = "a triangle of speeds: d = a T^2 / 4; school physics", kind = "closed form")
    void trapezoid_asShortAsItsAccelerationAllows_isATriangle() {
        Travel slide = Travel.within(0.2, 2, Profile.TRAPEZOID, 0.2);
        assertThat(slide.peakSpeed()).isEqualTo(0.2, within(1e-9));
        assertThat(slide.at(1)).isEqualTo(0.1, within(1e-12));
        assertThat(slide.at(0.5)).isEqualTo(0.025, within(1e-9));
    }
}
