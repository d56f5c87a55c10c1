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
import plumeline.geom.Vec;
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
}
