package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.plan.Placed;
import plumeline.plan.PlacedLight;
import plumeline.plan.Written;
import plumeline.quantity.Quantity;
import plumeline.text.Node;

/// What a meter read of lamps on parts of things: there it takes the place of what is computed, and goes with it where
/// marks move.
final class Readings {
    private Readings() {}

    /// A lamp's reading there, as a share of what the kit says it gives; of a thing without a label its middle's stands
    /// for that.
    static Optional<Quantity> find(PlacedLight light, Placed thing, Spots.Part asked) {
        Spots.Part part = asked == Spots.Part.LABEL && thing.thing().label().isEmpty() ? Spots.Part.MIDDLE : asked;
        if (!(light.written().findNode("readings").orElse(null) instanceof Node.Sequence list)) {
            return Optional.empty();
        }
        return list.items().stream()
                .map(item -> new Written((Node.Mapping) item, item.place()))
                .filter(reading ->
                        reading.findWord("thing").filter(thing.name()::equals).isPresent())
                .filter(reading ->
                        reading.findWord("part").filter(part.word()::equals).isPresent())
                .flatMap(reading -> reading.findQuantity("output").stream())
                .findFirst();
    }

    /// Puts what was read in the place of what is computed.
    ///
    /// @param lighting the shot's light
    /// @param lamps its lamps as placed
    /// @param thing the thing
    /// @param part which part of it
    /// @param light what is computed on a part of a thing
    static Lighting.Light over(
            Lighting lighting, List<PlacedLight> lamps, Placed thing, Spots.Part part, Lighting.Light light) {
        List<Double> lux = new ArrayList<>();
        double sum = 0;
        double square = 0;
        for (int i = 0; i < lamps.size(); i++) {
            int lamp = i;
            Optional<Quantity> read = find(lamps.get(i), thing, part);
            double own = light.lamps().get(i)
                    * read.map(Quantity::si).orElse(Lamp.output(lamps.get(i)))
                    / Lamp.output(lamps.get(i));
            double half = read.map(quantity -> quantity.halfWidthSi() / quantity.si())
                    .orElseGet(() -> lighting.lamps().get(lamp) instanceof Lamp.Known known ? known.halfShare() : 0.0);
            lux.add(own);
            sum += own;
            square += Math.pow(own * half, 2);
        }
        return new Lighting.Light(sum, sum > 0 ? Math.sqrt(square) / sum : 0, lux);
    }
}
