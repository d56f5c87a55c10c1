package plumeline.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.colour.Rgb;
import plumeline.geom.Aim;
import plumeline.geom.Barrel;
import plumeline.geom.Body;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.light.Disc;
import plumeline.light.Emitter;
import plumeline.light.Panel;
import plumeline.light.Tube;
import plumeline.lit.Lamp;
import plumeline.lit.Lighting;
import plumeline.lit.Shine;
import plumeline.mirror.Finish;
import plumeline.plan.Kit;
import plumeline.plan.PlacedLight;
import plumeline.quantity.Quantity;
import plumeline.scenery.Coat;
import plumeline.scenery.Form;
import plumeline.scenery.Light;
import plumeline.scenery.Paint;
import plumeline.scenery.Part;
import plumeline.stage.Beam;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// A shot's lamps, cards and flags at an instant: what shines, and what stands behind it.
///
/// What shines is where the plan has it; a lamp's housing is behind that, as deep as for shadows, where line art's
/// outline lies about it.
///
/// @param lights what shines
/// @param parts housings, backs of cards, flags
record SetLamps(List<Light> lights, List<Part> parts) {
    /// How deep a housing is, and a card or flag thick, as `stage` and `lit` have it, m.
    private static final double HOUSING_METRES = 0.05;

    private static final double CARD_METRES = 0.005;

    /// A face lies so far before what is behind it, so that it alone is met; m.
    private static final double GAP_METRES = 1e-4;

    private static final Rgb NEUTRAL = new Rgb(1, 1, 1);

    SetLamps {
        lights = List.copyOf(lights);
        parts = List.copyOf(parts);
    }

    /// Tells whether it is known of any lamp how it shines.
    static boolean isLit(Stage stage, Scene scene) {
        List<PlacedLight> placed = stage.shot().lights();
        for (int i = 0; i < placed.size(); i++) {
            if (placed.get(i).light().emitter().isLamp()
                    && Lamp.of(placed.get(i), scene.beams().get(i)) instanceof Lamp.Known) {
                return true;
            }
        }
        return false;
    }

