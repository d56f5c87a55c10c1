package plumeline.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.colour.Rgb;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.geom.Plane;
import plumeline.geom.Point;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.mirror.Finish;
import plumeline.optics.Boundary;
import plumeline.optics.FlatWall;
import plumeline.optics.TankView;
import plumeline.rim.ClearRound;
import plumeline.rim.Indices;
import plumeline.rim.Passage;
import plumeline.scenery.Basin;
import plumeline.scenery.Cloud;
import plumeline.scenery.Coat;
import plumeline.scenery.Form;
import plumeline.scenery.Light;
import plumeline.scenery.Medium;
import plumeline.scenery.Part;
import plumeline.scenery.World;

/// Clear bodies and a basin against the optics and rim rooms.
final class GlassTest {
    private static final Medium GLASS = Medium.clear(1.52);
    private static final Medium WATER = Medium.clear(1.333);

    static Basin basin() {
        return new Basin(
                new Bounds(new Vec(-0.206, 0, 0), new Vec(0.206, 0.212, 0.3)),
                new Bounds(new Vec(-0.2, 0.006, 0.006), new Vec(0.2, 0.206, 0.3)),
                0.28,
                GLASS,
                WATER);
    }

    /// A small ball in the water is seen where the tank's view puts it.
    @Test
    void ballInWater_isSeenWhereTheTankViewPutsIt() {
        Aim aim = Aim.toward(new Vec(0.1, -0.7, 0.2), new Vec(0, 0.1, 0.12));
        TankView view =
                new TankView(aim, new Plane(new Vec(0, 0, 0), new Vec(0, -1, 0)), FlatWall.ofWater(0.006), 0.28);
        Random random = new Random(3);
        for (int i = 0; i < 50; i++) {
            Vec place = new Vec(
                    0.3 * random.nextDouble() - 0.15,
                    0.03 + 0.15 * random.nextDouble(),
                    0.03 + 0.2 * random.nextDouble());
            Part ball = Sets.part("ball", new Form.Ball(place, 2e-4), Sets.ONE, new Finish.Matte());
            Tracer tracer = Tracer.of(new World(List.of(ball), List.of(), Optional.of(basin()), List.of(), Sets.DARK));
            Eye eye = new Eye(aim, 0.5, 0.5, 0, 1);
            Point point = view.project(place);
            Tracer.Seen seen = tracer.seen(eye, point.x(), point.y());
            assertThat(seen.part()).isZero();
            double path = 0;
            List<Vec> corners = view.path(place);
            for (int j = 1; j < corners.size(); j++) {
                path += corners.get(j).distanceMetres(corners.get(j - 1));
            }
            assertThat(seen.wayMetres()).isCloseTo(path, within(3e-4));
            assertThat(tracer.seen(eye, point.x() + 0.002, point.y()).part()).isEqualTo(-1);
        }
    }

    /// Luminance of a sheet in the water as the tank's view has it: T/n².
    @Test
    void sheetInWater_isAsBrightAsTheTankViewSays() {
        Aim aim = Aim.toward(new Vec(0.2, -0.7, 0.15), new Vec(0, 0.1, 0.15));
        TankView view =
                new TankView(aim, new Plane(new Vec(0, 0, 0), new Vec(0, -1, 0)), FlatWall.ofWater(0.006), 0.28);
        Light glow = Sets.face(
                new plumeline.light.Panel(new Vec(0, 0.15, 0.15), new Vec(0, -1, 0), new Vec(1, 0, 0), 0.3, 0.2, 1000));
        World world = new World(List.of(), List.of(glow), Optional.of(basin()), List.of(), Sets.DARK);
        Plate plate = Sets.exposed(world, new Eye(aim, 1e-4, 1e-4, 0, 1), 1, 1);
        Vec place = view.placeBehind(new Point(0, 0), 0.144);
        // A hundredth of a hundredth comes again from between the pane's faces.
        assertThat(plate.light(0, 0, 0) / 1000 / view.brightness(place)).isCloseTo(1, within(0.004));
    }

