package plumeline.render;

import java.util.Optional;
import plumeline.colour.Rgb;
import plumeline.geom.Body;
import plumeline.geom.Solid;
import plumeline.lit.ClearThing;
import plumeline.lit.Spots;
import plumeline.mirror.Finish;
import plumeline.plan.Placed;
import plumeline.plan.Thing;
import plumeline.plan.Written;
import plumeline.quantity.Quantity;
import plumeline.scenery.Art;
import plumeline.scenery.Coat;
import plumeline.scenery.Form;
import plumeline.scenery.Medium;
import plumeline.scenery.Paint;
import plumeline.scenery.Part;

/// A placed thing as a part: its paint, label, drops and finish, or its glass and what is in it.
///
/// @param placed the thing as placed
/// @param art its label's print
/// @param told who hears what was taken for what isn't written
record SetThings(Placed placed, Optional<Art> art, Told told) {
    /// A clear thing without a lid has a film over its mouth, as a closed form needs; m.
    private static final double FILM_METRES = 1e-4;

    /// Nothing is darker than this in its own colour, share of one a channel.
    private static final double DARKEST = 0.02;

    private Written keys() {
        return placed.thing().written();
    }

    boolean isClear() {
        return placed.thing().body().orElse(Thing.Body.OPAQUE) == Thing.Body.CLEAR;
    }

    /// Reads how it looks; alike however it stands.
    Coat coat(Solid solid) {
        return isClear() ? clear(solid) : opaque(solid);
    }

    Part part(Body body, Coat coat) {
        return new Part(placed.name(), new Form.Posed(body), coat);
    }

    private Coat opaque(Solid solid) {
        Finish finish = finish(keys());
        if (!keys().has("finish")) {
            told.add("The finish of ", placed.name(), " isn't written: drawn glossy.");
        }
        boolean isMetal = finish instanceof Finish.Metal;
        if (!isMetal && !keys().has("reflects") && Paints.findColour(keys()).isEmpty()) {
            told.add("The colour of ", placed.name(), " isn't written: drawn grey, throwing back 50 %.");
        }
        Rgb body = isMetal ? Paints.grey(0) : Paints.of(keys(), Paints.GREY);
        return new Coat.Opaque(new Paint(body, label(solid), Optional.empty(), beads()), finish);
    }

    static Finish finish(Written keys) {
        return switch (keys.findWord("finish").orElse("gloss")) {
            case "mirror" -> Finish.Metal.USUAL;
            case "satin" -> Finish.Satin.USUAL;
            case "matte" -> new Finish.Matte();
            default -> Finish.Gloss.USUAL;
        };
    }

    private Optional<Paint.Label> label(Solid solid) {
        return placed.thing().label().map(label -> {
            Optional<Double> reflects = keys().findQuantity("label.reflects").map(Quantity::si);
            if (reflects.isEmpty() && art.isEmpty()) {
                told.add("Blank labels: ", placed.name(), ", of paper that throws back 80 %.");
            }
            return new Paint.Label(
                    label.width().si(),
                    label.height().si(),
                    Spots.bottom(label, solid.heightMetres()),
                    Paints.grey(reflects.orElse(Paints.PAPER)),
                    art);
        });
    }

    private Optional<Paint.Beads> beads() {
        Written written = placed.written();
        if (!written.has("beads")) {
            return Optional.empty();
        }
        var size = written.listQuantities("beads.size");
        return Optional.of(new Paint.Beads(
                written.findQuantity("beads.cover").orElseThrow().si(),
                size.getFirst().si(),
                size.getLast().si(),
                placed.name().hashCode()));
    }

    private Coat clear(Solid solid) {
        ClearThing.Filled filled = ClearThing.filled(placed.thing(), solid);
        if (!filled.assumed().isEmpty()) {
            told.add("Taken for ", placed.name(), ": " + String.join(", ", filled.assumed()) + ".");
        }
        if (keys().findWord("finish").filter("satin"::equals).isPresent()) {
            told.add("The frost of ", placed.name(), " isn't drawn: as clear glass.");
        }
        if (placed.thing().label().isPresent()) {
            told.add("The label of ", placed.name(), " is drawn matte, its back as bare paper.");
        }
        Room room = new Room(solid, filled, keys().says("closed") ? filled.wallMetres() : FILM_METRES);
        Optional<Room.Inside> inside = room.find();
        boolean isWet =
                inside.isPresent() && filled.levelMetres() > inside.get().bottomMetres();
        Optional<Rgb> colour = Paints.findColour(keys());
        if (colour.isPresent()) {
            told.add(
                    "The colour of ",
                    placed.name(),
                    isWet
                            ? " is drawn as that of what is in it, seen straight through its middle."
                            : " is drawn as that of its glass, seen straight through its middle.");
        }
        double through = isWet ? room.acrossMetres() : 2 * filled.wallMetres();
        Medium tinted =
                medium(isWet ? filled.indices().liquid() : filled.indices().glass(), colour, through);
        Medium wall = isWet ? Medium.clear(filled.indices().glass()) : tinted;
        Medium liquid = isWet ? tinted : Medium.clear(filled.indices().liquid());
        return new Coat.Clear(
                wall,
                inside.map(found -> new Coat.Room(found.solid(), found.bottomMetres(), filled.levelMetres(), liquid)),
                label(solid),
                beads());
    }

    private static Medium medium(double index, Optional<Rgb> colour, double throughMetres) {
        return colour.map(rgb -> new Medium(
                        index,
                        new Rgb(
                                absorption(rgb.red(), throughMetres),
                                absorption(rgb.green(), throughMetres),
                                absorption(rgb.blue(), throughMetres))))
                .orElseGet(() -> Medium.clear(index));
    }

    private static double absorption(double left, double throughMetres) {
        return -Math.log(Math.clamp(left, DARKEST, 1)) / throughMetres;
    }
}
