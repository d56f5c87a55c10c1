package plumeline.lit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoublePredicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.geom.Plane;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;
import plumeline.light.Disc;
import plumeline.light.Emitter;
import plumeline.light.Panel;
import plumeline.mirror.GlossyBody;
import plumeline.mirror.Looking;
import plumeline.mirror.Stripe;
import plumeline.mirror.Ways;
import plumeline.optics.FlatWall;
import plumeline.optics.TankView;
import plumeline.stage.TankWalls;
import plumeline.tidy.Outside;

/// What a can in a tank mirrors of lamps outside, against rays that are shot from the camera and followed by the laws
/// of refraction and reflection, in code of its own.
@Outside(
        source = "Snell's law and the law of reflection (any optics text); rays shot from the camera, written here",
        kind = "worked example")
final class MirroredThroughTankOutsideTest {
    private static final int STEPS = 3000;
    private static final double RADIUS = 0.04;
    private static final double HEIGHT = 0.16;
    private static final double FRONT = -0.15;
    private static final double LINE = 0.28;
    private static final Vec EYE = new Vec(0.05, -1.1, 0.17);
    private static final Vec AXIS = new Vec(-0.02, 0.01, 0.04);
    private static final Panel LEFT = new Panel(
            new Vec(-0.8, -0.35, 0.12), new Vec(0.92, 0.392, 0).unit(), new Vec(0.392, -0.92, 0).unit(), 0.3, 0.9, 1);
    private static final Panel BEFORE = new Panel(
            new Vec(0.35, -0.9, 0.2), new Vec(-0.36, 0.93, 0).unit(), new Vec(0.93, 0.36, 0).unit(), 0.12, 0.6, 1);

    /// Glass and water of a tank, 0.4 by 0.3 by 0.35 m inside.
    private record Tank(double pane, double glass, double water) {
        private TankWalls walls() {
            return new TankWalls(
                    new Bounds(new Vec(-0.2 - pane, FRONT - pane, -pane), new Vec(0.2 + pane, 0.15 + pane, 0.35)),
                    new Bounds(new Vec(-0.2, FRONT, 0), new Vec(0.2, 0.15, 0.35)),
                    pane,
                    LINE);
        }

        private Looking looking(Aim aim) {
            Plane front = new Plane(new Vec(0, FRONT - pane, 0), new Vec(0, -1, 0));
            return new TankLooking(new TankView(aim, front, new FlatWall(pane, glass, water), LINE), walls());
        }
    }

    private static final Tank FULL = new Tank(0.008, 1.52, 1.333);

    private static final Body CAN = new Body(
            new Solid.Revolved(List.of(new Station(0, RADIUS), new Station(HEIGHT, RADIUS))), new Pose(AXIS, 0, 0));

    private static List<Stripe> stripes(Tank tank, double height, Emitter emitter) {
        Aim aim = new Aim(EYE, 0, 0);
        return new GlossyBody(CAN, aim, Ways.past(List.of(CAN)), tank.looking(aim)).listStripes(height, emitter);
    }

    @Test
    void lampBesideTheTank_isSeenThroughTheSidePaneAndThroughTheFrontOne() {
        assertThat(check(LEFT, 0.08)).isEqualTo(2);
        assertThat(check(LEFT, 0.03)).isEqualTo(2);
    }

    @Test
    void lampBeforeTheTank_isSeenThroughTheFrontPane() {
        assertThat(check(BEFORE, 0.08)).isEqualTo(1);
        Disc disc = new Disc(new Vec(0.2, -0.8, 0.1), new Vec(-0.2, 0.98, 0).unit(), 0.08, 1);
        assertThat(check(disc, 0.08)).isEqualTo(1);
    }

    @Test
    void withoutGlassAndWater_stripesAreThoseInAir() {
        Aim aim = new Aim(EYE, 0, 0);
        for (Emitter lamp : List.of(LEFT, BEFORE)) {
            for (double height : new double[] {0.03, 0.08, 0.13}) {
                Stripe air =
                        GlossyBody.alone(CAN, aim).listStripes(height, lamp).getFirst();
                Stripe none = stripes(new Tank(0, 1.52, 1), height, lamp).getFirst();
                assertThat(none.leftShare()).isCloseTo(air.leftShare(), within(1e-9));
                assertThat(none.rightShare()).isCloseTo(air.rightShare(), within(1e-9));
            }
        }
    }