    /// What is mirrored and what passes of a block, straight on and aslant.
    @Test
    void block_passesByFresnelFromFaceToFace() {
        for (double degrees : new double[] {0, 30, 56, 75}) {
            double angle = Math.toRadians(degrees);
            Part block = new Part(
                    "block",
                    new Form.Posed(new Body(new Solid.Box(4, 0.01, 4), new Pose(new Vec(0, 0, -2), 0, 0))),
                    new Coat.Clear(GLASS, Optional.empty()));
            Light behind = Sets.face(
                    new plumeline.light.Panel(new Vec(0, 1, 0), new Vec(0, -1, 0), new Vec(1, 0, 0), 50, 50, 1000));
            Eye eye = Sets.eye(new Vec(-Math.sin(angle), -Math.cos(angle), 0), Vec.ZERO, 1e-4);
            World world = Sets.world(List.of(block), List.of(behind), Sets.DARK);
            double mirrored = new Boundary(1, 1.52).reflectance(angle).mean();
            // Unpolarised at each face, as the kernel has it: all goes between the faces (1 − R)/(1 + R).
            double wanted = (1 - mirrored) / (1 + mirrored);
            double found = Sets.exposed(world, eye, 1, 1).light(0, 0, 1) / 1000;
            assertThat(found).isCloseTo(wanted, within(0.012));
        }
    }

    @Test
    void absorbingSlab_isBeersAndLamberts() {
        for (double metres : new double[] {0.005, 0.02, 0.1}) {
            Medium tinted = new Medium(1, new Rgb(3, 10, 40));
            Part block = new Part(
                    "block",
                    new Form.Posed(new Body(new Solid.Box(4, metres, 4), new Pose(new Vec(0, 0, -2), 0, 0))),
                    new Coat.Clear(tinted, Optional.empty()));
            double angle = Math.toRadians(25);
            Eye eye = Sets.eye(new Vec(-Math.sin(angle), -Math.cos(angle), 0), Vec.ZERO, 1e-6);
            Plate plate = Sets.exposed(Sets.world(List.of(block), List.of(), Sets.ONE), eye, 1, 1);
            double way = metres / Math.cos(angle);
            assertThat(plate.light(0, 0, 0)).isCloseTo(Math.exp(-3 * way), within(1e-6));
            assertThat(plate.light(0, 0, 1)).isCloseTo(Math.exp(-10 * way), within(1e-6));
            assertThat(plate.light(0, 0, 2)).isCloseTo(Math.exp(-40 * way), within(1e-6));
        }
    }

    @Test
    void evenCloud_isBeersAndLamberts() {
        float[] shares = new float[8 * 8 * 8];
        java.util.Arrays.fill(shares, 0.5f);
        Cloud cloud = new Cloud(
                new Bounds(new Vec(-0.1, -0.1, -0.1), new Vec(0.1, 0.1, 0.1)),
                8,
                8,
                8,
                shares,
                new Rgb(2, 10, 30),
                Sets.DARK);
        World world = new World(List.of(), List.of(), Optional.empty(), List.of(cloud), Sets.ONE);
        Plate plate = Sets.exposed(world, Sets.eye(new Vec(0, -1, 0), Vec.ZERO, 1e-6), 1, 1);
        assertThat(plate.light(0, 0, 0)).isCloseTo(Math.exp(-0.2), within(1e-3));
        assertThat(plate.light(0, 0, 1)).isCloseTo(Math.exp(-1), within(1e-3));
        assertThat(plate.light(0, 0, 2)).isCloseTo(Math.exp(-3), within(1e-3));
        double lux = Tracer.of(world)
                .lux(new plumeline.light.Patch(new Vec(0, 0, -0.2), Vec.UP), 4096, 1)
                .green();
        assertThat(lux).isBetween(0.3 * Math.PI, Math.PI);
    }

