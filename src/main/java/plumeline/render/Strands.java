package plumeline.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Barrel;
import plumeline.geom.Vec;
import plumeline.lit.Lighting;
import plumeline.mirror.Finish;
import plumeline.plan.Placed;
import plumeline.plan.Thing;
import plumeline.scenery.Coat;
import plumeline.scenery.Form;
import plumeline.scenery.Medium;
import plumeline.scenery.Paint;
import plumeline.scenery.Part;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.stage.Strand;

/// What holds things, and the ink's nozzle, as parts: lines clear as they are sold, rods and nozzle of bare steel. A
/// line or rod goes straight on through the water's surface.
final class Strands {
    /// Undyed monofilament; handbooks say 1.53 for nylon 6 and 1.42 for polyvinylidene fluoride, both from memory.
    private static final double NYLON_INDEX = 1.53;

    private static final double FLUOROCARBON_INDEX = 1.42;

    /// What polished steel mirrors straight on: 0.55 to 0.6, from memory.
    private static final Coat STEEL = new Coat.Opaque(Paint.even(Paints.grey(0)), new Finish.Metal(0.57));

    /// What begins on a clear thing begins so far off it: two surfaces never lie in one.
    private static final double OFF_METRES = 2e-5;

    private Strands() {}

    /// Lists them at an instant: lines and rods in the order of their things, then the nozzle.
    static List<Part> parts(Stage stage, double[] values, Scene scene) {
        List<Part> parts = new ArrayList<>();
        for (Strand strand : Strand.listAll(stage)) {
            form(stage, strand, strand.at(stage, values, scene))
                    .ifPresent(form -> parts.add(new Part(strand.name(), form, coat(stage, strand))));
        }
        scene.nozzle()
                .ifPresent(mouth ->
                        parts.add(new Part("nozzle", new Form.Rod(Lighting.nozzle(mouth, stage.shot())), STEEL)));
        return parts;
    }

    /// Its foot is a little inside an opaque thing, so that no gap shows where it leaves the thing at a slant.
    private static Optional<Form> form(Stage stage, Strand strand, Strand.Ends ends) {
        double length = ends.lengthMetres();
        if (!(length > 2 * OFF_METRES)) {
            return Optional.empty();
        }
        Vec way = ends.far().minus(ends.foot()).unit();
        double from = isClear(stage, strand) ? OFF_METRES : -strand.diameterMetres();
        double radius = strand.diameterMetres() / 2;
        return Optional.of(new Form.Rod(new Barrel(ends.foot().plus(way.times(from)), ends.far(), radius, radius)));
    }

    private static boolean isClear(Stage stage, Strand strand) {
        return thing(stage, strand)
                .thing()
                .body()
                .filter(body -> body == Thing.Body.CLEAR)
                .isPresent();
    }

    private static Placed thing(Stage stage, Strand strand) {
        return stage.shot().placed().get(strand.thing());
    }

    private static Coat coat(Stage stage, Strand strand) {
        return switch (strand.sort()) {
            case LINE -> new Coat.Clear(Medium.clear(index(thing(stage, strand))), Optional.empty());
            case RIG -> STEEL;
        };
    }

    private static double index(Placed hung) {
        return hung.written()
                        .findWord("line.material")
                        .filter("fluorocarbon"::equals)
                        .isPresent()
                ? FLUOROCARBON_INDEX
                : NYLON_INDEX;
    }

    /// Tells what was taken for what isn't written.
    static List<String> assumed(Stage stage) {
        List<String> assumed = new ArrayList<>();
        for (Strand strand : Strand.listAll(stage)) {
            strand.assumed().forEach(words -> assumed.add("Taken for " + strand.name() + ": " + words + "."));
        }
        return assumed.stream().distinct().toList();
    }
}