    @Test
    void lampOverTheTank_isSeenThroughTheSurfaceInALeaningFace() {
        Vec base = new Vec(0, 0.06, 0.04);
        Body cone = new Body(
                new Solid.Revolved(List.of(new Station(0, 0.08), new Station(0.1, 0.02))), new Pose(base, 0, 0));
        Panel over = new Panel(new Vec(0, -0.6, 1), Vec.UP.times(-1), new Vec(1, 0, 0), 0.1, 1.6, 1);
        Aim aim = new Aim(EYE, 0, 0);
        Looking looking = FULL.looking(aim);
        GlossyBody glossy = new GlossyBody(cone, aim, Ways.past(List.of(cone)), looking);
        Stripe stripe = glossy.listStripes(0.05, over).getFirst();
        for (Vec edge : List.of(stripe.left().place(), stripe.right().place())) {
            Vec facing = new Vec(edge.x() - base.x(), edge.y() - base.y(), 0)
                    .unit()
                    .times(0.1)
                    .plus(Vec.UP.times(0.06))
                    .unit();
            double[] way = follow(onto(edge), facing, FULL);
            double on = (1 - way[2]) / way[5];
            assertThat(Math.abs(way[0] + on * way[3])).isCloseTo(0.05, within(1e-6));
        }
    }

    /// How many stripes there are.
    private static int check(Emitter lamp, double height) {
        double left = edge(x -> !Double.isNaN(rise(x, height)), middle(), -0.2);
        double right = edge(x -> !Double.isNaN(rise(x, height)), middle(), 0.2);
        List<Double> borders = new ArrayList<>();
        boolean meets = false;
        double before = left;
        for (int i = 0; i <= STEPS; i++) {
            double x = left + (right - left) * i / STEPS;
            if (meets(lamp, x, height) != meets) {
                boolean was = meets;
                borders.add((edge(at -> meets(lamp, at, height) == was, before, x) - left) / (right - left));
                meets = !was;
            }
            before = x;
        }
        List<Stripe> stripes = stripes(FULL, height, lamp);
        List<Double> found = stripes.stream()
                .flatMap(stripe -> Stream.of(stripe.leftShare(), stripe.rightShare()))
                .toList();
        assertThat(found).hasSameSizeAs(borders);
        for (int i = 0; i < found.size(); i++) {
            assertThat(found.get(i)).isCloseTo(borders.get(i), within(1e-6));
        }
        return stripes.size();
    }

    private static double middle() {
        return (AXIS.x() - EYE.x()) / (AXIS.y() - EYE.y());
    }

    private static double edge(DoublePredicate holds, double inside, double outside) {
        double in = inside;
        double out = outside;
        for (int i = 0; i < 60; i++) {
            double between = (in + out) / 2;
            if (holds.test(between)) {
                in = between;
            } else {
                out = between;
            }
        }
        return in;
    }

    /// The picture's height at which a column's ray meets the can so high; NaN where it misses it.
    private static double rise(double x, double height) {
        double low = -0.5;
        double high = 0.5;
        for (int i = 0; i < 60; i++) {
            double between = (low + high) / 2;
            if (hit(x, between)[2] < AXIS.z() + height) {
                low = between;
            } else {
                high = between;
            }
        }
        return hit(x, low)[6] >= 0 ? low : Double.NaN;
    }

    /// Where the ray of a picture point meets the can's endless mantle, or is nearest to it, and how it goes there;
    /// last how deep it would go, below 0 where it passes.
    private static double[] hit(double x, double y) {
        double[] ray = {EYE.x(), EYE.y(), EYE.z(), x, 1, y};
        cross(ray, 1, FRONT - FULL.pane, 1, FULL.glass);
        cross(ray, 1, FRONT, FULL.glass, FULL.water);
        double ox = ray[0] - AXIS.x();
        double oy = ray[1] - AXIS.y();
        double a = ray[3] * ray[3] + ray[4] * ray[4];
        double b = ox * ray[3] + oy * ray[4];
        double deep = b * b - a * (ox * ox + oy * oy - RADIUS * RADIUS);
        go(ray, (-b - Math.sqrt(Math.max(0, deep))) / a);
        double[] met = Arrays.copyOf(ray, 7);
        met[6] = deep;
        return met;
    }

