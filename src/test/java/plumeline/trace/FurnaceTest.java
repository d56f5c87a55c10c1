package plumeline.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import plumeline.colour.Rgb;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;
import plumeline.light.Patch;
import plumeline.mirror.Finish;
import plumeline.scenery.Basin;
import plumeline.scenery.Coat;
import plumeline.scenery.Form;
import plumeline.scenery.Medium;
import plumeline.scenery.Part;
import plumeline.scenery.World;

/// In even light from all round whatever takes none is as bright as all else.
final class FurnaceTest {
    static Stream<Arguments> finishes() {
        return Stream.of(
                        new Finish.Matte(),
                        new Finish.Gloss(1.5),
                        new Finish.Satin(1.5, 0.1),
                        new Finish.Satin(1.5, 0.3),
                        new Finish.Metal(0.7))
                .flatMap(finish -> Stream.of(0, 30, 60, 80).map(degrees -> Arguments.of(finish, degrees)));
    }

    @ParameterizedTest
    @MethodSource("finishes")
    void white_isAsBrightAsTheFurnace(Finish finish, int degrees) {
        Part sheet = Sets.part(
                "sheet", new Form.Sheet(Vec.ZERO, new Vec(1, 0, 0), new Vec(0, 0, 1), 10, 10), Sets.ONE, finish);
        double angle = Math.toRadians(degrees);
        Eye eye = Sets.eye(new Vec(Math.sin(angle), -Math.cos(angle), 0), Vec.ZERO, 0.02);
        World world = Sets.world(List.of(sheet), List.of(), Sets.ONE);
        assertThat(Sets.mean(Sets.exposed(world, eye, 4, 256))).isCloseTo(1, within(0.01));
        assertThat(Sets.mean(Sets.exposed(world, eye, 4, 1))).isCloseTo(1, within(0.01));
    }

    @Test
    void round_inTheFurnace() {
        Part can = Sets.body("can", Solid.cylinder(0.06, 0.1), Pose.at(0, 0), Sets.ONE, new Finish.Gloss(1.5));
        Eye eye = Sets.eye(new Vec(0, -0.5, 0.2), new Vec(0, 0, 0.05), 0.3);
        assertThat(Sets.mean(Sets.exposed(Sets.world(List.of(can), List.of(), Sets.ONE), eye, 16, 64)))
                .isCloseTo(1, within(0.01));
    }

    @Test
    void clearGlassAndWater_inTheFurnace() {
        Medium glass = Medium.clear(1.52);
        Medium water = Medium.clear(1.333);
        Body bottle = new Body(Solid.cylinder(0.06, 0.12), Pose.at(0, 0).movedBy(new Vec(0, 0, 0.006)));
        Part clear = new Part(
                "bottle",
                new Form.Posed(bottle),
                new Coat.Clear(glass, Optional.of(new Coat.Room(Solid.cylinder(0.054, 0.11), 0.005, 0.07, water))));
        Basin basin = new Basin(
                new Bounds(new Vec(-0.2, -0.1, 0), new Vec(0.2, 0.1, 0.3)),
                new Bounds(new Vec(-0.194, -0.094, 0.006), new Vec(0.194, 0.094, 0.3)),
                0.2,
                glass,
                water);
        World world = new World(List.of(clear), List.of(), Optional.of(basin), List.of(), Sets.ONE);
        Eye eye = Sets.eye(new Vec(0.05, -0.6, 0.1), new Vec(0, 0, 0.1), 0.3);
        assertThat(Sets.mean(Sets.exposed(world, eye, 24, 4))).isCloseTo(1, within(0.02));
        World dry = Sets.world(List.of(clear), List.of(), Sets.ONE);
        assertThat(Sets.mean(Sets.exposed(dry, eye, 24, 4))).isCloseTo(1, within(0.01));
    }

    private static final Medium GLASS = Medium.clear(1.52);
    private static final Medium WATER = Medium.clear(1.333);

