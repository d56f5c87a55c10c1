package plumeline.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

final class ClearanceTest {
    private static final Solid CAN = Solid.cylinder(0.042, 0.118);
    private static final Solid FLACON = new Solid.Revolved(List.of(
            new Station(0, 0.021), new Station(0.09, 0.021), new Station(0.09, 0.010), new Station(0.118, 0.010)));

    private static Body at(Solid solid, double x, double y) {
        return new Body(solid, Pose.at(x, y));
    }

    @Test
    void between_cylinders_isAxesLessRadii_orTheirOverlap() {
        assertThat(Clearance.betweenMetres(at(CAN, 0, 0), at(CAN, 0.06, 0.08))).isEqualTo(0.1 - 0.042, within(1e-9));
        assertThat(Clearance.betweenMetres(at(CAN, 0, 0), at(CAN, 0.03, 0))).isEqualTo(-0.012, within(1e-6));
        assertThat(Clearance.toMetres(at(CAN, 0, 0), new Vec(0, -0.6, 0.05))).isEqualTo(0.579, within(1e-9));
    }

    @Test
    void atLeast_isNeverMoreThanTheClearance_andUprightCylindersHaveJustThat() {
        RandomGenerator random = new SplittableRandom(7);
        List<Solid> solids = List.of(CAN, FLACON, new Solid.Box(0.3, 0.02, 0.05));
        for (int round = 0; round < 900; round++) {
            Body one = posed(solids.get(round % 3), random);
            Body other = posed(solids.get(round / 3 % 3), random);
            assertThat(Clearance.atLeastMetres(one, other))
                    .isLessThanOrEqualTo(Clearance.betweenMetres(one, other) + 1e-9);
            Vec place = other.middle();
            assertThat(Clearance.atLeastMetres(one, place, 0))
                    .isLessThanOrEqualTo(Clearance.toMetres(one, place) + 1e-9);
        }
        assertThat(Clearance.atLeastMetres(at(CAN, 0, 0), at(CAN, 0.06, 0.08))).isEqualTo(0.1 - 0.042, within(1e-9));
    }

    private static Body posed(Solid solid, RandomGenerator random) {
        Vec base = new Vec(random.nextDouble(-0.3, 0.3), random.nextDouble(-0.3, 0.3), random.nextDouble(0.2));
        return new Body(solid, new Pose(base, random.nextDouble(3), random.nextBoolean() ? 0 : random.nextDouble(1)));
    }

    /// Along y, at a height, so far to camera right.
    private static boolean isMetAlong(Body body, double x, double z) {
        return Clearance.isMet(body, new Vec(x, -1, z), new Vec(x, 1, z));
    }

    @Test
    void isMet_level_isWithinTheRadiusOfThatHeight() {
        Body flacon = at(FLACON, 0.1, 0.2);
        for (double[] row : new double[][] {{0.05, 0.021}, {0.1, 0.010}}) {
            for (double side : new double[] {-1, 1}) {
                assertThat(isMetAlong(flacon, 0.1 + side * (row[1] - 1e-6), row[0]))
                        .isTrue();
                assertThat(isMetAlong(flacon, 0.1 + side * (row[1] + 1e-6), row[0]))
                        .isFalse();
            }
        }
        assertThat(isMetAlong(flacon, 0.1, 0.118 - 1e-6)).isTrue();
        assertThat(isMetAlong(flacon, 0.1, 0.118 + 1e-6)).isFalse();
    }

    @Test
    void isMet_turnedBox_isWithinItsDiagonal() {
        Body box = new Body(new Solid.Box(0.06, 0.06, 0.1), new Pose(Vec.ZERO, Math.PI / 4, 0));
        double half = 0.03 * Math.sqrt(2);
        assertThat(isMetAlong(box, half - 1e-6, 0.05)).isTrue();
        assertThat(isMetAlong(box, half + 1e-6, 0.05)).isFalse();
        assertThat(isMetAlong(box, 0, 0.1 + 1e-6)).isFalse();
    }

    @Test
    void isMet_lineThatEndsBeforeOrIsAPlace_isByItsEnds() {
        Body can = at(CAN, 0, 0);
        Vec eye = new Vec(0, -0.6, 0.05);
        assertThat(Clearance.isMet(can, eye, new Vec(0, -0.021 - 1e-6, 0.05))).isFalse();
        assertThat(Clearance.isMet(can, eye, new Vec(0, -0.021 + 1e-6, 0.05))).isTrue();
        assertThat(Clearance.isMet(can, eye, eye)).isFalse();
        Vec inside = new Vec(0.01, 0, 0.05);
        assertThat(Clearance.isMet(can, inside, inside)).isTrue();
    }
}
