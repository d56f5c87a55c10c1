package plumeline.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plumeline.geom.Bounds;
import plumeline.geom.Vec;
import plumeline.light.Disc;
import plumeline.light.Patch;
import plumeline.scenery.Basin;
import plumeline.scenery.Medium;
import plumeline.scenery.World;

/// Light of a small lamp straight before a basin's faces, by the law of rays near the axis.
final class BendingTest {
    private static final double WATER = 1.333;
    private static final double GLASS = 1.52;
    private static final double RADIUS = 0.001;
    private static final double LUMINANCE = 1e8;

    private static double lux(Disc disc, Patch patch) {
        Basin basin = new Basin(
                new Bounds(new Vec(-0.21, -0.16, 0), new Vec(0.21, 0.16, 0.31)),
                new Bounds(new Vec(-0.2, -0.15, 0.01), new Vec(0.2, 0.15, 0.31)),
                0.26,
                Medium.clear(GLASS),
                Medium.clear(WATER));
        World world = new World(List.of(), List.of(Sets.face(disc)), Optional.of(basin), List.of(), Sets.DARK);
        return Tracer.of(world).lux(patch, 256, 3).green();
    }

    private static double passes(double one, double other) {
        double mirrored = (one - other) / (one + other);
        return 1 - mirrored * mirrored;
    }

    private static double near(double reduced) {
        return LUMINANCE * Math.PI * RADIUS * RADIUS / (reduced * reduced);
    }

    @Test
    void overWater_fallsByReducedWay() {
        Disc disc = new Disc(new Vec(0.01, 0.02, 0.76), new Vec(0, 0, -1), RADIUS, LUMINANCE);
        double found = lux(disc, new Patch(new Vec(0.01, 0.02, 0.06), Vec.UP));
        double wanted = near(0.5 + 0.2 / WATER) * passes(1, WATER);
        assertThat(found).isCloseTo(wanted, within(1e-3 * wanted));
    }

    @Test
    void beforeAWall_fallsByReducedWay() {
        Disc disc = new Disc(new Vec(0.01, -0.66, 0.1), new Vec(0, 1, 0), RADIUS, LUMINANCE);
        double found = lux(disc, new Patch(new Vec(0.01, 0.05, 0.1), new Vec(0, -1, 0)));
        double one = 1 - passes(1, GLASS);
        double other = 1 - passes(GLASS, WATER);
        double wanted = near(0.5 + 0.01 / GLASS + 0.2 / WATER) * (1 - one) * (1 - other) / (1 - one * other);
        assertThat(found).isCloseTo(wanted, within(1e-3 * wanted));
    }

    @Test
    void acrossTwoWalls_fallsByReducedWay() {
        Disc disc = new Disc(new Vec(0.01, -0.66, 0.1), new Vec(0, 1, 0), RADIUS, LUMINANCE);
        double found = lux(disc, new Patch(new Vec(0.01, 0.36, 0.1), new Vec(0, -1, 0)));
        double one = 1 - passes(1, GLASS);
        double other = 1 - passes(GLASS, WATER);
        double pane = (1 - one) * (1 - other) / (1 - one * other);
        double wanted = near(0.7 + 0.02 / GLASS + 0.3 / WATER) * pane * pane;
        assertThat(found).isCloseTo(wanted, within(1e-3 * wanted));
    }

    @Test
    void beyondTheCriticalAngle_nothingLeavesByAnAdjoiningWall() {
        Disc disc = new Disc(new Vec(0, -0.66, 0.1), new Vec(0, 1, 0), RADIUS, LUMINANCE);
        assertThat(lux(disc, new Patch(new Vec(0.26, 0.1, 0.1), new Vec(-1, 0, 0))))
                .isZero();
    }
}