    private static Basin basin() {
        return new Basin(
                new Bounds(new Vec(-0.2, -0.1, 0), new Vec(0.2, 0.1, 0.3)),
                new Bounds(new Vec(-0.194, -0.094, 0.006), new Vec(0.194, 0.094, 0.3)),
                0.2,
                GLASS,
                WATER);
    }

    private static Part floor(Rgb paint, Finish finish) {
        return Sets.part("floor", new Form.Sheet(Vec.ZERO, new Vec(1, 0, 0), new Vec(0, 1, 0), 3, 3), paint, finish);
    }

    /// Wide, narrow, wide: places see other places of the same body.
    private static Solid stepped() {
        return new Solid.Revolved(List.of(
                new Station(0, 0.05),
                new Station(0.03, 0.05),
                new Station(0.035, 0.015),
                new Station(0.07, 0.015),
                new Station(0.075, 0.05),
                new Station(0.1, 0.05)));
    }

    private static Part clear(String name, Solid outer, Pose pose, Solid inner) {
        return new Part(
                name,
                new Form.Posed(new Body(outer, pose)),
                new Coat.Clear(GLASS, Optional.of(new Coat.Room(inner, 0.005, 0.06, WATER))));
    }

    static Stream<Arguments> crowds() {
        Solid box = new Solid.Box(0.1, 0.08, 0.12);
        Finish matte = new Finish.Matte();
        Finish gloss = new Finish.Gloss(1.5);
        Finish satin = new Finish.Satin(1.5, 0.2);
        Part ball = Sets.part("ball", new Form.Ball(new Vec(0, 0, 0.08), 0.05), Sets.ONE, matte);
        Part shiny = Sets.part("ball", new Form.Ball(new Vec(0.02, 0, 0.08), 0.05), Sets.ONE, gloss);
        Part tumbler = clear("glass", Solid.cylinder(0.1, 0.14), Pose.at(0, -0.15), Solid.cylinder(0.09, 0.13));
        return Stream.of(
                Arguments.of(
                        "a box on a floor",
                        List.of(Sets.body("b", box, Pose.at(0, 0), Sets.ONE, matte), floor(Sets.ONE, matte)),
                        Optional.empty()),
                Arguments.of(
                        "a glossy box on a satin floor",
                        List.of(Sets.body("b", box, Pose.at(0, 0), Sets.ONE, gloss), floor(Sets.ONE, satin)),
                        Optional.empty()),
                Arguments.of(
                        "a stepped body",
                        List.of(Sets.body("s", stepped(), Pose.at(0, 0), Sets.ONE, matte)),
                        Optional.empty()),
                Arguments.of(
                        "a stepped satin body",
                        List.of(Sets.body("s", stepped(), Pose.at(0, 0), Sets.ONE, satin)),
                        Optional.empty()),
                Arguments.of(
                        "a stepped mirror on a floor",
                        List.of(
                                Sets.body("s", stepped(), Pose.at(0, 0), Sets.ONE, Finish.Metal.USUAL),
                                floor(Sets.ONE, matte)),
                        Optional.empty()),
                Arguments.of(
                        "two bodies that touch",
                        List.of(
                                Sets.body("a", box, Pose.at(0, 0), Sets.ONE, gloss),
                                Sets.body("b", Solid.cylinder(0.06, 0.1), Pose.at(0.08, 0), Sets.ONE, matte),
                                Sets.body("c", Solid.cylinder(0.06, 0.05), Pose.at(0.08, -0.06), Sets.ONE, satin)),
                        Optional.empty()),
                Arguments.of("a ball in water", List.of(ball), Optional.of(basin())),
                Arguments.of(
                        "a glossy ball in water on a floor",
                        List.of(shiny, floor(Sets.ONE, gloss)),
                        Optional.of(basin())),
                Arguments.of(
                        "a stepped body behind a filled glass on a floor",
                        List.of(
                                tumbler,
                                Sets.body("s", stepped(), Pose.at(0, 0), Sets.ONE, matte),
                                floor(Sets.ONE, matte)),
                        Optional.empty()),
                Arguments.of(
                        "a ball in a glass",
                        List.of(
                                clear("glass", Solid.cylinder(0.13, 0.14), Pose.at(0, 0), Solid.cylinder(0.12, 0.13)),
                                ball),
                        Optional.empty()));
    }

