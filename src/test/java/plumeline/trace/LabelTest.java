package plumeline.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.colour.Rgb;
import plumeline.geom.Body;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.light.Panel;
import plumeline.light.Patch;
import plumeline.mirror.Finish;
import plumeline.scenery.Art;
import plumeline.scenery.Coat;
import plumeline.scenery.Form;
import plumeline.scenery.Light;
import plumeline.scenery.Medium;
import plumeline.scenery.Paint;
import plumeline.scenery.Part;
import plumeline.scenery.World;

/// Labels and fades on bodies, and labels and drops on clear ones.
final class LabelTest {
    private static final double RADIUS = 0.03;
    private static final Medium THIN = Medium.clear(1.0001);
    private static final Medium GLASS = Medium.clear(1.5);
    private static final Rgb PAPER = new Rgb(0.8, 0.8, 0.8);

    /// Two texels by two: red and green over blue and clear.
    private static final Art ART = new Art(2, 2, new float[] {0.9f, 0, 0, 1, 0, 0.9f, 0, 1, 0, 0, 0.9f, 1, 0, 0, 0, 0});

    private static final Paint.Label LABEL = new Paint.Label(0.04, 0.03, 0.02, PAPER, Optional.of(ART));

    private static Part can(Coat coat) {
        return new Part("can", new Form.Posed(new Body(Solid.cylinder(2 * RADIUS, 0.09), Pose.at(0, 0))), coat);
    }

    private static Coat opaque() {
        return new Coat.Opaque(
                new Paint(new Rgb(0.3, 0.3, 0.3), Optional.of(LABEL), Optional.empty(), Optional.empty()),
                new Finish.Matte());
    }

    private static Coat clear(Medium wall, Paint.Label label) {
        return new Coat.Clear(wall, Optional.empty(), Optional.of(label), Optional.empty());
    }

    /// What sight from straight before a place of the side shows of it, in even light.
    private static double[] seen(Coat coat, double aroundMetres, double highMetres) {
        double angle = aroundMetres / RADIUS;
        Vec out = new Vec(Math.sin(angle), -Math.cos(angle), 0);
        Vec place = out.times(RADIUS).plus(new Vec(0, 0, highMetres));
        Plate plate = Sets.exposed(
                Sets.world(List.of(can(coat)), List.of(), Sets.ONE),
                Sets.eye(place.plus(out.times(0.3)), place, 1e-6),
                1,
                1);
        return new double[] {plate.light(0, 0, 0), plate.light(0, 0, 1), plate.light(0, 0, 2)};
    }

    /// Quarters' middles.
    @ParameterizedTest
    @CsvSource({
        "-0.015, 0.045, 0.9, 0, 0",
        "0.015, 0.045, 0, 0.9, 0",
        "-0.015, 0.023, 0, 0, 0.9",
        "0.015, 0.023, 0.8, 0.8, 0.8",
    })
    void art_isWrappedRoundTheSide(double around, double high, double red, double green, double blue) {
        double[] wanted = {red, green, blue};
        assertThat(seen(opaque(), around, high)).containsExactly(wanted, within(1e-6));
        assertThat(seen(clear(THIN, LABEL), around, high)).containsExactly(wanted, within(1e-3));
        assertThat(seen(clear(GLASS, LABEL), around, high)).containsExactly(wanted, within(1e-6));
    }

    /// Half a millimetre beside each edge, and as much within it.
    @ParameterizedTest
    @CsvSource({"-0.0205, 0.035", "0.0205, 0.035", "0, 0.0195", "0, 0.0505"})
    void besideTheLabel_isTheBody(double around, double high) {
        assertThat(seen(opaque(), around, high)[1]).isCloseTo(0.3, within(1e-6));
        assertThat(seen(clear(THIN, LABEL), around, high)[1]).isCloseTo(1, within(1e-3));
        Coat blank = new Coat.Opaque(
                new Paint(
                        new Rgb(0.3, 0.3, 0.3),
                        Optional.of(new Paint.Label(0.04, 0.03, 0.02, PAPER, Optional.empty())),
                        Optional.empty(),
                        Optional.empty()),
                new Finish.Matte());
        assertThat(seen(blank, around, high)[1]).isCloseTo(0.3, within(1e-6));
        assertThat(seen(blank, around * 0.95, Math.clamp(high, 0.0205, 0.0495))[1])
                .isCloseTo(0.8, within(1e-6));
    }

