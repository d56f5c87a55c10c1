package plumeline.ask.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.answer.Given;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;
import plumeline.water.Material;
import plumeline.water.Vessel;
import plumeline.water.Wall;
import plumeline.water.Water;

/// A product in water as `float` and `hang` read it.
///
/// @param waterKilogramsPerMetre3 density of the tank's water, kilograms a cubic metre
/// @param form how large it is
/// @param emptyCentreMetres height of the empty product's centre of mass, where that was given, metres
/// @param wholeKilograms what it weighs with all that is in it, kilograms
/// @param parts what it is made of, where that is known
record FloatBody(
        double waterKilogramsPerMetre3,
        FloatForm form,
        OptionalDouble emptyCentreMetres,
        double wholeKilograms,
        Parts parts) {

    private static final String NO_AIR_GIVEN = "all that is left inside: the outside less wall and contents";

    /// What it is made of.
    sealed interface Parts {
        /// Only the whole was weighed.
        ///
        /// @param airMetres3 the air inside, where that was given, cubic metres
        record Unknown(OptionalDouble airMetres3) implements Parts {}

        /// Wall, contents, air; and in an open one the tank's water that fills the rest.
        ///
        /// @param emptyKilograms the empty product, kilograms
        /// @param wallMetres3 its wall, cubic metres
        /// @param liquidMetres3 contents, cubic metres
        /// @param liquidKilogramsPerMetre3 their density
        /// @param airMetres3 the air inside, cubic metres
        /// @param floodedMetres3 tank water inside, cubic metres
        record Known(
                double emptyKilograms,
                double wallMetres3,
                double liquidMetres3,
                double liquidKilogramsPerMetre3,
                double airMetres3,
                double floodedMetres3)
                implements Parts {}
    }

    /// The keys that both questions take.
    static List<Key> keys() {
        Shape room = amount(Kind.VOLUME, Range.between("0 ml", "1000 l"));
        Shape mass = amount(Kind.MASS, Range.between("0.01 g", "1000 kg"));
        List<Key> keys = new ArrayList<>(FloatForm.keys());
        keys.addAll(List.of(
                Key.optional("empty_mass", "its mass without contents", mass),
                Key.optional("whole_mass", "its mass with all that is in it", mass),
                Key.optional(
                        "empty_centre",
                        "height of the empty product's centre of mass",
                        amount(Kind.LENGTH, Range.between("0 mm", "10 m"))),
                Key.optional("contents", "what is inside", FloatLiquid.contents()),
                Key.optional("air", "the air inside", room)
                        .hint("the water that fills its headspace up, from a weighed jug: 1 g is 1 ml", ""),
                Key.optional("wall", "the wall's substance", substance()),
                Key.optional("closed", "whether it is sealed", new Shape.YesNo()),
                Key.optional("water", "the tank's water", FloatLiquid.water()).hint("{temperature: 20 degC}", "")));
        return keys;
    }

    /// A substance by its density or its name.
    static Shape substance() {
        return Shape.Keys.of(
                        Key.optional(
                                "density", "its density", amount(Kind.DENSITY, Range.between("0.001 g/ml", "25 g/ml"))),
                        Key.optional("material", "what it is", Shape.Choice.inAnyCase(Material.listSpellings())))
                .with(new Shape.Rule.AtMostOne(List.of("density", "material")));
    }

    /// Its density, or the default's.
    static double readSubstance(Given given, String key, String otherwise, String why) {
        if (!given.has(key)) {
            return given.assume(key + ".density", otherwise, why);
        }
        Given map = given.map(key);
        return map.has("material")
                ? Material.find(map.text("material")).orElseThrow().densityKilogramsPerMetre3()
                : map.si("density", otherwise, why);
    }

    /// Which of the keys go together.
    static List<Shape.Rule> rules() {
        return List.of(
                FloatForm.rule(), new Shape.Rule.ExactlyOne(List.of(List.of("empty_mass"), List.of("whole_mass"))));
    }

    static Shape amount(Kind kind, Range range) {
        return new Shape.Amount(kind, range, Shape.Mark.FIXED);
    }

    static FloatBody read(Given given) {
        double water = FloatLiquid.readWater(given);
        FloatForm form = FloatForm.read(given, water);
        double[] liquid = readLiquid(given, form.wall().isEmpty());
        OptionalDouble centre = given.findSi("empty_centre");
        boolean weighedWhole = given.has("whole_mass");
        if (weighedWhole && !given.has("contents")) {
            Parts parts = new Parts.Unknown(given.findSi("air"));
            return new FloatBody(water, form, centre, given.si("whole_mass"), parts);
        }
        double contents = liquid[0] * liquid[1];
        double empty = weighedWhole ? given.si("whole_mass") - contents : given.si("empty_mass");
        if (empty <= 0) {
            given.refuse(
                    "whole_mass",
                    "P-ASK-51",
                    given.quantity("whole_mass").valueText(),
                    "more than the contents' " + grams(contents),
                    "Weigh it again, full; or measure how much is in it.");
            empty = 1e-6;
        }
        boolean closed = given.text("closed", "yes", "sold sealed").equals("yes");
        Parts.Known parts = readParts(given, form.bodyMetres3(), empty, liquid, closed);
        double whole = empty + contents + parts.floodedMetres3() * water;
        return new FloatBody(water, form, centre, whole, parts);
    }

    private static double[] readLiquid(Given given, boolean formless) {
        if (!given.has("contents")) {
            if (given.has("empty_mass")) {
                given.assume("contents.volume", "0 ml", "nothing was said to be in it" + (formless ? "" : " but air"));
            }
            return new double[] {0, 1000};
        }
        return new double[] {given.map("contents").si("volume"), FloatLiquid.readContents(given)};
    }

    private static Parts.Known readParts(Given given, double outside, double empty, double[] liquid, boolean closed) {
        String why = "aluminium; steel has 7.85, glass 2.5, PET 1.38, paper about 0.8";
        double density = readSubstance(given, "wall", "2.7 g/ml", why);
        double wall = empty / density;
        double cavity = outside - wall;
        if (cavity < 0) {
            String key = given.has("empty_mass") ? "empty_mass" : "whole_mass";
            given.refuse(
                    key,
                    "P-ASK-53",
                    "a wall of " + millilitres(wall),
                    "at most the outside's " + millilitres(outside),
                    "Weigh it again, hold it under in a jug on a scale again, or give wall: {density: ...}.");
            return new Parts.Known(empty, outside / 2, 0, 1000, outside / 2, 0);
        }
        double left = cavity - liquid[0];
        if (left < -1e-9 * outside) {
            given.refuse(
                    "contents",
                    "P-ASK-54",
                    millilitres(liquid[0]) + " of contents",
                    "at most " + millilitres(cavity) + ", the outside less the wall",
                    "Measure what is in it, and the outside by holding it under in a jug on a scale.");
        }
        left = Math.max(0, left);
        if (!given.has("air")) {
            given.assume("air", Print.number(left * 1e6, 2) + " ml", NO_AIR_GIVEN);
        }
        double air = given.findSi("air").orElse(left);
        if (air > left * (1 + 1e-9) + 1e-9 * outside) {
            given.refuse(
                    "air",
                    "P-ASK-55",
                    given.quantity("air").valueText(),
                    "at most " + millilitres(left) + ", the outside less wall and contents",
                    "Measure the headspace: fill it up with water from a weighed jug; 1 g is 1 ml.");
        }
        air = Math.min(air, left);
        return new Parts.Known(empty, wall, Math.min(liquid[0], cavity), liquid[1], air, closed ? 0 : left - air);
    }

    static String grams(double kilograms) {
        double g = kilograms * 1e3;
        return Print.number(g, Math.abs(g) < 20 ? 1 : 0) + " g";
    }

    static String millilitres(double metres3) {
        double ml = metres3 * 1e6;
        return Print.number(ml, Math.abs(ml) < 20 ? 1 : 0) + " ml";
    }

    /// What it displaces as it is lowered, cubic metres.
    double outsideMetres3() {
        return form.bodyMetres3() + form.underMetres3();
    }

    /// Lift less weight, kilograms; positive floats.
    double netKilograms() {
        return waterKilogramsPerMetre3 * outsideMetres3() - wholeKilograms;
    }

    double netNewtons() {
        return netKilograms() * Water.GRAVITY_METRES_PER_SECOND2;
    }

    /// The body with what moves in it; empty where form or contents aren't known. The wall is taken as evenly thick.
    Optional<Vessel> findVessel() {
        if (form.wall().isEmpty() || !(parts instanceof Parts.Known known)) {
            return Optional.empty();
        }
        Wall wall = form.wall().get();
        double cavity = known.liquidMetres3() + known.airMetres3() + known.floodedMetres3();
        double liquid = known.liquidMetres3() + known.floodedMetres3();
        double density = liquid > 0
                ? (known.liquidMetres3() * known.liquidKilogramsPerMetre3()
                                + known.floodedMetres3() * waterKilogramsPerMetre3)
                        / liquid
                : waterKilogramsPerMetre3;
        Wall.Empty empty = new Wall.Empty(known.emptyKilograms(), emptyCentreMetres);
        return Optional.of(wall.around(empty, cavity, liquid, density));
    }
}
