package plumeline.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Pinhole;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;

final class SightTest {
    private static final Solid CAN = Solid.cylinder(0.042, 0.118);
    private static final Solid FLACON = new Solid.Revolved(List.of(
            new Station(0, 0.021), new Station(0.09, 0.021), new Station(0.09, 0.010), new Station(0.118, 0.010)));

    private static Pinhole level(double x, double y, double z) {
        return new Pinhole(new Aim(new Vec(x, y, z), 0, 0));
    }

    private static Body at(Solid solid, double x, double y) {
        return new Body(solid, Pose.at(x, y));
    }

    @Test
    void extent_uprightCylinder_isItsTangents() {
        Extent extent = Sight.extent(level(0, -0.6, 0.059), at(CAN, 0, 0));
        double tangent = Math.tan(Math.asin(0.021 / 0.6));
        assertThat(extent.right()).isEqualTo(tangent, within(1e-14));
        assertThat(extent.left()).isEqualTo(-tangent, within(1e-14));
        assertThat(extent.top()).isEqualTo(0.059 / (0.6 - 0.021), within(1e-14));
    }

    @Test
    void hidden_cansInFile_haveTheLeewayOfTheirSpacing() {
        Pinhole lens = level(0, -0.6, 0.059);
        Body front = at(CAN, 0, 0);
        for (int i = 1; i <= 3; i++) {
            Sides sides = Sight.hidden(lens, at(CAN, 0, 0.1 * i), List.of(front));
            double depth = 0.6 + 0.1 * i;
            double expected = depth * (Math.tan(Math.asin(0.021 / 0.6)) - Math.tan(Math.asin(0.021 / depth)));
            assertThat(sides.right() * depth).isEqualTo(expected, within(1e-9));
            assertThat(sides.left() * depth).isEqualTo(expected, within(1e-9));
        }
    }

    @Test
    void hidden_sideways_sticksOutByWhatIsMissing() {
        Sides sides = Sight.hidden(level(0, -0.6, 0.059), at(CAN, 0.01, 0.1), List.of(at(CAN, 0, 0)));
        double right = Math.tan(Math.atan(0.01 / 0.7) + Math.asin(0.021 / Math.hypot(0.7, 0.01)));
        assertThat(sides.right()).isEqualTo(Math.tan(Math.asin(0.021 / 0.6)) - right, within(1e-9));
        assertThat(sides.least()).isEqualTo(sides.right());
    }

    @Test
    void hidden_equalCylindersInFile_allPeekAtOneRadius() {
        for (double spacing : new double[] {0.05, 0.1, 0.4, 1.3}) {
            for (double moved : new double[] {0.02099, 0.02101}) {
                Pinhole lens = level(moved, -0.6, 0.059);
                Body front = at(CAN, 0, 0);
                double least =
                        Sight.hidden(lens, at(CAN, 0, spacing), List.of(front)).least();
                assertThat(least > 0).isEqualTo(moved < 0.021);
            }
        }
    }

    @Test
    void hidden_lensAboveTheLid_showsFartherLids() {
        Body front = at(CAN, 0, 0);
        assertThat(Sight.hidden(level(0, -0.6, 0.117), at(CAN, 0, 0.1), List.of(front))
                        .least())
                .isPositive();
        assertThat(Sight.hidden(level(0, -0.6, 0.119), at(CAN, 0, 0.1), List.of(front))
                        .above())
                .isNegative();
    }

    @Test
    void hidden_flaconBehindFlacon_isLimitedByItsStopper() {
        Sides sides = Sight.hidden(level(0, -0.6, 0.059), at(FLACON, 0, 0.1), List.of(at(FLACON, 0, 0)));
        double expected = Math.tan(Math.asin(0.010 / 0.6)) - Math.tan(Math.asin(0.010 / 0.7));
        assertThat(sides.right()).isEqualTo(expected, within(1e-7));
        assertThat(sides.left()).isEqualTo(expected, within(1e-7));
    }

    @Test
    void gaps_afterTheSlide_areBriefA() {
        Aim aim = new Aim(new Vec(-0.6, -0.6, 0.059), Math.toRadians(39.5), 0);
        List<Body> row = List.of(at(CAN, 0, 0), at(CAN, 0, 0.1), at(CAN, 0, 0.2), at(CAN, 0, 0.3));
        List<Gap> gaps = Sight.gaps(new Pinhole(aim), row);
        assertThat(gaps).hasSize(3);
        assertThat(gaps).allMatch(gap -> gap.width() > 0);
    }

    @Test
    void depths_uprightCylinderSeenLevel_areClosedForm() {
        Depths depths = Sight.depths(new Aim(new Vec(0, -0.6, 0.059), 0, 0), at(CAN, 0, 0));
        assertThat(depths.nearMetres()).isEqualTo(0.6 - 0.021, within(1e-12));
        assertThat(depths.outlineMetres()).isEqualTo(0.6 - 0.021 * 0.021 / 0.6, within(1e-12));
        assertThat(depths.axisMetres()).isEqualTo(0.6, within(1e-12));
    }
}
