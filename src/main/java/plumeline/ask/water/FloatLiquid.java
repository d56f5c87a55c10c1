package plumeline.ask.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.answer.Given;
import plumeline.liquid.Dissolved;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;
import plumeline.water.Water;

/// Densities of the tank's water and of what is in a product, as `float` and `hang` read them: given, by what is
/// dissolved, or by one weighing.
final class FloatLiquid {
    private static final String TAP = "room-temperature tap water; salt counts: give its density";

    private FloatLiquid() {}

    private static final Dissolved.Refusal REFUSAL = new Dissolved.Refusal(
            "P-ASK-63", "Weigh a measured volume of it and give weighed: {volume: 100 ml, mass: 103 g}.");

    static Shape contents() {
        List<Key> keys = new ArrayList<>();
        Shape room = FloatBody.amount(Kind.VOLUME, Range.between("0 ml", "1000 l"));
        keys.add(Key.required("volume", "their volume", room)
                .hint("what its label says, or pour it into a weighed jug", ""));
        return shape(keys, "their density");
    }

    static Shape water() {
        List<Key> keys = new ArrayList<>();
        keys.add(Key.optional(
                "temperature",
                "its temperature",
                FloatBody.amount(Kind.TEMPERATURE, Range.between("0 degC", "40 degC"))));
        return shape(keys, "its density, salt and all");
    }

    private static Shape shape(List<Key> keys, String density) {
        List<String> ways = new ArrayList<>(List.of("density", "weighed"));
        keys.add(Key.optional("density", density, FloatBody.amount(Kind.DENSITY, Range.between("0.5 g/ml", "3 g/ml"))));
        for (Key each : Dissolved.keys("what was weighed in over the whole, or weigh a measured volume of it")) {
            keys.add(each);
            ways.add(each.name());
        }
        keys.add(Key.optional(
                "weighed",
                "a measured volume of it and what that weighs",
                Shape.Keys.of(
                        Key.required(
                                "volume",
                                "the volume weighed",
                                FloatBody.amount(Kind.VOLUME, Range.between("0.1 ml", "1000 l"))),
                        Key.required(
                                "mass", "its mass", FloatBody.amount(Kind.MASS, Range.between("0.01 g", "3000 kg"))))));
        return new Shape.Keys(keys, List.of(new Shape.Rule.AtMostOne(ways)));
    }

    /// The tank's water, kilograms a cubic metre.
    static double readWater(Given given) {
        return given.has("water")
                ? readTank(given.map("water"))
                : ofWater(given.assume("water.temperature", "20 degC", TAP));
    }

    /// The water in the jug that it was held under in, kilograms a cubic metre.
    static double readJug(Given given, double tankKilogramsPerMetre3) {
        if (given.has("jug_water")) {
            return readTank(given.map("jug_water"));
        }
        given.text("jug_water", "the tank's water", "one gram gained is then one gram of lift");
        return tankKilogramsPerMetre3;
    }

    private static double readTank(Given water) {
        if (water.has("density")) {
            return water.si("density");
        }
        if (water.has("weighed")) {
            return readWeighed(water);
        }
        double kelvin = water.si("temperature", "20 degC", TAP);
        return readMix(water, kelvin).orElseGet(() -> ofWater(kelvin));
    }

    /// Density of fresh water at a temperature that the question takes, 0 to 40 degC; at an end beyond it.
    static double ofWater(double kelvin) {
        return Water.densityKilogramsPerMetre3(Math.clamp(kelvin, 273.15, 313.15))
                .find()
                .orElseThrow();
    }

    /// What is inside, kilograms a cubic metre, as warm as the tank's water.
    static double readContents(Given given) {
        Given contents = given.map("contents");
        if (contents.has("weighed")) {
            return readWeighed(contents);
        }
        double kelvin =
                given.findMap("water").flatMap(FloatLiquid::findTemperature).orElse(Water.ROOM_KELVIN);
        OptionalDouble mix = readMix(contents, kelvin);
        return mix.isPresent() ? mix.getAsDouble() : readOrGuess(contents);
    }

    /// Water, as the contract has it; between what is a little lighter and a sugared drink nothing is known.
    private static double readOrGuess(Given contents) {
        return contents.has("density")
                ? contents.si("density")
                : contents.guess(
                        "density",
                        "1 g/ml",
                        "0.99 g/ml",
                        "1.04 g/ml",
                        "about water, as a sugar-free drink; counted as 0.99 (wine) to 1.04 (sugared), 80 %");
    }

    /// Whether nobody said how dense the contents are.
    static boolean isGuessed(Given given) {
        if (!given.has("contents")) {
            return false;
        }
        Given contents = given.map("contents");
        return !(Dissolved.isIn(contents) || contents.has("density") || contents.has("weighed"));
    }

    private static Optional<Double> findTemperature(Given water) {
        return water.has("temperature") ? Optional.of(water.si("temperature")) : Optional.empty();
    }

    private static double readWeighed(Given liquid) {
        Given weighed = liquid.map("weighed");
        double density = weighed.si("mass") / weighed.si("volume");
        if (density < 500 || density > 3000) {
            weighed.refuse(
                    "mass",
                    "P-ASK-64",
                    Print.number(density / 1e3, 2) + " g/ml",
                    "from 0.5 to 3 g/ml",
                    "Weigh an empty cup, fill in 100 ml by a syringe, and weigh it again.");
            return 1000;
        }
        return density;
    }

    private static OptionalDouble readMix(Given liquid, double kelvin) {
        return Dissolved.findKilogramsPerMetre3(liquid, kelvin, REFUSAL);
    }
}
