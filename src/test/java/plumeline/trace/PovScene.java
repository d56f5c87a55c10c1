package plumeline.trace;

import java.util.List;
import java.util.Locale;
import plumeline.geom.Aim;
import plumeline.geom.Barrel;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;
import plumeline.light.Disc;
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

/// A world in the scene language of the ray tracer POV-Ray (Debian's povray 3.7), made of its own primitives.
///
/// In a scene of codes each part shines evenly by its code, so that a pixel's value says which part is seen: lens
/// point, pixel centres, no smoothing. A part may be a perfect mirror instead; it is then seen by what it mirrors.
/// Panes and water of a basin bend sight and take nothing.
public final class PovScene {
    /// The code of nothing.
    static final int NOTHING = 0;

    private final World world;
    private final Eye eye;
    private final StringBuilder text = new StringBuilder();

    private PovScene(World world, Eye eye) {
        this.world = world;
        this.eye = eye;
    }

    /// The code of what [Tracer.Seen] calls by a number.
    static int code(int part) {
        return part == -1 ? NOTHING : part >= 0 ? 1 + part : 200 - 2 - part;
    }

    /// A scene of codes.
    ///
    /// @param mirror index of the part that is a perfect mirror; −1 for none
    static String codes(World world, Eye eye, int mirror) {
        PovScene scene = new PovScene(world, eye);
        scene.head();
        for (int i = 0; i < world.parts().size(); i++) {
            scene.text.append(scene.form(world.parts().get(i).form()));
            scene.text.append(
                    i == mirror
                            ? " texture { pigment { rgb 0 } finish { ambient 0 diffuse 0 reflection 1 } } }\n"
                            : coded(code(i)));
        }
        for (int i = 0; i < world.lights().size(); i++) {
            scene.face(world.lights().get(i).source(), coded(code(-2 - i)));
        }
        world.basin().ifPresent(basin -> scene.basin(basin, ""));
        return scene.text.toString();
    }

    /// Writes a scene as bright as ours, roughly: for how long it takes. Each light is a point with one shadow ray, and
    /// a face that is seen; glossy coats mirror by Fresnel's formulas.
    ///
    /// @param world the world
    /// @param eye the camera
    /// @return the scene's text
    public static String shaded(World world, Eye eye) {
        PovScene scene = new PovScene(world, eye);
        scene.head();
        for (Part part : world.parts()) {
            scene.text.append(scene.form(part.form())).append(painted(part.coat()));
        }
        for (Light light : world.lights()) {
            scene.face(
                    light.source(),
                    " texture { pigment { rgb 1 } finish { ambient 0 diffuse 0 emission 1 } } no_shadow }\n");
            if (light.source() instanceof Light.Source.Face face) {
                scene.say("light_source { %s, rgb 0.4 }", at(face.emitter().middle()));
            }
        }
        world.basin().ifPresent(basin -> scene.basin(basin, " reflection { 0, 1 fresnel on } conserve_energy"));
        return scene.text.toString();
    }

    private static String painted(Coat coat) {
        return switch (coat) {
            case Coat.Opaque(Paint paint, Finish finish) ->
                String.format(
                        Locale.ROOT,
                        " texture { pigment { rgb <%.6f, %.6f, %.6f> } finish { ambient 0 diffuse 1 %s } } %s }%n",
                        paint.body().red(),
                        paint.body().green(),
                        paint.body().blue(),
                        finish instanceof Finish.Matte ? "" : "reflection { 0, 1 fresnel on } conserve_energy",
                        finish instanceof Finish.Matte ? "" : "interior { ior 1.5 }");
            case Coat.Clear(Medium wall, var _, var _, var _) ->
                String.format(
                        Locale.ROOT,
                        " texture { pigment { rgbt 1 } finish { ambient 0 diffuse 0 reflection { 0, 1 fresnel on }"
                                + " conserve_energy } } interior { ior %.6f } }%n",
                        wall.index());
        };
    }

    private static String coded(int code) {
        return String.format(
                Locale.ROOT,
                " texture { pigment { rgb <%.9f, 0, 0> } finish { ambient 0 diffuse 0 emission 1 } } }%n",
                code / 255.0);
    }

    private void head() {
        Aim.Frame frame = eye.aim().frame();
        say("#version 3.7;");
        say("global_settings { assumed_gamma 1.0 max_trace_level 12 adc_bailout 1/255 }");
        say("background { rgb 0 }");
        say(
                "camera { perspective location %s direction %s right %s up %s }",
                at(eye.aim().eye()),
                at(frame.forward()),
                at(frame.right().times(eye.widthTangent())),
                at(frame.up().times(eye.heightTangent())));
    }

    private void say(String form, Object... given) {
        text.append(String.format(Locale.ROOT, form, given)).append('\n');
    }

    static String at(Vec place) {
        return String.format(Locale.ROOT, "<%.12f, %.12f, %.12f>", place.x(), place.y(), place.z());
    }

    /// A form, its braces open for a texture.
    private String form(Form form) {
        return switch (form) {
            case Form.Posed(Body body) -> posed(body);
            case Form.Ball(Vec middle, double radius) ->
                String.format(Locale.ROOT, "sphere { %s, %.12f", at(middle), radius);
            case Form.Rod(Barrel barrel) ->
                cone(barrel.from(), barrel.fromRadiusMetres(), barrel.to(), barrel.toRadiusMetres());
            case Form.Sheet sheet ->
                rectangle(
                        sheet.middle(),
                        sheet.right().times(sheet.widthMetres() / 2),
                        sheet.up().times(sheet.heightMetres() / 2));
            case Form.Bend bend -> bend(bend);
        };
    }