    /// Moves a ray to a plane square to an axis, and bends it there: what goes along the plane keeps `n sin`.
    private static void cross(double[] ray, int axis, double plane, double before, double behind) {
        go(ray, (plane - ray[axis]) / ray[3 + axis]);
        double length = Math.sqrt(ray[3] * ray[3] + ray[4] * ray[4] + ray[5] * ray[5]);
        double side = Math.signum(ray[3 + axis]);
        double along = 0;
        for (int i = 0; i < 3; i++) {
            ray[3 + i] *= before / behind / length;
            along += i == axis ? 0 : ray[3 + i] * ray[3 + i];
        }
        ray[3 + axis] = side * Math.sqrt(1 - along);
    }

    private static void go(double[] ray, double on) {
        for (int i = 0; i < 3; i++) {
            ray[i] += on * ray[3 + i];
        }
    }

    private static boolean meets(Emitter lamp, double x, double height) {
        double y = rise(x, height);
        if (Double.isNaN(y)) {
            return false;
        }
        double[] ray = hit(x, y);
        Vec facing = new Vec((ray[0] - AXIS.x()) / RADIUS, (ray[1] - AXIS.y()) / RADIUS, 0);
        double[] out = follow(ray, facing, FULL);
        Vec from = new Vec(out[0], out[1], out[2]);
        Vec way = new Vec(out[3], out[4], out[5]);
        double on = lamp.middle().minus(from).dot(lamp.facing()) / way.dot(lamp.facing());
        Vec at = from.plus(way.times(on)).minus(lamp.middle());
        return on > 0
                && way.dot(lamp.facing()) < 0
                && switch (lamp) {
                    case Panel panel ->
                        Math.abs(at.dot(panel.right())) < panel.widthMetres() / 2
                                && Math.abs(at.dot(panel.facing().cross(panel.right()))) < panel.heightMetres() / 2;
                    case Disc disc -> at.lengthMetres() < disc.radiusMetres();
                    default -> false;
                };
    }

    /// The ray that comes to a place in the water: found by bisecting the picture's two coordinates in turn.
    private static double[] onto(Vec place) {
        double x = 0;
        double y = 0;
        double[] ray = {};
        for (int i = 0; i < 60; i++) {
            ray = new double[] {EYE.x(), EYE.y(), EYE.z(), x, 1, y};
            cross(ray, 1, FRONT - FULL.pane, 1, FULL.glass);
            cross(ray, 1, FRONT, FULL.glass, FULL.water);
            go(ray, (place.y() - ray[1]) / ray[4]);
            x += (place.x() - ray[0]) / (place.y() - EYE.y());
            y += (place.z() - ray[2]) / (place.y() - EYE.y());
        }
        return ray;
    }

    /// Mirrors a ray and follows it out of the tank by the first wall or the surface that it comes to.
    private static double[] follow(double[] met, Vec facing, Tank tank) {
        double[] ray = met.clone();
        double into = 2 * (ray[3] * facing.x() + ray[4] * facing.y() + ray[5] * facing.z());
        ray[3] -= into * facing.x();
        ray[4] -= into * facing.y();
        ray[5] -= into * facing.z();
        double[][] ends = {{-0.2, 0.2}, {FRONT, 0.15}, {0, LINE}};
        int axis = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 3; i++) {
            double on = (ends[i][ray[3 + i] > 0 ? 1 : 0] - ray[i]) / ray[3 + i];
            axis = on < least ? i : axis;
            least = Math.min(on, least);
        }
        double plane = ends[axis][ray[3 + axis] > 0 ? 1 : 0];
        if (axis == 2) {
            cross(ray, 2, plane, tank.water, 1);
            return ray;
        }
        double side = Math.signum(ray[3 + axis]);
        cross(ray, axis, plane, tank.water, tank.glass);
        cross(ray, axis, plane + side * tank.pane, tank.glass, 1);
        return ray;
    }
}
