package plumeline.stage;

import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.plan.Kit;
import plumeline.plan.Thing;
import plumeline.quantity.Quantity;

/// From the plan's forms to solids.
final class Forms {
    /// How thick a lamp's housing is taken to be where only its shining face is known, metres. Common practice.
    private static final double HOUSING_METRES = 0.05;

    /// How thick a card or a flag is, metres. Common practice.
    private static final double CARD_METRES = 0.005;

    private static final double POINT_LAMP_METRES = 0.1;

    private Forms() {}

    static Solid solid(Thing.Form form) {
        return switch (form) {
            case Thing.Form.Profile profile ->
                new Solid.Revolved(profile.stations().stream()
                        .map(station -> new Station(
                                station.height().si()
                                        - profile.stations().getFirst().height().si(),
                                station.radius().si()))
                        .toList());
            case Thing.Form.Box box ->
                new Solid.Box(box.width().si(), box.depth().si(), box.height().si());
            case Thing.Form.Cylinder cylinder ->
                Solid.cylinder(cylinder.diameter().si(), cylinder.height().si());
        };
    }

    /// A lamp's body, its front to camera right: its shining face with a thin housing behind it.
    static Solid lamp(Kit.Emitter emitter) {
        return switch (emitter) {
            case Kit.Emitter.Panel panel -> box(HOUSING_METRES, panel.width(), panel.height());
            case Kit.Emitter.Tube tube -> box(tube.diameter().si(), tube.length(), tube.diameter());
            case Kit.Emitter.Disc disc -> box(HOUSING_METRES, disc.diameter(), disc.diameter());
            case Kit.Emitter.Card card -> box(CARD_METRES, card.width(), card.height());
            case Kit.Emitter.Flag flag -> box(CARD_METRES, flag.width(), flag.height());
            case Kit.Emitter.Point() -> new Solid.Box(POINT_LAMP_METRES, POINT_LAMP_METRES, POINT_LAMP_METRES);
        };
    }

    /// How far behind the middle of what shines its body's middle is, m: a tube shines all round, a flag and a lamp
    /// that is a point are where they are placed.
    static double behindMetres(Kit.Emitter emitter) {
        return switch (emitter) {
            case Kit.Emitter.Panel _, Kit.Emitter.Disc _ -> HOUSING_METRES / 2;
            case Kit.Emitter.Card _ -> CARD_METRES / 2;
            case Kit.Emitter.Tube _, Kit.Emitter.Flag _, Kit.Emitter.Point() -> 0;
        };
    }

    private static Solid box(double deepMetres, Quantity wide, Quantity tall) {
        return new Solid.Box(deepMetres, wide.si(), tall.si());
    }
}