    /// Clear and half covering texels mix with the paper evenly.
    @Test
    void betweenTexels_printAndPaperMix() {
        double[] middle = seen(opaque(), 0, 0.035);
        // A quarter each of red, green, blue, and paper under a quarter's cover.
        double paper = 0.25 * 0.8;
        double share = 0.75 * 0.9 / 4;
        assertThat(middle).containsExactly(new double[] {share + paper, share + paper, share + paper}, within(1e-3));
    }

    /// From behind, through the clear body, a label shows its bare paper; beside it sight goes through.
    @Test
    void labelFromBehind_isBarePaper() {
        Coat white = clear(GLASS, new Paint.Label(0.04, 0.03, 0.02, Sets.ONE, Optional.of(ART)));
        assertThat(back(white, 0.035)).isCloseTo(1, within(0.01));
        assertThat(back(white, 0.06)).isCloseTo(1, within(0.01));
        double r = 0.8;
        double kept = 1 - 1 / (1.5 * 1.5);
        double straight = 0.04;
        // In even light: what the glass mirrors, and what the paper sends back of all that comes to it.
        double wanted = straight + (1 - straight) * (1 - kept) * r / (1 - r * kept);
        assertThat(back(clear(GLASS, LABEL), 0.035)).isCloseTo(wanted, within(0.02));
        // It is hollow: what it sends to itself comes dimmer.
        assertThat(back(clear(THIN, LABEL), 0.035)).isBetween(0.78, 0.8);
    }

    private static double back(Coat coat, double highMetres) {
        Eye eye = Sets.eye(new Vec(0, 0.4, highMetres), new Vec(0, 0, highMetres), 1e-6);
        return Sets.mean(Sets.exposed(Sets.world(List.of(can(coat)), List.of(), Sets.ONE), eye, 1, 64));
    }

    /// Before a lamp a label throws a shadow, whichever of its sides is lit; its body doesn't.
    @Test
    void label_throwsAShadow() {
        Light lamp = Sets.face(new Panel(new Vec(0, -2, 0.035), new Vec(0, 1, 0), new Vec(1, 0, 0), 0.01, 0.01, 1e6));
        Light behind = Sets.face(new Panel(new Vec(0, 2, 0.035), new Vec(0, -1, 0), new Vec(1, 0, 0), 0.01, 0.01, 1e6));
        World world = Sets.world(List.of(can(clear(THIN, LABEL))), List.of(lamp, behind), Sets.DARK);
        World bare = Sets.world(List.of(can(new Coat.Clear(THIN, Optional.empty()))), List.of(lamp, behind), Sets.DARK);
        for (double side : new double[] {-1, 1}) {
            for (double high : new double[] {0.035, 0.07}) {
                Patch patch = new Patch(new Vec(0, side * 0.1, high), new Vec(0, -side, 0));
                double all = Tracer.of(bare).lux(patch, 16, 1).green();
                double left = Tracer.of(world).lux(patch, 16, 1).green();
                assertThat(all).isGreaterThan(10);
                assertThat(left).isCloseTo(high > 0.05 ? all : 0, within(1e-6 * all));
            }
        }
        Part wall = Sets.part(
                "wall",
                new Form.Sheet(new Vec(0, 0.1, 0), new Vec(1, 0, 0), new Vec(0, 0, 1), 1, 1),
                Sets.ONE,
                new Finish.Matte());
        World pictured = Sets.world(List.of(can(clear(THIN, LABEL)), wall), List.of(lamp), Sets.DARK);
        for (double high : new double[] {0.035, 0.07}) {
            Eye eye = Sets.eye(new Vec(0.15, -0.02, high), new Vec(0, 0.1, high), 1e-6);
            assertThat(Sets.mean(Sets.exposed(pictured, eye, 1, 4)) > 1e-6).isEqualTo(high > 0.05);
        }
    }

    @Test
    void labelOnClear_mirrorsNothing() {
        Part front = Sets.body("front", Solid.cylinder(0.3, 0.1), Pose.at(0, -0.6), Sets.ONE, new Finish.Matte());
        Tracer tracer = Tracer.of(Sets.world(List.of(can(clear(GLASS, LABEL)), front), List.of(), Sets.DARK));
        Eye eye = Sets.eye(new Vec(0, -0.3, 0.05), new Vec(0, 0, 0.05), 0.4);
        assertThat(tracer.seen(eye, 0, 0.05).part()).isZero();
        assertThat(tracer.seen(eye, 0, 0.05).mirrored()).isEqualTo(1);
        assertThat(tracer.seen(eye, 0, -0.03).part()).isZero();
        assertThat(tracer.seen(eye, 0, -0.03).mirrored()).isEqualTo(-1);
    }

