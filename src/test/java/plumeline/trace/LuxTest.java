package plumeline.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Hull;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.light.Disc;
import plumeline.light.Emitter;
import plumeline.light.Glow;
import plumeline.light.HotCentre;
import plumeline.light.Intensity;
import plumeline.light.Panel;
import plumeline.light.Patch;
import plumeline.light.Seen;
import plumeline.light.Tube;
import plumeline.mirror.Finish;
import plumeline.scenery.Form;
import plumeline.scenery.Light;
import plumeline.scenery.Part;
import plumeline.sight.Uncovered;

/// Light on patches as the light room has it.
final class LuxTest {
    private static final Vec X = new Vec(1, 0, 0);

    private static double lux(List<Part> parts, Light light, Patch patch) {
        return Tracer.of(Sets.world(parts, List.of(light), Sets.DARK))
                .lux(patch, 8192, 3)
                .green();
    }

    static Stream<Emitter> emitters() {
        Vec down = new Vec(0.3, -0.2, -1).unit();
        Vec right = down.cross(new Vec(0, 1, 0)).unit();
        return Stream.of(
                new Panel(new Vec(0.1, 0.2, 0.8), down, right, 0.6, 0.9, 3000),
                new Disc(new Vec(-0.3, 0.2, 0.7), down, 0.35, 2000),
                new Tube(new Vec(-0.2, 0.1, 0.5), right, down, 1.2, 0.013, 9000),
                new Tube(new Vec(-0.2, 0.1, 0.5), right, down, 0.3, 0.1, 9000));
    }

    /// Whole, cut by the patch's plane, and from behind.
    @ParameterizedTest
    @MethodSource("emitters")
    void unshadowed_isTheEmitters(Emitter emitter) {
        Random random = new Random(5);
        int lit = 0;
        for (int i = 0; i < 300; i++) {
            Vec place = new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian() * 0.7);
            Vec facing = new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
            Patch patch = new Patch(place, facing);
            double wanted = emitter.lux(patch);
            double found = lux(List.of(), Sets.face(emitter), patch);
            double slack = emitter instanceof Tube ? 0.005 : emitter instanceof Disc ? 2e-4 : 1e-6;
            assertThat(found).isCloseTo(wanted, within(slack * wanted + 1e-4 * emitter.luminance() * slack));
            lit += wanted > 0 ? 1 : 0;
        }
        assertThat(lit).isGreaterThan(100);
    }

    @Test
    void besideABox_isWhatTheBoxLeaves() {
        Panel panel = new Panel(new Vec(-0.4, 0.2, 0.5), new Vec(0, 0, -1), X, 0.6, 0.9, 3000);
        Body box = new Body(new Solid.Box(0.1, 0.1, 0.3), Pose.at(0, 0));
        Part part = Sets.part("box", new Form.Posed(box), Sets.ONE, new Finish.Matte());
        Random random = new Random(6);
        int half = 0;
        for (int i = 0; i < 60; i++) {
            Patch patch =
                    new Patch(new Vec(0.06 + 0.2 * random.nextDouble(), 0.4 * random.nextDouble() - 0.2, 0), Vec.UP);
            double wanted = Uncovered.pieces(patch.place(), panel.outline(patch.place()), Hull.of(box, 16)).stream()
                    .mapToDouble(piece -> Math.PI * panel.luminance() * Seen.factor(piece, patch))
                    .sum();
            assertThat(lux(List.of(part), Sets.face(panel), patch)).isCloseTo(wanted, within(0.01 * wanted));
            half += wanted < 0.8 * panel.lux(patch) ? 1 : 0;
        }
        assertThat(half).isGreaterThan(5);
    }

    @Test
    void hotCentre_isItsSum() {
        Panel panel = new Panel(new Vec(0.1, 0.2, 0.5), new Vec(0, 0, -1), X, 0.6, 0.9, 3000);
        HotCentre glow = HotCentre.of(panel, 2);
        Patch patch = new Patch(new Vec(0.2, 0, 0), new Vec(0.2, 0.1, 1).unit());
        double sum = 0;
        int n = 400;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                Vec place = panel.middle()
                        .plus(panel.right().times(((i + 0.5) / n - 0.5) * panel.widthMetres()))
                        .plus(panel.up().times(((j + 0.5) / n - 0.5) * panel.heightMetres()));
                Vec way = place.minus(patch.place());
                double square = way.dot(way);
                sum += Math.max(0, way.dot(patch.facing()))
                        * -way.dot(panel.facing())
                        / (square * square)
                        * glow.share(place, way.times(-1));
            }
        }
        double wanted = sum * 0.6 * 0.9 / n / n * 3000;
        Light light = new Light("l", new Light.Source.Face(panel, glow, Optional.empty()), Sets.ONE);
        assertThat(lux(List.of(), light, patch)).isCloseTo(wanted, within(0.01 * wanted));
        Disc hole = new Disc(panel.middle(), panel.facing(), 0.2, 3000);
        Light ring = new Light("l", new Light.Source.Face(panel, Glow.even(), Optional.of(hole)), Sets.ONE);
        double left = panel.lux(patch) - hole.lux(patch);
        assertThat(lux(List.of(), ring, patch)).isCloseTo(left, within(1e-3 * left));
    }

    @Test
    void spot_isInverseSquare() {
        Light spot = new Light(
                "spot",
                new Light.Source.Spot(Aim.toward(new Vec(0, 0, 2), Vec.ZERO), new Intensity.AllRound(100), Glow.even()),
                Sets.ONE);
        assertThat(lux(List.of(), spot, new Patch(Vec.ZERO, Vec.UP))).isCloseTo(25, within(1e-9));
    }
}
