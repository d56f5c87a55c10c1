package plumeline.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.geom.Aim;
import plumeline.geom.Pinhole;
import plumeline.geom.Plane;
import plumeline.geom.Point;
import plumeline.geom.Vec;

/// The picture through a tank's wall: against rays bent face by face in three dimensions, and its symmetries.
final class TankViewTest {
    private static final long SEED = 41_2026;
    private static final Plane FACE = new Plane(new Vec(0, -0.2, 0), new Vec(0, -1, 0));
    private static final TankView LEVEL =
            new TankView(new Aim(new Vec(0, -1, 0.14), 0, 0), FACE, FlatWall.ofWater(0.008), 0.26);

    /// By hand, straight on: into water 0.95348 of the light (air to glass ((1.52 − 1)/2.52)² = 0.04258, glass to water
    /// ((1.52 − 1.333)/2.853)² = 0.00430, to and fro counted), spread over 1.333² = 1.7769 of the angle; through a
    /// dry pane (1 − 0.04258)/(1 + 0.04258) = 0.91832.
    @Test
    void brightness_isWhatPassesOverTheIndexSquared() {
        assertThat(LEVEL.brightness(new Vec(0, 0.1, 0.14))).isCloseTo(0.95348 / 1.776889, within(1e-5));
        TankView high = new TankView(new Aim(new Vec(0, -1, 0.3), 0, 0), FACE, FlatWall.ofWater(0.008), 0.26);
        assertThat(high.brightness(new Vec(0, 0.1, 0.3))).isCloseTo(0.91832, within(1e-5));
        assertThat(LEVEL.brightness(new Vec(0, -0.5, 0.14))).isEqualTo(1);
        // At 60 deg in air, 34.74 in glass, 40.52 in water: of s 0.8165 · 0.98914 / (1 − 0.1835 · 0.01086) = 0.8092, of
        // p
        // 0.9978.
        Vec aslant = new Vec(0.8 * Math.tan(Math.toRadians(60)) + 0.008 * 0.693375 + 0.2 * 0.854587, 0.008, 0.14);
        assertThat(LEVEL.brightness(aslant) * 1.776889).isCloseTo(0.9035, within(2e-4));
    }

    @Test
    void project_rayBentFaceByFace_meetsThePlace() {
        Random random = new Random(SEED);
        int count = 0;
        for (int i = 0; i < 2000; i++) {
            Vec normal = new Vec(0.4 * random.nextGaussian(), -1, 0.1 * random.nextGaussian());
            Plane face = new Plane(new Vec(0, -0.2, 0.1), normal);
            Aim aim = Aim.toward(new Vec(random.nextGaussian() * 0.3, -1.2, 0.3 * random.nextDouble()), Vec.ZERO);
            TankView view = new TankView(aim, face, FlatWall.ofWater(0.01), Double.POSITIVE_INFINITY);
            Vec place =
                    new Vec(random.nextGaussian() * 0.2, 0.1 + 0.3 * random.nextDouble(), random.nextDouble() * 0.3);
            Point seen = view.project(place);
            Vec ray = aim.forward()
                    .plus(aim.right().times(seen.x()))
                    .plus(aim.up().times(seen.y()));
            Vec outer = meet(aim.eye(), ray, face, 0);
            Vec inGlass = passed(new Boundary(1, 1.52).bend(ray, normal));
            Vec inner = meet(outer, inGlass, face, 0.01);
            Vec inWater = passed(new Boundary(1.52, 1.333).bend(inGlass, normal));
            if (normal.unit().dot(place.minus(face.through())) > -0.01) {
                continue; // in the pane or before it
            }
            count++;
            double missed = place.minus(inner).cross(inWater).lengthMetres();
            assertThat(missed).as("seed %d, case %d", SEED, i).isLessThan(1e-12);
            assertThat(view.path(place).get(1).distanceMetres(outer)).isLessThan(1e-12);
            assertThat(view.path(place).get(2).distanceMetres(inner)).isLessThan(1e-12);
        }
        assertThat(count).isGreaterThan(1900);
    }

    private static Vec meet(Vec from, Vec direction, Plane face, double behind) {
        Vec normal = face.normal();
        double way = (normal.dot(face.through().minus(from)) - behind) / normal.dot(direction);
        return from.plus(direction.times(way));
    }

    private static Vec passed(Bent bent) {
        return switch (bent) {
            case Bent.Passed(Vec direction) -> direction;
            case Bent.Reflected(Vec _) -> throw new AssertionError("reflected");
        };
    }

    @Test
    void bend_pastTheCriticalAngle_reflects() {
        Vec steep = new Vec(Math.sin(0.9), 0, -Math.cos(0.9));
        Bent bent = new Boundary(1.333, 1).bend(steep, Vec.UP);
        assertThat(bent).isInstanceOf(Bent.Reflected.class);
        assertThat(((Bent.Reflected) bent).direction().distanceMetres(new Vec(steep.x(), 0, -steep.z())))
                .isLessThan(1e-15);
    }

    @Test
    void bend_turnedRound_goesTheSameWayBack() {
        Random random = new Random(SEED);
        for (int i = 0; i < 1000; i++) {
            Vec ray = new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
            Vec normal = new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
            Vec inside = passed(new Boundary(1, 1.333).bend(ray, normal));
            Vec back = passed(new Boundary(1.333, 1).bend(inside.times(-1), normal));
            assertThat(back.distanceMetres(ray.times(-1))).isLessThan(1e-9);
        }
    }