    /// Through a tumbler sight comes out where the rim room says, seen by which of many rods behind it is met.
    @Test
    void roundGlass_bendsAsTheRimRoomSays() {
        Solid.Revolved outer = Solid.cylinder(0.06, 0.12);
        ClearRound glass = new ClearRound(outer, 0.003, new Indices(1, 1.52, 1.333), 0.2);
        Part tumbler = new Part(
                "tumbler",
                new Form.Posed(new Body(outer, Pose.at(0, 0))),
                new Coat.Clear(GLASS, Optional.of(new Coat.Room(Solid.cylinder(0.054, 0.114), 0.003, 0.2, WATER))));
        int checked = 0;
        for (int i = -14; i <= 14; i++) {
            double aside = i * 0.002;
            Vec direction = new Vec(0, 1, 0);
            Vec at = new Vec(aside, -Math.sqrt(0.03 * 0.03 - aside * aside), 0.06);
            if (!(glass.follow(at, direction) instanceof Passage.Out out)) {
                continue;
            }
            Vec goal = out.place().plus(out.direction().times(0.2));
            Light lamp =
                    Sets.face(new plumeline.light.Disc(goal, out.direction().times(-1), 2e-4, 1000));
            Eye eye = Sets.eye(new Vec(aside, -0.5, 0.06), at, 1e-6);
            double light = Sets.exposed(Sets.world(List.of(tumbler), List.of(lamp), Sets.DARK), eye, 1, 1)
                    .light(0, 0, 1);
            // The rim room keeps both polarisations from face to face; here each face takes their mean.
            assertThat(light / 1000).isCloseTo(out.transmittance(), within(0.05));
            checked++;
        }
        assertThat(checked).isGreaterThan(20);
    }

    /// A half full glass: over the level sight goes through air, under it through water.
    @Test
    void level_partsAirFromLiquid() {
        Part tumbler = new Part(
                "tumbler",
                new Form.Posed(new Body(new Solid.Box(0.1, 0.1, 0.12), Pose.at(0, 0))),
                new Coat.Clear(
                        Medium.clear(1.0001),
                        Optional.of(new Coat.Room(
                                new Solid.Box(0.09, 0.09, 0.11),
                                0.005,
                                0.06,
                                new Medium(1.0002, new Rgb(5, 10, 20))))));
        World world = Sets.world(List.of(tumbler), List.of(), Sets.ONE);
        Plate over = Sets.exposed(world, Sets.eye(new Vec(0, -1, 0.09), new Vec(0, 0, 0.09), 1e-6), 1, 1);
        Plate under = Sets.exposed(world, Sets.eye(new Vec(0, -1, 0.03), new Vec(0, 0, 0.03), 1e-6), 1, 1);
        assertThat(over.light(0, 0, 1)).isCloseTo(1, within(1e-3));
        assertThat(under.light(0, 0, 1)).isCloseTo(Math.exp(-0.9), within(1e-3));
        Plate down = Sets.exposed(world, Sets.eye(new Vec(0, -1e-3, 1), Vec.ZERO, 1e-6), 1, 1);
        assertThat(down.light(0, 0, 1)).isCloseTo(Math.exp(-10 * 0.055), within(1e-3));
    }

