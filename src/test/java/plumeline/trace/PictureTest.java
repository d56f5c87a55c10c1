package plumeline.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.light.Disc;
import plumeline.light.Panel;
import plumeline.mirror.Finish;
import plumeline.scenery.Form;
import plumeline.scenery.Light;
import plumeline.scenery.Part;
import plumeline.scenery.World;
import plumeline.trace.sums.Draws;

/// Pictures: the same however they are cut up, and as blurred as the lens makes them.
final class PictureTest {
    private static World world() {
        Part can = Sets.body("can", Solid.cylinder(0.06, 0.1), Pose.at(0, 0), Sets.ONE, new Finish.Satin(1.5, 0.2));
        Part table = Sets.part(
                "table",
                new Form.Sheet(new Vec(0, 0, 0), new Vec(1, 0, 0), new Vec(0, 1, 0), 2, 2),
                Sets.ONE,
                new Finish.Matte());
        Light panel =
                Sets.face(new Panel(new Vec(-0.4, -0.4, 0.5), new Vec(0, 0, -1), new Vec(1, 0, 0), 0.3, 0.3, 1000));
        return Sets.world(List.of(can, table), List.of(panel), Sets.DARK);
    }

    private static Eye eye() {
        return new Eye(Sets.eye(new Vec(0, -0.5, 0.2), new Vec(0, 0, 0.05), 0.4).aim(), 0.4, 0.4, 0.01, 0.5);
    }

    @Test
    void tilesThreadsAndGoes_giveTheSamePlate() throws ExecutionException, InterruptedException {
        Look look = new Look(Tracer.of(world()), eye());
        Look other = new Look(Tracer.of(world()), eye().sharp());
        List<Look> looks = List.of(look, other);
        Plate whole = new Plate(40, 30);
        Exposing.expose(looks, whole, new Exposing.Tile(0, 0, 40, 30), new Exposing.Rays(0, 8, 8, 5));
        List<Exposing.Tile> tiles = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            tiles.add(new Exposing.Tile(10 * (i % 4), 10 * (i / 4), 10, 10));
        }
        Collections.shuffle(tiles, new Random(2));
        Plate cut = new Plate(40, 30);
        try (var threads = Executors.newFixedThreadPool(2)) {
            for (int from = 0; from < 8; from += 4) {
                int first = from;
                List<Future<?>> all = new ArrayList<>();
                for (Exposing.Tile tile : tiles) {
                    all.add(threads.submit(() -> Exposing.expose(looks, cut, tile, new Exposing.Rays(first, 4, 8, 5))));
                }
                for (Future<?> each : all) {
                    each.get();
                }
            }
        }
        for (int y = 0; y < 30; y++) {
            for (int x = 0; x < 40; x++) {
                assertThat(cut.light(x, y, 1)).isEqualTo(whole.light(x, y, 1));
                assertThat(cut.error(x, y)).isEqualTo(whole.error(x, y));
            }
        }
    }

    /// A small lamp out of focus is a disc of `2 p |1/d − 1/f|` as a tangent, p the pupil's radius.
    @Test
    void blurDisc_isAsWideAsTheThinLensMakesIt() {
        double pupil = 0.01;
        double focus = 0.8;
        for (double depth : new double[] {0.5, 1.6}) {
            Light lamp = Sets.face(new Disc(new Vec(0, depth, 0), new Vec(0, -1, 0), 1e-3, 1e6));
            Eye eye = new Eye(Sets.eye(Vec.ZERO, new Vec(0, 1, 0), 1).aim(), 0.06, 0.06, pupil, focus);
            Plate plate = Sets.exposed(Sets.world(List.of(), List.of(lamp), Sets.DARK), eye, 96, 256);
            double all = 0;
            double moment = 0;
            for (int y = 0; y < 96; y++) {
                for (int x = 0; x < 96; x++) {
                    double right = ((x + 0.5) / 96 - 0.5) * 0.06;
                    all += plate.light(x, y, 0);
                    moment += plate.light(x, y, 0) * right * right;
                }
            }
            // A disc's mean square across is a quarter of its radius's; the lamp's own adds.
            double own = 1e-3 / depth;
            double diameter = 2 * Math.sqrt(4 * moment / all - own * own);
            double wanted = 2 * pupil * Math.abs(1 / depth - 1 / focus);
            assertThat(diameter).isCloseTo(wanted, within(0.05 * wanted));
        }
    }

    @Test
    void mirrorImage_isNamed() {
        Part can = Sets.body("can", Solid.cylinder(0.06, 0.1), Pose.at(0, 0), Sets.ONE, new Finish.Gloss(1.5));
        Part front = Sets.body("front", Solid.cylinder(0.3, 0.02), Pose.at(0, -0.4), Sets.ONE, new Finish.Matte());
        Light lamp = Sets.face(new Panel(new Vec(0, -1, 0.2), new Vec(0, 1, 0), new Vec(1, 0, 0), 1, 0.2, 100));
        Tracer tracer = Tracer.of(Sets.world(List.of(can, front), List.of(lamp), Sets.DARK));
        Eye eye = Sets.eye(new Vec(0, -0.7, 0.1), new Vec(0, 0, 0.05), 0.4);
        assertThat(tracer.seen(eye, 0, 0).part()).isZero();
        assertThat(tracer.seen(eye, 0, 0).mirrored()).isEqualTo(1);
        Eye level = Sets.eye(new Vec(0, -0.7, 0.08), new Vec(0, 0, 0.08), 0.4);
        assertThat(tracer.seen(level, 0, 0).part()).isZero();
        assertThat(tracer.seen(level, 0, 0).mirrored()).isEqualTo(-1);
        Eye nearer = Sets.eye(new Vec(0, -0.7, 0.01), new Vec(0, 0, 0.01), 0.4);
        assertThat(tracer.seen(nearer, 0, 0)).satisfies(seen -> {
            assertThat(seen.part()).isEqualTo(1);
            assertThat(seen.mirrored()).isEqualTo(-1);
            assertThat(seen.wayMetres()).isCloseTo(0.15, within(1e-9));
        });
        assertThat(tracer.seen(eye, 0.9, 0.9).part()).isEqualTo(-1);
        assertThat(tracer.seen(eye, 0.9, 0.9).wayMetres()).isInfinite();
    }

    /// Any power of two of draws has one in each cell of each even cut.
    @Test
    void draws_areSpreadEvenly() {
        Draws draws = new Draws();
        for (int cut = 0; cut <= 4; cut++) {
            int wide = 1 << cut;
            int tall = 16 / wide;
            for (int pair = 0; pair < 5; pair++) {
                int[] cells = new int[16];
                for (int i = 0; i < 16; i++) {
                    draws.begin(3, 77, i, 16);
                    for (int j = 0; j <= pair; j++) {
                        draws.next();
                    }
                    cells[(int) (draws.u() * wide) * tall + (int) (draws.v() * tall)]++;
                }
                assertThat(cells).containsOnly(1);
            }
        }
    }
}
