package plumeline.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumeline.colour.Rgb;
import plumeline.geom.Aim;
import plumeline.geom.Barrel;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;
import plumeline.light.Glow;
import plumeline.light.Panel;
import plumeline.mirror.Finish;
import plumeline.scenery.Basin;
import plumeline.scenery.Coat;
import plumeline.scenery.Form;
import plumeline.scenery.Light;
import plumeline.scenery.Medium;
import plumeline.scenery.Paint;
import plumeline.scenery.Part;
import plumeline.scenery.World;
import plumeline.tidy.Outside;

/// The same worlds seen by a general-purpose ray tracer: which part shows in each pixel, straight, through a tank, and
/// mirrored.
@Outside(source = "POV-Ray 3.7, Debian's povray: scenes written by PovScene", kind = "program")
class PovrayOutsideIT {
    private static final int WIDTH = 480;
    private static final int HEIGHT = 270;
    private static final int PIXELS = WIDTH * HEIGHT;
    private static final int MOST_OTHER = 5;
    private static final int MOST_OTHER_MIRRORED = 20;

    @TempDir
    Path folder;

    private static Part opaque(String name, Form form) {
        return new Part(name, form, new Coat.Opaque(Paint.even(new Rgb(0.5, 0.5, 0.5)), new Finish.Gloss(1.5)));
    }

    private static World world(List<Part> parts, Optional<Basin> basin) {
        Panel panel =
                new Panel(new Vec(-0.35, 0.2, 0.3), new Vec(0.6, -0.8, 0), new Vec(-0.8, -0.6, 0), 0.2, 0.3, 1000);
        Light light = new Light("key", new Light.Source.Face(panel, Glow.even(), Optional.empty()), new Rgb(1, 1, 1));
        return new World(parts, List.of(light), basin, List.of(), new Rgb(0, 0, 0));
    }

    private static Solid profile(Random random) {
        List<Station> stations = new ArrayList<>();
        double height = 0;
        for (int i = 0; i < 3 + random.nextInt(4); i++) {
            stations.add(new Station(height, 0.006 + 0.03 * random.nextDouble()));
            height += 0.008 + 0.03 * random.nextDouble();
            if (random.nextInt(3) == 0) {
                // A shoulder.
                stations.add(new Station(height, 0.006 + 0.03 * random.nextDouble()));
            }
        }
        stations.add(new Station(height + 0.01, 0.012));
        return new Solid.Revolved(stations);
    }

    private static Pose pose(Random random, double spread, double low) {
        return new Pose(
                new Vec(
                        spread * (random.nextDouble() - 0.5),
                        spread * random.nextDouble(),
                        low + 0.05 * random.nextDouble()),
                6 * random.nextDouble(),
                0.5 * (random.nextDouble() - 0.5));
    }