    /// A thin cloud that takes nothing: in the furnace it sends back what it scatters away; beside a spot it shines by
    /// `I/d² · τ/4π`.
    @Test
    void thinCloud_scattersOnce() {
        float[] shares = new float[6 * 6 * 6];
        java.util.Arrays.fill(shares, 1f);
        Bounds box = new Bounds(new Vec(-0.05, -0.05, -0.05), new Vec(0.05, 0.05, 0.05));
        Cloud cloud = new Cloud(box, 6, 6, 6, shares, new Rgb(0.5, 0.5, 0.5), Sets.ONE);
        Eye eye = Sets.eye(new Vec(0, -1, 0), Vec.ZERO, 1e-6);
        World furnace = new World(List.of(), List.of(), Optional.empty(), List.of(cloud), Sets.ONE);
        assertThat(Sets.exposed(furnace, eye, 1, 1).light(0, 0, 1)).isCloseTo(1, within(0.003));
        Light spot = new Light(
                "spot",
                new Light.Source.Spot(
                        new Aim(new Vec(0, 0, 2), 0, 0),
                        new plumeline.light.Intensity.AllRound(1000),
                        plumeline.light.Glow.even()),
                Sets.ONE);
        World lit = new World(List.of(), List.of(spot), Optional.empty(), List.of(cloud), Sets.DARK);
        double wanted = 1000 / 4.0 * 0.05 / (4 * Math.PI);
        assertThat(Sets.exposed(lit, eye, 1, 1).light(0, 0, 1)).isCloseTo(wanted, within(0.06 * wanted));
    }

    private static Cloud ink(double takes) {
        float[] shares = new float[4 * 4 * 4];
        java.util.Arrays.fill(shares, 1f);
        return new Cloud(
                new Bounds(new Vec(-0.1, 0.02, 0.05), new Vec(0.1, 0.19, 0.2)),
                4,
                4,
                4,
                shares,
                new Rgb(takes, takes, takes),
                Sets.DARK);
    }

    /// A vessel in a basin keeps the ink round it out: sight through its middle goes through less, and so does light.
    @Test
    void vesselInInk_holdsNone() {
        Medium still = Medium.clear(1);
        Basin basin = new Basin(basin().outside(), basin().inside(), 0.28, still, Medium.clear(1.0001));
        Part vessel = new Part(
                "vessel",
                new Form.Posed(new Body(new Solid.Box(0.1, 0.08, 0.12), new Pose(new Vec(0, 0.106, 0.06), 0, 0))),
                new Coat.Clear(
                        Medium.clear(1.0002),
                        Optional.of(
                                new Coat.Room(new Solid.Box(0.098, 0.078, 0.118), 0.001, 0.09, Medium.clear(1.0001)))));
        World world = new World(List.of(vessel), List.of(), Optional.of(basin), List.of(ink(5)), Sets.ONE);
        double[][] ways = {{0, 0.1, 0.17 - 0.08}, {0.08, 0.1, 0.17}, {0, 0.16, 0.17 - 0.08}};
        for (double[] way : ways) {
            Vec through = new Vec(way[0], 0, way[1]);
            Eye eye = Sets.eye(new Vec(way[0], -1, way[1]), through, 1e-6);
            double left = Math.exp(-5 * way[2]);
            assertThat(Sets.exposed(world, eye, 1, 1).light(0, 0, 1)).isCloseTo(left, within(0.002));
            Shadows shadows = new Shadows(new Ready(world, List.of()));
            shadows.dim(way[0], -0.5, way[1], 0, 1, 0, 1, -1, Media.AIR);
            assertThat(shadows.through[1]).isCloseTo(left, within(0.002));
        }
    }

    /// Ink is in the water only: what of a cloud's box is over it doesn't count.
    @Test
    void inkOverTheWater_isNone() {
        Medium still = Medium.clear(1);
        Basin basin = new Basin(basin().outside(), basin().inside(), 0.12, still, Medium.clear(1.0001));
        World world = new World(List.of(), List.of(), Optional.of(basin), List.of(ink(5)), Sets.ONE);
        Plate over = Sets.exposed(world, Sets.eye(new Vec(0, -1, 0.15), new Vec(0, 0, 0.15), 1e-6), 1, 1);
        Plate under = Sets.exposed(world, Sets.eye(new Vec(0, -1, 0.1), new Vec(0, 0, 0.1), 1e-6), 1, 1);
        assertThat(over.light(0, 0, 1)).isCloseTo(1, within(0.001));
        assertThat(under.light(0, 0, 1)).isCloseTo(Math.exp(-5 * 0.17), within(0.002));
    }
}
