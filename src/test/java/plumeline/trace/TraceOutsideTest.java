package plumeline.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plumeline.colour.Rgb;
import plumeline.geom.Body;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.light.Disc;
import plumeline.light.Panel;
import plumeline.light.Patch;
import plumeline.mirror.Finish;
import plumeline.scenery.Coat;
import plumeline.scenery.Form;
import plumeline.scenery.Light;
import plumeline.scenery.Medium;
import plumeline.scenery.Part;
import plumeline.tidy.Outside;

/// Worlds as rays show them against published factors, shares and laws: [World], [Tracer], [Exposing].
@Outside(
        source = "Howell's catalogue of configuration factors; Hecht, Optics, from memory; closed forms",
        place = "each test names its row",
        kind = "closed form")
final class TraceOutsideTest {
    private static final Vec DOWN = new Vec(0, 0, -1);
    private static final Vec X = new Vec(1, 0, 0);
    private static final Patch FLOOR = new Patch(Vec.ZERO, Vec.UP);

    private static double factor(Light light) {
        return Tracer.of(Sets.world(List.of(), List.of(light), Sets.DARK))
                        .lux(FLOOR, 64, 1)
                        .green()
                / Math.PI;
    }

    /// Howell's catalogue, B-3: a rectangle parallel to the element, one corner over it; B-4: standing on its plane.
    @Test
    void rectangles() {
        double[][] rows = {{1, 1, 1, 0.138532}, {1, 2, 1, 0.167375}, {0.5, 0.5, 1, 0.0598641}, {2, 1, 1, 0.167375}};
        int compared = 0;
        for (double[] row : rows) {
            Panel panel = new Panel(new Vec(row[0] / 2, row[1] / 2, row[2]), DOWN, X, row[0], row[1], 1);
            assertThat(factor(Sets.face(panel))).isCloseTo(row[3], within(1e-6));
            compared++;
        }
        Panel standing = new Panel(new Vec(0.5, 1, 0.5), new Vec(0, -1, 0), X, 1, 1, 1);
        assertThat(factor(Sets.face(standing))).isCloseTo(0.0557342, within(1e-6));
        assertThat(compared).isEqualTo(4);
    }

    /// The same, B-12: a disc over the element, r²/(r² + h²); B-13: aside of it.
    @Test
    void discs() {
        double[][] rows = {{1, 0, 1, 0.5}, {0.5, 0, 1, 0.2}, {0.3, 0, 1, 0.0825688}, {0.1, 0, 1, 0.00990099}};
        int compared = 0;
        for (double[] row : rows) {
            assertThat(factor(Sets.face(new Disc(new Vec(row[1], 0, row[2]), DOWN, row[0], 1))))
                    .isCloseTo(row[3], within(1e-6));
            compared++;
        }
        double high = 1 / 0.5;
        double wide = 0.3 / 0.5;
        double all = 1 + high * high + wide * wide;
        double aside = 0.5 * (1 - (1 + high * high - wide * wide) / Math.sqrt(all * all - 4 * wide * wide));
        assertThat(factor(Sets.face(new Disc(new Vec(0.5, 0, 1), DOWN, 0.3, 1))))
                .isCloseTo(aside, within(1e-6));
        assertThat(compared).isEqualTo(4);
    }

    /// Siegel and Howell: a ball over an element that faces it takes r²/h² of its sky.
    @Test
    void ball_takesItsShareOfTheSky() {
        double[][] rows = {{0.2, 1}, {0.5, 1}, {0.3, 0.4}};
        int compared = 0;
        for (double[] row : rows) {
            Part ball = Sets.part("ball", new Form.Ball(new Vec(0, 0, row[1]), row[0]), Sets.DARK, new Finish.Matte());
            double lux = Tracer.of(Sets.world(List.of(ball), List.of(), Sets.ONE))
                    .lux(FLOOR, 16384, 1)
                    .green();
            double hidden = row[0] * row[0] / row[1] / row[1];
            assertThat(lux / Math.PI).isCloseTo(1 - hidden, within(0.003));
            compared++;
        }
        assertThat(compared).isEqualTo(3);
    }

    /// Air to glass of 1.5: 4 % straight on; 8.92 % at 60 deg (s 17.7 %, p 0.18 %: Hecht's figure of reflectances),
    /// 38.8 % at 80 deg. Seen as the mirror image of a bright sky in a black glossy sheet.
    @Test
    void mirroredShares() {
        double[][] rows = {{0, 0.04}, {60, 0.0892}, {80, 0.3877}};
        int compared = 0;
        for (double[] row : rows) {
            Part sheet = Sets.part(
                    "sheet", new Form.Sheet(Vec.ZERO, X, new Vec(0, 0, 1), 10, 10), Sets.DARK, new Finish.Gloss(1.5));
            double angle = Math.toRadians(row[0]);
            Eye eye = Sets.eye(new Vec(Math.sin(angle), -Math.cos(angle), 0), Vec.ZERO, 1e-6);
            Plate plate = Sets.exposed(Sets.world(List.of(sheet), List.of(), Sets.ONE), eye, 1, 1);
            assertThat(plate.light(0, 0, 0)).isCloseTo(row[1], within(5e-4));
            compared++;
        }
        assertThat(compared).isEqualTo(3);
    }

    /// A ball lens of index n has its back focus at `r (2 − n)/(2 (n − 1))` behind it (paraxial; any optics text): rays
    /// near the axis from there leave it straight. So a near ray comes to the focus.
    @Test
    void ballLens_focuses() {
        double[][] rows = {{1.5, 0.5}, {1.333, 1.0015}, {1.8, 0.125}};
        int compared = 0;
        for (double[] row : rows) {
            double radius = 0.05;
            Part ball = new Part(
                    "ball", new Form.Ball(Vec.ZERO, radius), new Coat.Clear(Medium.clear(row[0]), Optional.empty()));
            Vec focus = new Vec(0, radius + row[1] * radius, 0);
            Light spot = Sets.face(new Disc(focus, new Vec(0, -1, 0), 4e-5, 1000));
            Eye eye = Sets.eye(new Vec(0.002, -1, 0), new Vec(0.002, 0, 0), 1e-7);
            double light = Sets.exposed(Sets.world(List.of(ball), List.of(spot), Sets.DARK), eye, 1, 1)
                    .light(0, 0, 0);
            double passes = 1 - Math.pow((row[0] - 1) / (row[0] + 1), 2);
            assertThat(light / 1000).isCloseTo(passes * passes, within(2e-3));
            compared++;
        }
        assertThat(compared).isEqualTo(3);
    }

    /// A dye of 0.5 absorbance a centimetre to base 10 leaves 10^−0.5 = 31.6 % a centimetre.
    @Test
    void absorbance() {
        Medium dye = new Medium(1, new Rgb(50 * Math.log(10), 0, 0));
        Part cell = new Part(
                "cell",
                new Form.Posed(new Body(new Solid.Box(0.1, 0.01, 0.1), Pose.at(0, 0))),
                new Coat.Clear(dye, Optional.empty()));
        Eye eye = Sets.eye(new Vec(0, -1, 0.05), new Vec(0, 0, 0.05), 1e-6);
        double light = Sets.exposed(Sets.world(List.of(cell), List.of(), Sets.ONE), eye, 1, 1)
                .light(0, 0, 0);
        assertThat(light).isCloseTo(0.3162, within(1e-4));
    }
}
