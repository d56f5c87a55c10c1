package plumeline.trace;

import java.util.List;
import java.util.Optional;
import plumeline.colour.Rgb;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.light.Emitter;
import plumeline.light.Glow;
import plumeline.mirror.Finish;
import plumeline.scenery.Coat;
import plumeline.scenery.Form;
import plumeline.scenery.Light;
import plumeline.scenery.Paint;
import plumeline.scenery.Part;
import plumeline.scenery.World;

/// Worlds to try rays in.
final class Sets {
    static final Rgb DARK = new Rgb(0, 0, 0);
    static final Rgb ONE = new Rgb(1, 1, 1);

    private Sets() {}

    static Eye eye(Vec from, Vec to, double tangent) {
        return new Eye(Aim.toward(from, to), tangent, tangent, 0, to.distanceMetres(from));
    }

    static Part part(String name, Form form, Rgb paint, Finish finish) {
        return new Part(name, form, new Coat.Opaque(Paint.even(paint), finish));
    }

    static Part body(String name, Solid solid, Pose pose, Rgb paint, Finish finish) {
        return part(name, new Form.Posed(new Body(solid, pose)), paint, finish);
    }

    static Light face(Emitter emitter) {
        return new Light("light", new Light.Source.Face(emitter, Glow.even(), Optional.empty()), ONE);
    }

    static World world(List<Part> parts, List<Light> lights, Rgb surround) {
        return new World(parts, lights, Optional.empty(), List.of(), surround);
    }

    /// Exposes all of a plate.
    static Plate exposed(World world, Eye eye, int pixels, int samples) {
        Plate plate = new Plate(pixels, pixels);
        Exposing.expose(
                List.of(new Look(Tracer.of(world), eye)),
                plate,
                new Exposing.Tile(0, 0, pixels, pixels),
                new Exposing.Rays(0, samples, samples, 7));
        return plate;
    }

    static double mean(Plate plate) {
        double sum = 0;
        for (int y = 0; y < plate.height(); y++) {
            for (int x = 0; x < plate.width(); x++) {
                sum += plate.light(x, y, 1);
            }
        }
        return sum / plate.width() / plate.height();
    }
}
