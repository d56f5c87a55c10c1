package plumeline.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

final class TravelTest {
    @Test
    void within_sixHundredInEightAtTwoHundred_peaksJustUnderEighty() {
        // Worked by hand: v(8 − v/200) = 600 gives v = 800 − √(640000 − 120000) = 78.89 mm/s.
        Travel slide = Travel.within(0.6, 8, Profile.TRAPEZOID, 0.2);
        assertThat(slide.peakSpeed()).isEqualTo(0.07889, within(5e-6));
    }

    @Test
    void at_coversTheWholeDistanceAndNeverTurnsBack() {
        for (Profile profile : Profile.values()) {
            Travel travel = Travel.inThirds(-0.6, 8, profile);
            double last = 0;
            for (int i = 0; i <= 800; i++) {
                double here = travel.at(i * 0.01);
                assertThat(here).isLessThanOrEqualTo(last + 1e-15);
                last = here;
            }
            assertThat(travel.at(4)).isEqualTo(-0.3, within(1e-12));
            assertThat(travel.at(8)).isEqualTo(-0.6, within(1e-12));
            assertThat(travel.at(9)).isEqualTo(-0.6);
            assertThat(travel.at(-1)).isZero();
        }
    }

    @Test
    void at_speedIsTheSlopeAndPeaksAsSaid() {
        for (Profile profile : Profile.values()) {
            Travel travel = Travel.inThirds(1, 3, profile);
            double fastest = 0;
            for (int i = 1; i < 3000; i++) {
                fastest = Math.max(fastest, (travel.at(i * 1e-3) - travel.at((i - 1) * 1e-3)) / 1e-3);
            }
            assertThat(fastest).isEqualTo(travel.peakSpeed(), within(1e-3));
        }
    }

    @Test
    void sCurve_inThirds_peakAccelerationIsSixAndThreeQuarters() {
        Travel travel = Travel.inThirds(1, 1, Profile.S_CURVE);
        double h = 1e-4;
        double most = 0;
        for (int i = 1; i < 9999; i++) {
            double t = i * h;
            most = Math.max(most, (travel.at(t + h) - 2 * travel.at(t) + travel.at(t - h)) / (h * h));
        }
        assertThat(most).isEqualTo(6.75, within(0.01));
    }
}