    /// Reads them.
    ///
    /// @param white what the camera is balanced to, for lamps of which nobody says their colour
    static SetLamps of(Stage stage, Scene scene, Rgb white) {
        List<PlacedLight> placed = stage.shot().lights();
        boolean hasCards = placed.stream().anyMatch(light -> light.light().emitter() instanceof Kit.Emitter.Card);
        List<Lamp> lamps = new ArrayList<>();
        Optional<Lighting> lighting =
                hasCards ? Optional.of(new Lighting(stage.shot(), scene, stage.findTank())) : Optional.empty();
        for (int i = 0; i < placed.size(); i++) {
            lamps.add(
                    lighting.isPresent()
                            ? lighting.get().lamps().get(i)
                            : Lamp.of(placed.get(i), scene.beams().get(i)));
        }
        List<Light> lights = new ArrayList<>();
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < placed.size(); i++) {
            PlacedLight light = placed.get(i);
            Beam beam = scene.beams().get(i);
            if (lamps.get(i) instanceof Lamp.Known known) {
                Rgb tint = known.colour() == Lamp.Colour.OF_OTHERS
                        ? thrown(lighting.orElseThrow().onCard(i), scene, white)
                        : tint(beam, white);
                lights.addAll(shining(known, tint));
            }
            behind(light, beam, scene.lamps().get(i)).ifPresent(parts::add);
        }
        return new SetLamps(lights, parts);
    }

    private static List<Light> shining(Lamp.Known lamp, Rgb tint) {
        return switch (lamp.shine()) {
            case Shine.Face face
            when lamp.colour() == Lamp.Colour.OF_OTHERS -> List.of(new Light(lamp.name(), CardFace.of(face), tint));
            case Shine.Face face ->
                List.of(new Light(lamp.name(), new Light.Source.Face(face.emitter(), face.glow(), face.hole()), tint));
            case Shine.Ray ray ->
                List.of(new Light(lamp.name(), new Light.Source.Spot(ray.aim(), ray.intensity(), ray.grid()), tint));
        };
    }

    /// A lamp's colour at luminance 1: where nobody says, the white that the camera is balanced to.
    static Rgb tint(Beam beam, Rgb white) {
        return beam.tint().findColour().map(Paints::tint).orElse(white);
    }

    /// The colour of what falls on a card, at luminance 1.
    private static Rgb thrown(double[] lux, Scene scene, Rgb white) {
        double red = 0;
        double green = 0;
        double blue = 0;
        double all = 0;
        for (int i = 0; i < lux.length; i++) {
            Rgb tint = tint(scene.beams().get(i), white);
            red += lux[i] * tint.red();
            green += lux[i] * tint.green();
            blue += lux[i] * tint.blue();
            all += lux[i];
        }
        return all > 0 ? new Rgb(red / all, green / all, blue / all) : NEUTRAL;
    }

    /// What stands behind a face: a housing, a card's back; a flag itself.
    private static Optional<Part> behind(PlacedLight light, Beam beam, Body outline) {
        return switch (light.light().emitter()) {
            case Kit.Emitter.Flag _ -> Optional.of(part(light, new Form.Posed(outline), Paints.DARK));
            case Kit.Emitter.Card _ -> {
                double share = light.light()
                        .written()
                        .findQuantity("reflects")
                        .map(Quantity::si)
                        .orElse(Lamp.CARD_SHARE);
                yield Lamp.findFace(light, beam).map(face -> part(light, form(face, beam.aim(), CARD_METRES), share));
            }
            default ->
                Lamp.findHousing(light, beam)
                        .map(face -> part(light, form(face, beam.aim(), HOUSING_METRES), Paints.DARK));
        };
    }

    private static Part part(PlacedLight light, Form form, double reflects) {
        return new Part(light.name(), form, new Coat.Opaque(Paint.even(Paints.grey(reflects)), new Finish.Matte()));
    }

    private static Form form(Emitter face, Aim aim, double deepMetres) {
        Vec forward = aim.forward();
        return switch (face) {
            case Panel panel -> {
                Vec middle = panel.middle().minus(forward.times(GAP_METRES + deepMetres / 2));
                Solid box = new Solid.Box(deepMetres, panel.widthMetres(), panel.heightMetres());
                Vec base = middle.minus(Vec.UP.times(panel.heightMetres() / 2));
                yield new Form.Posed(
                        new Body(box, new Pose(base, aim.turnRadians() - Math.PI / 2, -aim.tiltRadians())));
            }
            case Disc disc -> {
                Vec front = disc.middle().minus(forward.times(GAP_METRES));
                yield new Form.Rod(new Barrel(
                        front.minus(forward.times(deepMetres)), front, disc.radiusMetres(), disc.radiusMetres()));
            }
            case Tube _ -> throw new IllegalArgumentException("a tube has no housing");
        };
    }

    /// Says what was taken for what isn't written of them.
    static void tell(Stage stage, Scene scene, Told told) {
        List<PlacedLight> placed = stage.shot().lights();
        boolean isLit = isLit(stage, scene);
        for (int i = 0; i < placed.size(); i++) {
            PlacedLight light = placed.get(i);
            Beam beam = scene.beams().get(i);
            switch (Lamp.of(light, beam)) {
                case Lamp.Unknown _ -> told.add("Nobody says what ", light.name(), " gives: drawn dark.");
                case Lamp.Known known
                when known.colour() != Lamp.Colour.OF_OTHERS -> {
                    if (known.shine() instanceof Shine.Ray) {
                        told.add("The light of ", light.name(), " comes of a point: its own face is drawn dark.");
                    }
                    if (beam.tint().findColour().isEmpty()) {
                        told.add("The colour of ", light.name(), " isn't known: drawn as the camera's white.");
                    }
                }
                case Lamp.Known _, Lamp.Flag _ -> {}
            }
        }
        if (!isLit) {
            told.add(
                    placed.stream().noneMatch(light -> light.light().emitter().isLamp())
                            ? "No lamp is written: lit evenly from all round."
                            : "Of no lamp is it known how it shines: lit evenly from all round.");
        }
    }
}