    private static String bend(Form.Bend bend) {
        Vec half = bend.along().times(bend.lengthMetres() / 2);
        Vec low = bend.middle().minus(half);
        Vec high = bend.middle().plus(half);
        return String.format(
                Locale.ROOT,
                "cylinder { %s, %s, %.12f open clipped_by { intersection { %s %s } }",
                at(low),
                at(high),
                bend.radiusMetres(),
                plane(bend.from(), bend.middle()),
                plane(bend.to(), bend.middle()));
    }

    /// What is on a direction's side of a place.
    private static String plane(Vec toward, Vec place) {
        return String.format(Locale.ROOT, "plane { %s, %.12f }", at(toward.times(-1)), -toward.dot(place));
    }

    private static String rectangle(Vec middle, Vec right, Vec up) {
        List<Vec> corners = List.of(
                middle.minus(right).minus(up),
                middle.plus(right).minus(up),
                middle.plus(right).plus(up),
                middle.minus(right).plus(up),
                middle.minus(right).minus(up));
        StringBuilder said = new StringBuilder("polygon { 5");
        corners.forEach(corner -> said.append(", ").append(at(corner)));
        return said.toString();
    }

    private static String cone(Vec from, double fromRadius, Vec to, double toRadius) {
        return fromRadius == toRadius
                ? String.format(Locale.ROOT, "cylinder { %s, %s, %.12f", at(from), at(to), fromRadius)
                : String.format(Locale.ROOT, "cone { %s, %.12f, %s, %.12f", at(from), fromRadius, at(to), toRadius);
    }

    private static String posed(Body body) {
        return switch (body.solid()) {
            case Solid.Revolved revolved -> turned(body, revolved);
            case Solid.Box box -> {
                Vec origin = body.place(Vec.ZERO);
                yield String.format(
                        Locale.ROOT,
                        "box { <%.12f, %.12f, 0>, <%.12f, %.12f, %.12f> matrix <%s, %s, %s, %s>",
                        -box.widthMetres() / 2,
                        -box.depthMetres() / 2,
                        box.widthMetres() / 2,
                        box.depthMetres() / 2,
                        box.heightMetres(),
                        row(body.place(new Vec(1, 0, 0)).minus(origin)),
                        row(body.place(new Vec(0, 1, 0)).minus(origin)),
                        row(body.place(new Vec(0, 0, 1)).minus(origin)),
                        row(origin));
            }
        };
    }

    private static String row(Vec way) {
        return String.format(Locale.ROOT, "%.12f, %.12f, %.12f", way.x(), way.y(), way.z());
    }

    private static String turned(Body body, Solid.Revolved revolved) {
        StringBuilder said = new StringBuilder("union { ");
        List<Station> stations = revolved.stations();
        for (int i = 1; i < stations.size(); i++) {
            Station low = stations.get(i - 1);
            Station high = stations.get(i);
            if (high.heightMetres() > low.heightMetres()) {
                said.append(cone(
                                body.place(new Vec(0, 0, low.heightMetres())), low.radiusMetres(),
                                body.place(new Vec(0, 0, high.heightMetres())), high.radiusMetres()))
                        .append(" } ");
            }
        }
        return said.toString();
    }

    private void face(Light.Source source, String coat) {
        if (source instanceof Light.Source.Face face) {
            text.append(
                            switch (face.emitter()) {
                                case Panel panel ->
                                    rectangle(
                                            panel.middle(),
                                            panel.right().times(panel.widthMetres() / 2),
                                            panel.up().times(panel.heightMetres() / 2));
                                case Disc disc ->
                                    String.format(
                                            Locale.ROOT,
                                            "disc { %s, %s, %.12f",
                                            at(disc.middle()),
                                            at(disc.facing()),
                                            disc.radiusMetres());
                                case Tube tube -> {
                                    Vec half = tube.axis().times(tube.lengthMetres() / 2);
                                    yield String.format(
                                            Locale.ROOT,
                                            "cylinder { %s, %s, %.12f open",
                                            at(tube.middle().minus(half)),
                                            at(tube.middle().plus(half)),
                                            tube.radiusMetres());
                                }
                            })
                    .append(coat);
        }
    }

    /// Panes as one block with the water as a block in it; the water reaches over the block's top by nothing, so sight
    /// that goes over the water line is not to be compared.
    ///
    /// @param mirrors how they mirror: empty for not at all
    private void basin(Basin basin, String mirrors) {
        String clear =
                " texture { pigment { rgbt <1, 1, 1, 1> } finish { ambient 0 diffuse 0%s } } interior { ior %.9f } }";
        block(
                basin.outside().low(),
                basin.outside().high(),
                String.format(Locale.ROOT, clear, mirrors, basin.glass().index()));
        Bounds inside = basin.inside();
        Vec high = inside.high();
        block(
                inside.low(),
                new Vec(high.x(), high.y(), basin.waterLineMetres()),
                String.format(Locale.ROOT, clear, mirrors, basin.water().index()));
    }

    private void block(Vec low, Vec high, String coat) {
        say("box { %s, %s%s", at(low), at(high), coat);
    }
}