    @Test
    void placeBehind_isTheInverseOfProject() {
        Random random = new Random(SEED);
        for (int i = 0; i < 1000; i++) {
            Vec place =
                    new Vec(random.nextGaussian() * 0.1, -0.192 + 0.3 * random.nextDouble(), 0.2 * random.nextDouble());
            Vec back = LEVEL.placeBehind(LEVEL.project(place), place.y() + 0.192);
            assertThat(back.distanceMetres(place)).isLessThan(1e-12);
        }
    }

    @Test
    void inFrontOfTheWall_isThePinhole() {
        Vec place = new Vec(0.1, -0.3, 0.1);
        assertThat(LEVEL.project(place)).isEqualTo(new Pinhole(LEVEL.aim()).project(place));
        assertThat(LEVEL.depth(place)).isEqualTo(0.7);
        assertThat(LEVEL.way(place)).isEqualTo(TankView.Way.DIRECT);
    }

    @Test
    void onTheAxis_depthIsTrueLessTheParaxialShift() {
        Vec middle = new Vec(0, 0, 0.14);
        double shift = LEVEL.water().paraxialShiftMetres(0.192);
        assertThat(LEVEL.depth(middle)).isCloseTo(1 - shift, within(1e-15));
        double small = 1e-4;
        assertThat(LEVEL.project(new Vec(small, 0, 0.14)).x()).isCloseTo(small / (1 - shift), within(1e-11));
    }

    @Test
    void crossingTheFaces_picturesJoin() {
        for (double face : new double[] {-0.2, -0.192}) {
            Vec before = new Vec(0.15, face - 1e-9, 0.1);
            Vec after = new Vec(0.15, face + 1e-9, 0.1);
            assertThat(LEVEL.project(after).x()).isCloseTo(LEVEL.project(before).x(), within(1e-8));
            assertThat(LEVEL.depth(after)).isCloseTo(LEVEL.depth(before), within(1e-8));
        }
    }

    @Test
    void wholeSetTurnedAndShifted_samePicture() {
        Random random = new Random(SEED);
        for (int i = 0; i < 200; i++) {
            double turn = random.nextGaussian();
            Vec shift = new Vec(random.nextGaussian(), random.nextGaussian(), 0);
            Vec place = new Vec(0.2 * random.nextGaussian(), 0.1 * random.nextDouble(), 0.3 * random.nextDouble());
            Aim aim = new Aim(LEVEL.aim().eye().turned(turn).plus(shift), turn, 0);
            Plane face = new Plane(
                    FACE.through().turned(turn).plus(shift), FACE.normal().turned(turn));
            TankView turned = new TankView(aim, face, LEVEL.water(), 0.26);
            Point there = turned.project(place.turned(turn).plus(shift));
            Point here = LEVEL.project(place);
            assertThat(Math.hypot(there.x() - here.x(), there.y() - here.y())).isLessThan(1e-12);
        }
    }

    @Test
    void leftAndRight_areMirrored() {
        Point left = LEVEL.project(new Vec(-0.17, 0.05, 0.03));
        Point right = LEVEL.project(new Vec(0.17, 0.05, 0.03));
        assertThat(left.x()).isEqualTo(-right.x());
        assertThat(left.y()).isEqualTo(right.y());
    }

    @Test
    void water_makesThingsLargerAndNearer_airBehindGlassBarely() {
        Vec wet = new Vec(0.1, 0, 0.2);
        Vec dry = new Vec(0.1, 0, 0.4);
        Pinhole plain = new Pinhole(LEVEL.aim());
        assertThat(LEVEL.project(wet).x() / plain.project(wet).x()).isBetween(1.04, 1.06);
        assertThat(LEVEL.project(dry).x() / plain.project(dry).x()).isBetween(1.002, 1.004);
        assertThat(LEVEL.way(wet)).isEqualTo(TankView.Way.THROUGH_WATER);
        assertThat(LEVEL.way(dry)).isEqualTo(TankView.Way.THROUGH_GLASS);
    }

    @Test
    void sightLineAcrossTheSurface_isNamed() {
        TankView high = new TankView(new Aim(new Vec(0, -1, 0.5), 0, -0.3), FACE, FlatWall.ofWater(0.008), 0.26);
        assertThat(high.way(new Vec(0, 0.1, 0.25))).isEqualTo(TankView.Way.THROUGH_SURFACE);
        assertThat(high.way(new Vec(0, 0.1, 0.02))).isEqualTo(TankView.Way.THROUGH_WATER);
        TankView low = new TankView(new Aim(new Vec(0, -1, 0.1), 0, 0), FACE, FlatWall.ofWater(0.008), 0.26);
        assertThat(low.way(new Vec(0, 0.1, 0.27))).isEqualTo(TankView.Way.THROUGH_SURFACE);
        assertThat(low.way(new Vec(0, 0.1, 0.4))).isEqualTo(TankView.Way.THROUGH_GLASS);
    }

    @Test
    void depth_growsWithDepth() {
        double last = 0;
        for (int i = 0; i < 600; i++) {
            double depth = LEVEL.depth(new Vec(0.2, -0.3 + i * 1e-3, 0.1));
            assertThat(depth).isGreaterThan(last);
            last = depth;
        }
    }

    @Test
    void lensPointBehindTheWall_isRefused() {
        Aim inside = new Aim(new Vec(0, 0, 0.1), 0, 0);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TankView(inside, FACE, FlatWall.ofWater(0.008), 1))
                .withMessage("air in front of the wall is -0.2; must be finite and greater than 0");
    }
}
