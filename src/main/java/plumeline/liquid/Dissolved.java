package plumeline.liquid;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import plumeline.answer.Given;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;
import plumeline.water.Figure;
import plumeline.water.Solution;

/// What may be dissolved in water, as questions name it, and how dense the water then is.
public enum Dissolved {
    /// Table salt.
    SALT("salt", "table salt by mass"),
    /// What is in the sea.
    SEA_SALT("sea_salt", "sea salt by mass; a sea has about 3.5 %"),
    /// Cane sugar.
    SUGAR("sugar", "sugar by mass"),
    /// Glycerine, measured in a jug.
    GLYCERINE("glycerine", "glycerine by volume, both measured before they are mixed"),
    /// Glycerine, weighed.
    GLYCERINE_BY_MASS("glycerine_by_mass", "glycerine by mass"),
    /// Ethanol.
    ALCOHOL("alcohol", "alcohol by volume, as labels say it");

    private static final double WATER_KILOGRAMS_PER_METRE3 = 1000;

    private final String key;
    private final String doc;

    Dissolved(String key, String doc) {
        this.key = key;
        this.doc = doc;
    }

    /// How a question refuses a mix of which nothing is known.
    ///
    /// @param code the problem's code
    /// @param attempt what to measure instead
    public record Refusal(String code, String attempt) {}

    /// Lists a question's keys for shares of each.
    ///
    /// @param hint what to say where it is missing or wrong; empty for nothing of its own
    /// @return a key each, none required
    public static List<Key> keys(String hint) {
        List<Key> keys = new ArrayList<>();
        for (Dissolved each : values()) {
            Key plain = Key.optional(
                    each.key, each.doc, new Shape.Amount(Kind.SHARE, Range.between("0 %", "100 %"), Shape.Mark.FIXED));
            keys.add(hint.isEmpty() ? plain : plain.hint(hint, ""));
        }
        return keys;
    }

    /// Tells whether an input names any.
    ///
    /// @param liquid the input
    /// @return true where one of the keys is there
    public static boolean isIn(Given liquid) {
        for (Dissolved each : values()) {
            if (liquid.has(each.key)) {
                return true;
            }
        }
        return false;
    }

    /// Reads the density of water with what an input names in it.
    ///
    /// @param liquid the input
    /// @param kelvin its temperature, K
    /// @param refusal how to refuse what isn't known
    /// @return kilograms a cubic metre, plain water's where it was refused; empty where nothing is named
    public static OptionalDouble findKilogramsPerMetre3(Given liquid, double kelvin, Refusal refusal) {
        for (Dissolved each : values()) {
            if (liquid.has(each.key)) {
                double share = Math.clamp(liquid.si(each.key), 0, 1);
                return OptionalDouble.of(
                        switch (each.with(share).densityKilogramsPerMetre3(kelvin)) {
                            case Figure.Known(double density, double _) -> density;
                            case Figure.Unknown unknown -> each.refused(liquid, share, unknown, refusal);
                        });
            }
        }
        return OptionalDouble.empty();
    }

    private Solution with(double share) {
        return switch (this) {
            case SALT -> new Solution(Solution.Solute.SALT, share);
            case SEA_SALT -> new Solution(Solution.Solute.SEA_SALT, share);
            case SUGAR -> new Solution(Solution.Solute.SUGAR, share);
            case GLYCERINE -> Solution.ofGlycerineByVolume(share);
            case GLYCERINE_BY_MASS -> new Solution(Solution.Solute.GLYCERINE, share);
            case ALCOHOL -> Solution.ofEthanolByVolume(share);
        };
    }

    private double refused(Given liquid, double share, Figure.Unknown unknown, Refusal refusal) {
        boolean warm = unknown.measure() == Figure.Measure.TEMPERATURE;
        liquid.refuse(
                key,
                refusal.code,
                warm ? celsius(unknown.given()) : Print.share(share, 1),
                warm
                        ? "from " + celsius(unknown.low()) + " to " + celsius(unknown.high()) + " with " + key
                        : "at most " + Print.share(unknown.high(), 1) + ": more of it isn't known here",
                refusal.attempt);
        return WATER_KILOGRAMS_PER_METRE3;
    }

    private static String celsius(double kelvin) {
        return Print.number(kelvin - 273.15, 1) + " degC";
    }
}
