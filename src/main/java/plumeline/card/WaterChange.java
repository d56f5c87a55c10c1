package plumeline.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.ink.Clarity;
import plumeline.plan.WantLine;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.wet.InkedWater;

/// How much of a tank's water is changed after a take of ink, and from when on.
///
/// **Source:** [Clarity].
///
/// @param stage the shot; it lets ink go
/// @param scene the shot at its start
/// @param wet the things in the water, by index
record WaterChange(Stage stage, Scene scene, List<Integer> wet) {
    WaterChange {
        wet = List.copyOf(wet);
    }

    Card.Part part() {
        int thing = findWanted()
                .map(line -> stage.thingIndex(line.subjects().getFirst().name()))
                .orElseGet(() -> wet.isEmpty() ? -1 : wet.getFirst());
        List<String> lacks = new ArrayList<>();
        if (InkedWater.of(stage) instanceof InkedWater.Missing(List<InkedWater.Lack> all)) {
            all.forEach(lack -> lacks.add(missing(lack)));
        }
        if (thing < 0) {
            lacks.add("what stands in it");
        }
        if (lacks.isEmpty() && InkedWater.of(stage) instanceof InkedWater.Known water) {
            return new Card.Part.Fact("Change water", change(water, thing));
        }
        return new Card.Part.Ask(
                "Change water",
                "how much after each take isn't known without " + String.join(", ", lacks)
                        + ": all of it, until it is. Changed");
    }

    private static String missing(InkedWater.Lack lack) {
        return switch (lack) {
            case TANK -> "a tank";
            case DEPTH -> "the water's depth";
            case INK -> "an ink";
            case VOLUME -> "the volume of a take";
            case STRENGTH -> "the ink's strength";
            case MEASUREMENT -> "a measurement of the ink's strength";
        };
    }

    private String change(InkedWater.Known water, int thing) {
        double least = findWanted()
                .flatMap(line -> line.written().findQuantity("least"))
                .map(Quantity::si)
                .orElse(InkedWater.LEAST_CLEAR);
        Clarity clarity =
                water.before(scene.things().get(thing), water.strength().si());
        double takes = clarity.takes(water.inkMetres3(), least);
        double share = clarity.changeShare(water.inkMetres3(), least);
        return "with " + Print.share(least, 0) + " of the light left before "
                + stage.shot().placed().get(thing).name() + " "
                + (takes > 1 ? Print.number(takes, 0) + " takes begin clear enough" : "only the first take begins")
                + ". From then on change " + Print.share(share, 0) + ", " + Figures.litres(share * water.metres3())
                + ", after every take; stir, let it come to rest. One take leaves "
                + Print.share(clarity.clearShare(water.inkMetres3()), 0) + ".";
    }

    /// The want on clarity, where there is one.
    private Optional<WantLine> findWanted() {
        return stage.shot().wants().stream()
                .filter(line -> line.word().equals("see_through"))
                .findFirst();
    }
}
