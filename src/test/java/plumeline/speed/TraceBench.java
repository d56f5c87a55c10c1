package plumeline.speed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import plumeline.colour.Rgb;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;
import plumeline.light.Emitter;
import plumeline.light.Glow;
import plumeline.light.Panel;
import plumeline.light.Tube;
import plumeline.mirror.Finish;
import plumeline.scenery.Basin;
import plumeline.scenery.Coat;
import plumeline.scenery.Form;
import plumeline.scenery.Light;
import plumeline.scenery.Medium;
import plumeline.scenery.Paint;
import plumeline.scenery.Part;
import plumeline.scenery.World;
import plumeline.trace.Exposing;
import plumeline.trace.Eye;
import plumeline.trace.Look;
import plumeline.trace.Plate;
import plumeline.trace.Tracer;

/// How long a picture of four cans takes, one of them in water: table, bend and wall behind, two panels and a tube.
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class TraceBench {
    private static final int WIDTH = 480;
    private static final int HEIGHT = 270;
    private static final double HALF_TABLE_METRES = 1.5;

    /// How many rays a pixel.
    @Param({"1", "4"})
    public int samples = 1;

    private final Look look = new Look(Tracer.of(world()), eye());

    /// The camera.
    ///
    /// @return it, its pupil 2 mm wide
    public static Eye eye() {
        return new Eye(Aim.toward(new Vec(0.05, -0.9, 0.25), new Vec(0.02, 0, 0.06)), 0.5, 0.28125, 0.001, 0.9);
    }

    /// The set.
    ///
    /// @return the world
    public static World world() {
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            double x = i < 3 ? -0.16 + 0.08 * i : 0.16;
            double z = i < 3 ? 0 : 0.006;
            Pose pose = new Pose(new Vec(x, i < 3 ? 0.02 * i : 0, z), 0, 0);
            Rgb paint = new Rgb(0.7 - 0.2 * (i & 1), 0.2 + 0.1 * i, 0.15 + 0.2 * (i & 2));
            parts.add(part("can " + i, new Form.Posed(new Body(can(), pose)), paint, new Finish.Gloss(1.5)));
        }
        Rgb grey = new Rgb(0.6, 0.6, 0.6);
        double back = 0.5;
        double radius = 0.2;
        Vec x = new Vec(1, 0, 0);
        Vec y = new Vec(0, 1, 0);
        double deep = HALF_TABLE_METRES + back - radius;
        parts.add(part(
                "table",
                new Form.Sheet(
                        new Vec(0, (back - radius - HALF_TABLE_METRES) / 2, -2e-5), x, y, 2 * HALF_TABLE_METRES, deep),
                grey,
                new Finish.Matte()));
        parts.add(part(
                "bend",
                new Form.Bend(
                        new Vec(0, back - radius, radius - 2e-5),
                        x,
                        new Vec(0, 0, -1),
                        y,
                        2 * HALF_TABLE_METRES,
                        radius),
                grey,
                new Finish.Matte()));
        parts.add(part(
                "wall",
                new Form.Sheet(
                        new Vec(0, back, radius + HALF_TABLE_METRES / 2),
                        x,
                        Vec.UP,
                        2 * HALF_TABLE_METRES,
                        HALF_TABLE_METRES),
                grey,
                new Finish.Matte()));
        Medium glass = Medium.clear(1.52);
        Medium water = Medium.clear(1.333);
        Basin basin = new Basin(
                new Bounds(new Vec(0.08, -0.08, 0), new Vec(0.24, 0.08, 0.2)),
                new Bounds(new Vec(0.086, -0.074, 0.006), new Vec(0.234, 0.074, 0.2)),
                0.17,
                glass,
                water);
        return new World(parts, lights(), Optional.of(basin), List.of(), new Rgb(0, 0, 0));
    }

    private static List<Light> lights() {
        Vec left = new Vec(0.8, 0.5, -0.45).unit();
        Vec right = new Vec(-0.7, 0.4, -0.3).unit();
        return List.of(
                light(new Panel(
                        new Vec(-0.8, -0.5, 0.6), left, left.cross(Vec.UP).unit(), 0.4, 0.6, 4000)),
                light(new Panel(
                        new Vec(0.8, -0.4, 0.5), right, right.cross(Vec.UP).unit(), 0.3, 0.5, 2500)),
                light(new Tube(new Vec(0, 0, 0.9), new Vec(1, 0, 0), new Vec(0, 0, -1), 1.2, 0.013, 6000)));
    }

    private static Light light(Emitter emitter) {
        return new Light("light", new Light.Source.Face(emitter, Glow.even(), Optional.empty()), new Rgb(1, 1, 1));
    }

    private static Part part(String name, Form form, Rgb paint, Finish finish) {
        return new Part(name, form, new Coat.Opaque(Paint.even(paint), finish));
    }

    private static Solid can() {
        double[] heights = {0, 2, 5, 8, 80, 88, 93, 97, 100, 102, 104, 106, 110, 112};
        double[] radii = {20, 24, 26, 27, 27, 26, 24, 21, 18, 17.5, 18, 18, 15, 14};
        List<Station> stations = new ArrayList<>();
        for (int i = 0; i < heights.length; i++) {
            stations.add(new Station(heights[i] / 1000, radii[i] / 1000));
        }
        return new Solid.Revolved(stations);
    }

    /// A whole picture, by one thread.
    ///
    /// @return what was exposed
    @Benchmark
    public Plate picture() {
        Plate plate = new Plate(WIDTH, HEIGHT);
        Exposing.expose(
                List.of(look),
                plate,
                new Exposing.Tile(0, 0, WIDTH, HEIGHT),
                new Exposing.Rays(0, samples, samples, 1));
        return plate;
    }
}