    private static List<Part> things(Random random, double spread, double low) {
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            parts.add(opaque("turned" + i, new Form.Posed(new Body(profile(random), pose(random, spread, low)))));
            Solid box = new Solid.Box(0.03 + 0.02 * random.nextDouble(), 0.04, 0.05 * (1 + random.nextDouble()));
            parts.add(opaque("box" + i, new Form.Posed(new Body(box, pose(random, spread, low)))));
        }
        Vec from = pose(random, spread, low).base();
        parts.add(opaque("rod", new Form.Rod(new Barrel(from, from.plus(new Vec(0.1, 0.05, 0.15)), 0.003, 0.006))));
        parts.add(opaque("ball", new Form.Ball(pose(random, spread, low + 0.03).base(), 0.02)));
        return parts;
    }

    private static List<Part> sweep() {
        Vec right = new Vec(1, 0, 0);
        return List.of(
                opaque("floor", new Form.Sheet(new Vec(0, 0, -0.001), right, new Vec(0, 1, 0), 1.2, 1.2)),
                opaque(
                        "bend",
                        new Form.Bend(new Vec(0, 0.6, 0.199), right, new Vec(0, 0, -1), new Vec(0, 1, 0), 1.2, 0.2)),
                opaque("wall", new Form.Sheet(new Vec(0, 0.8, 0.499), right, new Vec(0, 0, 1), 1.2, 0.6)));
    }

    private static Eye eye(Random random) {
        Vec lens = new Vec(0.2 * (random.nextDouble() - 0.5), -0.5, 0.05 + 0.2 * random.nextDouble());
        Aim to = Aim.toward(lens, new Vec(0, 0.1, 0.07));
        return new Eye(new Aim(lens, to.turnRadians(), to.tiltRadians(), 0.1), 0.64, 0.36, 0, 0.6);
    }

    private int[][] drawn(String scene) throws IOException, InterruptedException {
        Path pov = Files.writeString(folder.resolve("scene.pov"), scene);
        Path png = folder.resolve("scene.png");
        Process run = new ProcessBuilder(
                        povray().toString(),
                        "+I" + pov,
                        "+O" + png,
                        "+W" + WIDTH,
                        "+H" + HEIGHT,
                        "-D",
                        "-A",
                        "+FN8",
                        "File_Gamma=1.0",
                        "Work_Threads=1",
                        "-GA")
                .redirectErrorStream(true)
                .start();
        String said = new String(run.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        assertThat(run.waitFor()).as(said).isZero();
        BufferedImage picture = ImageIO.read(png.toFile());
        int[][] codes = new int[HEIGHT][WIDTH];
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                codes[y][x] = picture.getRaster().getSample(x, y, 0);
            }
        }
        return codes;
    }

    private static Path povray() {
        for (String folder : System.getenv().getOrDefault("PATH", "").split(File.pathSeparator)) {
            if (Files.isExecutable(Path.of(folder, "povray"))) {
                return Path.of(folder, "povray");
            }
        }
        List<String> without =
                List.of(System.getenv().getOrDefault("PLUMELINE_WITHOUT", "").split(" "));
        Assumptions.assumeFalse(without.contains("povray"), "povray is said to be missing (PLUMELINE_WITHOUT)");
        throw new AssertionError("There is no povray on the path: install the package povray.");
    }

    private interface Told {
        int code(Tracer.Seen seen, int theirs);
    }

    private static int others(World world, Eye eye, int[][] codes, Told told) {
        Tracer tracer = Tracer.of(world);
        int others = 0;
        int shown = 0;
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                Tracer.Seen seen = tracer.seen(
                        eye,
                        ((x + 0.5) / WIDTH - 0.5) * eye.widthTangent(),
                        (0.5 - (y + 0.5) / HEIGHT) * eye.heightTangent());
                int ours = told.code(seen, codes[y][x]);
                shown += ours == PovScene.NOTHING ? 0 : 1;
                others += ours == codes[y][x] ? 0 : 1;
            }
        }
        assertThat(shown).as("pixels that show something").isGreaterThan(PIXELS / 10);
        return others;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void parts_ofDryWorld_showInTheSamePixels(long seed) throws Exception {
        Random random = new Random(seed);
        List<Part> parts = new ArrayList<>(sweep());
        parts.addAll(things(random, 0.35, 0));
        World world = world(parts, Optional.empty());
        Eye eye = eye(random);
        int[][] codes = drawn(PovScene.codes(world, eye, -1));
        assertThat(others(world, eye, codes, (seen, _) -> PovScene.code(seen.part())))
                .as("pixels with another part, seed " + seed)
                .isLessThanOrEqualTo(MOST_OTHER);
    }

    @ParameterizedTest
    @ValueSource(longs = {4, 5, 6})
    void parts_inWater_showInTheSamePixels(long seed) throws Exception {
        Random random = new Random(seed);
        Bounds outside = new Bounds(new Vec(-0.6, -0.1, -0.3), new Vec(0.6, 0.5, 0.6));
        Bounds inside = new Bounds(new Vec(-0.592, -0.092, -0.292), new Vec(0.592, 0.492, 0.6));
        Basin basin = new Basin(outside, inside, 0.55, Medium.clear(1.52), Medium.clear(1.333));
        World world = world(things(random, 0.3, 0.02), Optional.of(basin));
        Vec lens = new Vec(0.1 * (random.nextDouble() - 0.5), -0.6, 0.1);
        Eye eye = new Eye(Aim.toward(lens, new Vec(0, 0.1, 0.08)), 0.56, 0.315, 0, 0.6);
        int[][] codes = drawn(PovScene.codes(world, eye, -1));
        assertThat(others(world, eye, codes, (seen, _) -> PovScene.code(seen.part())))
                .as("pixels with another part, seed " + seed)
                .isLessThanOrEqualTo(MOST_OTHER);
    }

    @ParameterizedTest
    @ValueSource(longs = {7, 8, 9})
    void mirrorImages_showInTheSamePixels(long seed) throws Exception {
        Random random = new Random(seed);
        List<Part> parts = new ArrayList<>(sweep());
        parts.addAll(things(random, 0.35, 0));
        int mirror = 3 + 2 * random.nextInt(5);
        Body body = new Body(profile(random), new Pose(new Vec(0.02, -0.12, 0), 0, 0.1));
        parts.set(mirror, opaque("mirror", new Form.Posed(body)));
        World world = world(parts, Optional.empty());
        Eye eye = eye(random);
        int[][] codes = drawn(PovScene.codes(world, eye, mirror));
        int[] mirrored = new int[1];
        int others = others(world, eye, codes, (seen, theirs) -> {
            mirrored[0] += seen.part() == mirror ? 1 : 0;
            // Where the mirror shows itself, the other tracer shows what it mirrors there in turn.
            return seen.mirrored() == mirror
                    ? theirs
                    : PovScene.code(seen.part() == mirror ? seen.mirrored() : seen.part());
        });
        assertThat(mirrored[0]).as("pixels of the mirror").isGreaterThan(1500);
        assertThat(others).as("pixels with another part, seed " + seed).isLessThanOrEqualTo(MOST_OTHER_MIRRORED);
    }

    /// The check can fail: a little more index moves pixels.
    @Test
    void otherIndex_movesPixels() throws Exception {
        Random random = new Random(4);
        Bounds outside = new Bounds(new Vec(-0.6, -0.1, -0.3), new Vec(0.6, 0.5, 0.6));
        Bounds inside = new Bounds(new Vec(-0.592, -0.092, -0.292), new Vec(0.592, 0.492, 0.6));
        List<Part> parts = things(random, 0.3, 0.02);
        Basin basin = new Basin(outside, inside, 0.55, Medium.clear(1.52), Medium.clear(1.333));
        Basin other = new Basin(outside, inside, 0.55, Medium.clear(1.52), Medium.clear(1.34));
        Vec lens = new Vec(0.1 * (random.nextDouble() - 0.5), -0.6, 0.1);
        Eye eye = new Eye(Aim.toward(lens, new Vec(0, 0.1, 0.08)), 0.56, 0.315, 0, 0.6);
        int[][] codes = drawn(PovScene.codes(world(parts, Optional.of(other)), eye, -1));
        assertThat(others(world(parts, Optional.of(basin)), eye, codes, (seen, _) -> PovScene.code(seen.part())))
                .isGreaterThan(MOST_OTHER);
    }
}