    /// The whole picture, and each pixel.
    @ParameterizedTest(name = "{0}")
    @MethodSource("crowds")
    void whiteBodies_areAsBrightAsTheFurnaceHoweverTheyStand(String name, List<Part> parts, Optional<Basin> basin) {
        World world = new World(parts, List.of(), basin, List.of(), Sets.ONE);
        Eye eye = Sets.eye(new Vec(0.2, -0.7, 0.3), new Vec(0, 0, 0.06), 0.4);
        for (int samples : new int[] {1, 16}) {
            Plate plate = Sets.exposed(world, eye, 32, samples);
            assertThat(Sets.mean(plate)).as(name).isCloseTo(1, within(0.003));
            for (int y = 0; y < 32; y++) {
                for (int x = 0; x < 32; x++) {
                    assertThat(plate.light(x, y, 1)).as("%s %d %d", name, x, y).isCloseTo(1, within(0.01));
                }
            }
        }
    }

    @Test
    void grey_sendsBackItsShare() {
        Part sheet = Sets.part(
                "sheet",
                new Form.Sheet(Vec.ZERO, new Vec(1, 0, 0), new Vec(0, 0, 1), 10, 10),
                new Rgb(0.18, 0.18, 0.18),
                new Finish.Matte());
        Eye eye = Sets.eye(new Vec(0, -1, 0), Vec.ZERO, 0.02);
        assertThat(Sets.mean(Sets.exposed(Sets.world(List.of(sheet), List.of(), Sets.ONE), eye, 4, 1)))
                .isCloseTo(0.18, within(1e-9));
    }

    /// In a corner of two walls that send back `r`, far from their ends: what half of the light that falls comes off
    /// the other wall at the corner, less and less away from it.
    @Test
    void greyCorner_isBetweenNoneAndAllOfItsShare() {
        Rgb grey = new Rgb(0.5, 0.5, 0.5);
        Finish matte = new Finish.Matte();
        Part wall = Sets.part(
                "wall", new Form.Sheet(new Vec(0, 0, 0), new Vec(1, 0, 0), new Vec(0, 0, 1), 1000, 2000), grey, matte);
        Part ground = Sets.part(
                "ground",
                new Form.Sheet(new Vec(0, -500, 0), new Vec(1, 0, 0), new Vec(0, 1, 0), 1000, 1000),
                grey,
                matte);
        World world = Sets.world(List.of(wall, ground), List.of(), Sets.ONE);
        Eye eye = Sets.eye(new Vec(0, -0.4, 1), new Vec(0, -1e-3, 0), 1e-6);
        // Right in the corner both walls are alike: B = r (½ + ½ B), as each sees half of the other.
        assertThat(Sets.mean(Sets.exposed(world, eye, 1, 4096))).isCloseTo(0.25 / 0.75, within(0.004));
    }

    /// In a room that is shut no light comes in; the law's error is its paint to the power of so many stops.
    @Test
    void shutRoom_isAsDarkAsTheLawSays() {
        for (double paint : new double[] {0.2, 0.5}) {
            World world = Sets.world(
                    List.of(Sets.part(
                            "ball", new Form.Ball(Vec.ZERO, 1), new Rgb(paint, paint, paint), new Finish.Matte())),
                    List.of(),
                    Sets.ONE);
            double lux =
                    Tracer.of(world).lux(new Patch(Vec.ZERO, Vec.UP), 256, 1).green();
            assertThat(lux / Math.PI).isCloseTo(Math.pow(paint, Around.MOST_STOPS), within(1e-9));
        }
    }
}