    /// White paper and drops take nothing: in the furnace nothing of them is seen.
    @Test
    void whiteLabelAndDropsOnGlass_inTheFurnace() {
        Coat coat = new Coat.Clear(
                GLASS,
                Optional.of(new Coat.Room(Solid.cylinder(0.054, 0.08), 0.004, 0.05, Medium.clear(1.333))),
                Optional.of(new Paint.Label(0.05, 0.03, 0.02, Sets.ONE, Optional.empty())),
                Optional.of(new Paint.Beads(0.4, 0.001, 0.003, 5)));
        World world = Sets.world(List.of(can(coat)), List.of(), Sets.ONE);
        for (double y : new double[] {-0.4, 0.4}) {
            Plate plate = Sets.exposed(world, Sets.eye(new Vec(0.1, y, 0.1), new Vec(0, 0, 0.04), 0.25), 32, 16);
            assertThat(Sets.mean(plate)).isCloseTo(1, within(0.005));
            for (int i = 0; i < 32 * 32; i++) {
                assertThat(plate.light(i % 32, i / 32, 1)).isCloseTo(1, within(0.03));
            }
        }
    }

    /// Drops on glass turn sight elsewhere than the bare glass does.
    @Test
    void dropsOnGlass_bendSight() {
        Part striped = Sets.body("bar", new Solid.Box(0.02, 0.01, 0.2), Pose.at(0, 0.2), Sets.DARK, new Finish.Matte());
        Coat bare = new Coat.Clear(GLASS, Optional.empty());
        Coat wet = new Coat.Clear(
                GLASS, Optional.empty(), Optional.empty(), Optional.of(new Paint.Beads(0.4, 0.002, 0.004, 5)));
        Eye eye = Sets.eye(new Vec(0, -0.4, 0.05), new Vec(0, 0, 0.05), 0.12);
        Plate one = Sets.exposed(Sets.world(List.of(can(bare), striped), List.of(), Sets.ONE), eye, 48, 1);
        Plate other = Sets.exposed(Sets.world(List.of(can(wet), striped), List.of(), Sets.ONE), eye, 48, 1);
        int differ = 0;
        for (int i = 0; i < 48 * 48; i++) {
            differ += Math.abs(one.light(i % 48, i / 48, 1) - other.light(i % 48, i / 48, 1)) > 0.1 ? 1 : 0;
        }
        assertThat(differ).isBetween(60, 1500);
    }

    /// A share that runs from the foot to the top: straight along a sheet and a body, by the angle along a bend.
    @Test
    void fade_runsFromFootToTop() {
        Paint paint = new Paint(Sets.ONE, Optional.empty(), Optional.of(new Paint.Fade(0.2, 0.8)), Optional.empty());
        Coat coat = new Coat.Opaque(paint, new Finish.Matte());
        Part sheet = new Part("s", new Form.Sheet(new Vec(0, 0, 1), new Vec(1, 0, 0), new Vec(0, 0, 1), 2, 2), coat);
        Part bend = new Part(
                "b", new Form.Bend(Vec.ZERO, new Vec(1, 0, 0), new Vec(0, 0, -1), new Vec(0, 1, 0), 2, 1), coat);
        for (double share : new double[] {0.01, 0.25, 0.5, 0.75, 0.99}) {
            double wanted = 0.2 + 0.6 * share;
            Eye level = Sets.eye(new Vec(0, -1, 2 * share), new Vec(0, 0, 2 * share), 1e-6);
            assertThat(Sets.exposed(Sets.world(List.of(sheet), List.of(), Sets.ONE), level, 1, 1)
                            .light(0, 0, 1))
                    .isCloseTo(wanted, within(1e-5));
            double angle = share * Math.PI / 2;
            Eye inside = Sets.eye(Vec.ZERO, new Vec(0, Math.sin(angle), -Math.cos(angle)), 1e-6);
            assertThat(Sets.exposed(Sets.world(List.of(bend), List.of(), Sets.ONE), inside, 1, 1)
                            .light(0, 0, 1))
                    .isCloseTo(wanted, within(1e-5));
            Eye beside = Sets.eye(new Vec(0, -1, 0.09 * share), new Vec(0, 0, 0.09 * share), 1e-6);
            assertThat(Sets.exposed(Sets.world(List.of(can(coat)), List.of(), Sets.ONE), beside, 1, 1)
                            .light(0, 0, 1))
                    .isCloseTo(wanted, within(1e-5));
        }
    }
}
