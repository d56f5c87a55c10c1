package plumeline.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.geom.Body;
import plumeline.geom.Hull;
import plumeline.geom.Plane;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Vec;

/// What is left of a square past bodies, against areas by hand and against rays.
final class UncoveredTest {
    private static final Vec EYE = Vec.ZERO;

    /// A square of 2 m, 2 m before the eye.
    private static final List<Vec> SQUARE =
            List.of(new Vec(-1, 2, -1), new Vec(1, 2, -1), new Vec(1, 2, 1), new Vec(-1, 2, 1));

    private static Body box(double x, double y, double z, double width, double depth, double height) {
        return new Body(new Solid.Box(width, depth, height), new Pose(new Vec(x, y, z), 0, 0));
    }

    /// The pieces' area one metre before the eye; the whole square has 1 m² there.
    private static double area(List<List<Vec>> pieces) {
        double area = 0;
        for (List<Vec> piece : pieces) {
            for (int i = 0; i < piece.size(); i++) {
                Vec one = piece.get(i);
                Vec next = piece.get((i + 1) % piece.size());
                area += (one.x() * next.z() - next.x() * one.z()) / 2;
            }
        }
        return Math.abs(area);
    }

    private static double left(Body... bodies) {
        List<Hull> hulls = new ArrayList<>();
        for (Body body : bodies) {
            hulls.addAll(Hull.of(body, 64));
        }
        return area(Uncovered.pieces(EYE, SQUARE, hulls));
    }

    @Test
    void nothingBefore_leavesAll() {
        assertThat(left()).isCloseTo(1, within(1e-12));
        assertThat(left(box(3, 1, 0, 1, 0.1, 1))).isCloseTo(1, within(1e-12));
        assertThat(left(box(0, -1, 0, 1, 0.1, 1))).isCloseTo(1, within(1e-12));
    }

    /// A wedge that grows from 0.2 m wide at 1 m to 3.8 m at 3 m: past its front the square is before it. At 2 m it is
    /// 2 m wide, half as high as the square or as high: what of it is nearer covers half or all.
    @Test
    void whatReachesBehind_hidesNoMoreThanWhatIsBefore() {
        Plane front = new Plane(new Vec(0, 2, 0), new Vec(0, -1, 0));
        for (double share : new double[] {0.5, 1}) {
            Hull wedge = new Hull(ring(1, 0.1, 0.1 * share), ring(3, 1.9, 1.9 * share));
            assertThat(area(Uncovered.pieces(EYE, SQUARE, front, List.of(wedge))))
                    .isCloseTo(1 - share, within(1e-9));
        }
        Hull behind = new Hull(ring(2.1, 0.5, 0.5), ring(3, 0.5, 0.5));
        assertThat(area(Uncovered.pieces(EYE, SQUARE, front, List.of(behind)))).isCloseTo(1, within(1e-12));
        assertThat(area(Uncovered.pieces(EYE, SQUARE, List.of(behind)))).isLessThan(0.95);
    }

    private static List<Vec> ring(double y, double x, double z) {
        return List.of(new Vec(-x, y, -z), new Vec(x, y, -z), new Vec(x, y, z), new Vec(-x, y, z));
    }

    @Test
    void cover_takesWhatItCovers() {
        // Its face is at 0.95 m: it covers to the right of x = 0, half.
        assertThat(left(box(1, 1, -2, 2, 0.1, 4))).isCloseTo(0.5, within(1e-12));
        // A hole of 0.2 by 0.2 m at 0.95 m: 0.0443 m² one metre before the eye.
        assertThat(left(box(0, 1, -0.1, 0.2, 0.1, 0.2))).isCloseTo(1 - 0.04 / 0.9025, within(1e-12));
        assertThat(Uncovered.pieces(EYE, SQUARE, Hull.of(box(0, 1, -1, 2, 0.1, 2), 8)))
                .isEmpty();
    }

    @Test
    void covers_countOnceWhereTheyOverlap() {
        Body one = box(0, 1, -0.1, 0.2, 0.1, 0.2);
        assertThat(left(one, one)).isCloseTo(left(one), within(1e-12));
        assertThat(left(one, box(0, 0.5, -0.01, 0.02, 0.05, 0.02))).isCloseTo(left(one), within(1e-12));
    }

    /// A wall that runs past the eye covers all to the right of its edge, though most of it is beside or behind.
    @Test
    void whatRunsPastTheEye_coversWhatIsAhead() {
        assertThat(left(box(1.05, 0, -4, 2, 1.9, 8))).isCloseTo(1 - (0.5 - 0.05 / 0.95), within(1e-9));
        assertThat(left(box(1.05, -9, -4, 2, 19.9, 8))).isCloseTo(1 - (0.5 - 0.05 / 0.95), within(1e-9));
    }

    /// Rays through a grid of the square, met or not by a box's slabs or a cylinder's circle and ends: common practice
    /// of ray casting, written here.
    @Test
    void manyBodies_leaveWhatRaysPass() {
        Random random = new Random(7);
        for (int round = 0; round < 20; round++) {
            Body box = box(
                    random.nextDouble(-0.6, 0.6),
                    random.nextDouble(0.3, 1.5),
                    random.nextDouble(-0.6, 0.2),
                    random.nextDouble(0.05, 0.4),
                    random.nextDouble(0.05, 0.3),
                    random.nextDouble(0.05, 0.5));
            double radius = random.nextDouble(0.05, 0.25);
            double height = random.nextDouble(0.1, 0.8);
            Vec base = new Vec(random.nextDouble(-0.6, 0.6), random.nextDouble(0.4, 1.5), random.nextDouble(-0.6, 0.2));
            Body can = new Body(
                    new Solid.Revolved(
                            List.of(new plumeline.geom.Station(0, radius), new plumeline.geom.Station(height, radius))),
                    new Pose(base, 0, 0));
            int pass = 0;
            int each = 300;
            for (int i = 0; i < each; i++) {
                for (int j = 0; j < each; j++) {
                    Vec way = new Vec(-0.5 + (i + 0.5) / each, 1, -0.5 + (j + 0.5) / each);
                    pass += meetsBox(way, box.bounds().low(), box.bounds().high())
                                    || meetsCan(way, base, radius, height)
                            ? 0
                            : 1;
                }
            }
            assertThat(left(box, can)).isCloseTo(pass / (double) (each * each), within(0.003));
        }
    }

    private static boolean meetsBox(Vec way, Vec low, Vec high) {
        double enter = 0;
        double leave = 1e9;
        double[] ways = {way.x(), way.y(), way.z()};
        double[] lows = {low.x(), low.y(), low.z()};
        double[] highs = {high.x(), high.y(), high.z()};
        for (int axis = 0; axis < 3; axis++) {
            double one = lows[axis] / ways[axis];
            double other = highs[axis] / ways[axis];
            enter = Math.max(enter, Math.min(one, other));
            leave = Math.min(leave, Math.max(one, other));
        }
        return enter < leave;
    }

    private static boolean meetsCan(Vec way, Vec base, double radius, double height) {
        double a = way.x() * way.x() + way.y() * way.y();
        double b = way.x() * base.x() + way.y() * base.y();
        double c = base.x() * base.x() + base.y() * base.y() - radius * radius;
        double root = b * b - a * c;
        if (root < 0) {
            return false;
        }
        double enter = (b - Math.sqrt(root)) / a;
        double leave = (b + Math.sqrt(root)) / a;
        double low = base.z() / way.z();
        double high = (base.z() + height) / way.z();
        return Math.max(Math.max(enter, 0), Math.min(low, high)) < Math.min(leave, Math.max(low, high));
    }
}
