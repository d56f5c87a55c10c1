package plumeline.ask.effect;

import java.util.ArrayList;
import java.util.List;
import plumeline.answer.Given;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;
import plumeline.water.Figure;
import plumeline.water.Solution;

/// What ink is made heavier or lighter with, and how dense it then is. The dye itself counts for nothing.
final class InkRecipe {
    private InkRecipe() {}

    private enum In {
        SALT("salt", "table salt by mass"),
        SUGAR("sugar", "sugar by mass"),
        GLYCERINE("glycerine", "glycerine by volume"),
        ALCOHOL("alcohol", "alcohol by volume; makes it lighter than water");

        private final String key;
        private final String doc;

        In(String key, String doc) {
            this.key = key;
            this.doc = doc;
        }

        private Solution with(double share) {
            return switch (this) {
                case SALT -> new Solution(Solution.Solute.SALT, share);
                case SUGAR -> new Solution(Solution.Solute.SUGAR, share);
                case GLYCERINE -> Solution.ofGlycerineByVolume(share);
                case ALCOHOL -> Solution.ofEthanolByVolume(share);
            };
        }
    }

    static Shape shape() {
        List<Key> keys = new ArrayList<>();
        List<List<String>> ways = new ArrayList<>();
        for (In each : In.values()) {
            keys.add(Key.optional(
                    each.key, each.doc, new Shape.Amount(Kind.SHARE, Range.between("0 %", "100 %"), Shape.Mark.FIXED)));
            ways.add(List.of(each.key));
        }
        return new Shape.Keys(keys, List.of(new Shape.Rule.ExactlyOne(ways)));
    }

    /// Density, kilograms a cubic metre; 1000 where it was refused.
    static double read(Given recipe, double kelvin) {
        for (In each : In.values()) {
            if (recipe.has(each.key)) {
                double share = Math.clamp(recipe.si(each.key), 0, 1);
                return switch (each.with(share).densityKilogramsPerMetre3(kelvin)) {
                    case Figure.Known(double density, double _) -> density;
                    case Figure.Unknown unknown -> refuse(recipe, each, share, unknown);
                };
            }
        }
        return 1000;
    }

    private static double refuse(Given recipe, In in, double share, Figure.Unknown unknown) {
        boolean warm = unknown.measure() == Figure.Measure.TEMPERATURE;
        recipe.refuse(
                in.key,
                "P-ASK-74",
                warm ? celsius(unknown.given()) : Print.share(share, 1),
                warm
                        ? "from " + celsius(unknown.low()) + " to " + celsius(unknown.high()) + " with " + in.key
                        : "at most " + Print.share(unknown.high(), 1) + ": more of it isn't known here",
                "Weigh 100 ml of the ink and give density: its grams over 100 are g/ml.");
        return 1000;
    }

    private static String celsius(double kelvin) {
        return Print.number(kelvin - 273.15, 1) + " degC";
    }
}
