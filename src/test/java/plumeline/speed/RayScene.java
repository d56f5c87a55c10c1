package plumeline.speed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.colour.Rgb;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;
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
import plumeline.trace.Eye;

/// The set by which the ray tracer is timed: four glossy cans of 13 segments and one in water, on a table that bends up
/// into a wall, two panels and a tube.
final class RayScene {
    private static final Vec RIGHT = new Vec(1, 0, 0);

    private RayScene() {}

    static Eye eye() {
        Vec lens = new Vec(0, -0.95, 0.16);
        return new Eye(Aim.toward(lens, new Vec(0.05, 0.1, 0.06)), 0.62, 0.62 * 9 / 16, 0, 1);
    }

    /// With a tank of glass and water.
    static World tank() {
        Basin basin = new Basin(
                new Bounds(new Vec(0.15, 0.05, 0), new Vec(0.4, 0.35, 0.25)),
                new Bounds(new Vec(0.156, 0.056, 0.006), new Vec(0.394, 0.344, 0.25)),
                0.24,
                Medium.clear(1.52),
                Medium.clear(1.333));
        return new World(parts(), lights(), Optional.of(basin), List.of(), new Rgb(0, 0, 0));
    }

    /// With a block of water alone, through which light goes straight in both tracers.
    static World block() {
        List<Part> parts = parts();
        parts.add(new Part(
                "water",
                new Form.Posed(new Body(new Solid.Box(0.25, 0.3, 0.24), new Pose(new Vec(0.275, 0.2, 0.001), 0, 0))),
                new Coat.Clear(Medium.clear(1.333), Optional.empty())));
        return new World(parts, lights(), Optional.empty(), List.of(), new Rgb(0, 0, 0));
    }

    private static List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        parts.add(matte("table", new Form.Sheet(new Vec(0, 0.2, -2e-5), RIGHT, new Vec(0, 1, 0), 2, 1.4)));
        parts.add(
                matte("bend", new Form.Bend(new Vec(0, 0.9, 0.3), RIGHT, new Vec(0, 0, -1), new Vec(0, 1, 0), 2, 0.3)));
        parts.add(matte("wall", new Form.Sheet(new Vec(0, 1.2, 0.9), RIGHT, new Vec(0, 0, 1), 2, 1.2)));
        for (int i = 0; i < 4; i++) {
            parts.add(can("can" + i, new Vec(-0.2 + 0.09 * i, -0.12 + 0.05 * i, 0)));
        }
        parts.add(can("wet", new Vec(0.27, 0.2, 0.05)));
        return parts;
    }

    private static List<Light> lights() {
        Panel left = new Panel(new Vec(-0.7, -0.3, 0.5), new Vec(0.8, 0.6, 0), new Vec(-0.6, 0.8, 0), 0.3, 0.9, 4000);
        Panel top = new Panel(new Vec(0, 0.1, 1.1), new Vec(0, 0, -1), RIGHT, 0.8, 0.4, 2000);
        Tube tube = new Tube(new Vec(0.65, -0.2, 0.4), new Vec(0, 0, 1), new Vec(-1, 0, 0), 0.6, 0.015, 3000);
        return List.of(light("left", left), light("top", top), light("tube", tube));
    }

    private static Light light(String name, plumeline.light.Emitter emitter) {
        return new Light(name, new Light.Source.Face(emitter, Glow.even(), Optional.empty()), new Rgb(1, 1, 1));
    }

    private static Part matte(String name, Form form) {
        return new Part(name, form, new Coat.Opaque(Paint.even(new Rgb(0.5, 0.5, 0.5)), new Finish.Matte()));
    }

    private static Part can(String name, Vec base) {
        double[][] profile = {
            {0, 0.024},
            {0.003, 0.027},
            {0.006, 0.03},
            {0.01, 0.032},
            {0.014, 0.033},
            {0.1, 0.033},
            {0.104, 0.032},
            {0.108, 0.03},
            {0.112, 0.028},
            {0.115, 0.027},
            {0.117, 0.0275},
            {0.119, 0.0275},
            {0.121, 0.027},
            {0.122, 0.026}
        };
        List<Station> stations = new ArrayList<>();
        for (double[] station : profile) {
            stations.add(new Station(station[0], station[1]));
        }
        return new Part(
                name,
                new Form.Posed(new Body(new Solid.Revolved(stations), new Pose(base, 0.4, 0))),
                new Coat.Opaque(Paint.even(new Rgb(0.6, 0.3, 0.2)), new Finish.Gloss(1.5)));
    }
}
