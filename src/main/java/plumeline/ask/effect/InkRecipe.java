package plumeline.ask.effect;

import java.util.List;
import plumeline.answer.Given;
import plumeline.liquid.Dissolved;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;

/// What ink is made heavier or lighter with, and how dense it then is. The dye itself counts for nothing.
final class InkRecipe {
    private static final Dissolved.Refusal REFUSAL =
            new Dissolved.Refusal("P-ASK-74", "Weigh 100 ml of the ink and give density: its grams over 100 are g/ml.");

    private InkRecipe() {}

    static Shape shape() {
        List<Key> keys = Dissolved.keys("");
        List<List<String>> ways = keys.stream().map(key -> List.of(key.name())).toList();
        return new Shape.Keys(keys, List.of(new Shape.Rule.ExactlyOne(ways)));
    }

    /// Density, kilograms a cubic metre.
    static double read(Given recipe, double kelvin) {
        return Dissolved.findKilogramsPerMetre3(recipe, kelvin, REFUSAL).orElseThrow();
    }
}
