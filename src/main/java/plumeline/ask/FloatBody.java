package plumeline.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;
import plumeline.water.Turned;
import plumeline.water.Vessel;
import plumeline.water.Water;

/// A product in water as `float` and `hang` read it.
///
/// @param waterKilogramsPerMetre3 density of the tank's water, kilograms a cubic metre
/// @param outsideMetres3 what it displaces with all of it under, cubic metres
/// @param figure its form, where that is known
/// @param wholeKilograms what it weighs with all that is in it, kilograms
/// @param parts what it is made of, where that is known
/// @param netHalfKilograms 95 % half-width of lift less weight, kilograms; 0 where no input has a spread
record FloatBody(
        double waterKilogramsPerMetre3,
        double outsideMetres3,
        Optional<Turned> figure,
        double wholeKilograms,
        Parts parts,
        double netHalfKilograms) {

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
        Shape volume = amount(Kind.VOLUME, Range.between("0.01 ml", "1000 l"));
        Shape room = amount(Kind.VOLUME, Range.between("0 ml", "1000 l"));
        Shape mass = amount(Kind.MASS, Range.between("0.01 g", "1000 kg"));
        Shape density = amount(Kind.DENSITY, Range.between("0.001 g/ml", "25 g/ml"));
        Shape liquid = amount(Kind.DENSITY, Range.between("0.5 g/ml", "3 g/ml"));
        Shape length = amount(Kind.LENGTH, Range.between("0.1 mm", "10 m"));
        Shape from0 = amount(Kind.LENGTH, Range.between("0 mm", "10 m"));
        return List.of(
                Key.optional("outside", "the volume it displaces with all of it under", volume)
                        .hint("what a kitchen scale gains when it is held just under: 1 g is 1 ml", ""),
                Key.optional("gained", "what a jug of water on a scale gains when it is held just under", mass),
                Key.optional(
                        "profile", "heights from the base with the radius there", new Shape.Curve(from0, from0, 2)),
                Key.optional("diameter", "its outer diameter", length),
                Key.optional("height", "its outer height", length),
                Key.optional(
                        "shape_factor",
                        "its volume over that of a cylinder of that diameter and height",
                        amount(Kind.NUMBER, Range.above("0", "1.3"))),
                Key.optional("empty_mass", "its mass without contents", mass),
                Key.optional("whole_mass", "its mass with all that is in it", mass),
                Key.optional(
                        "contents",
                        "what is inside",
                        Shape.Keys.of(
                                Key.required("volume", "their volume", room),
                                Key.optional("density", "their density", liquid))),
                Key.optional("air", "the air inside", room),
                Key.optional(
                        "wall", "the wall's substance", Shape.Keys.of(Key.optional("density", "its density", density))),
                Key.optional("closed", "whether it is sealed", new Shape.YesNo()),
                Key.optional(
                        "water",
                        "the tank's water",
                        Shape.Keys.of(
                                Key.optional(
                                        "temperature",
                                        "its temperature",
                                        amount(Kind.TEMPERATURE, Range.between("0 degC", "40 degC"))),
                                Key.optional("density", "its density, salt and all", liquid))));
    }

    /// Which of the keys go together.
    static List<Shape.Rule> rules() {
        return List.of(
                new Shape.Rule.ExactlyOne(List.of(
                        List.of("outside"),
                        List.of("gained"),
                        List.of("profile"),
                        List.of("diameter", "height", "shape_factor"))),
                new Shape.Rule.ExactlyOne(List.of(List.of("empty_mass"), List.of("whole_mass"))));
    }

    static Shape amount(Kind kind, Range range) {
        return new Shape.Amount(kind, range, Shape.Mark.FIXED);
    }

    static FloatBody read(Given given) {
        double water = readWater(given);
        Optional<Turned> figure = readFigure(given);
        double outside = given.has("outside")
                ? given.si("outside")
                : given.has("gained")
                        ? given.si("gained") / water
                        : figure.map(form -> form.whole().volumeMetres3()).orElse(1e-3);
        double[] liquid = readLiquid(given, figure.isEmpty());
        double half = new Halves(given, outside, water, liquid).kilograms();
        if (given.has("gained")) {
            given.text("jug_water", "the tank's water", "one gram gained is then one gram of lift");
        }
        boolean weighedWhole = given.has("whole_mass");
        if (weighedWhole && !given.has("contents")) {
            Parts parts = new Parts.Unknown(given.findSi("air"));
            return new FloatBody(water, outside, figure, given.si("whole_mass"), parts, half);
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
        Parts.Known parts = readParts(given, outside, empty, liquid, closed);
        double whole = empty + contents + parts.floodedMetres3() * water;
        return new FloatBody(water, outside, figure, whole, parts, half);
    }

    private static double readWater(Given given) {
        String why = "room-temperature tap water; salt counts: give its density";
        if (!given.has("water")) {
            return ofWater(given.assume("water.temperature", "20 degC", why));
        }
        Given water = given.map("water");
        if (water.has("density")) {
            return water.si("density");
        }
        return ofWater(water.si("temperature", "20 degC", why));
    }

    /// Density of fresh water at a temperature that the question takes, 0 to 40 degC.
    static double ofWater(double kelvin) {
        return Water.densityKilogramsPerMetre3(kelvin).find().orElseThrow();
    }

    private static Optional<Turned> readFigure(Given given) {
        if (given.has("profile")) {
            return readProfile(given);
        }
        if (!given.has("diameter")) {
            return Optional.empty();
        }
        double radius = given.si("diameter") / 2 * Math.sqrt(given.si("shape_factor"));
        return Optional.of(Turned.cylinder(radius, given.si("height")));
    }

    private static Optional<Turned> readProfile(Given given) {
        List<Turned.Ring> rings = new ArrayList<>();
        for (List<Double> row : given.rows("profile")) {
            rings.add(new Turned.Ring(row.get(0), row.get(1)));
        }
        boolean hole = rings.getFirst().heightMetres() != 0;
        for (int i = 1; i < rings.size() - 1; i++) {
            hole |= rings.get(i).radiusMetres() == 0;
        }
        double height = rings.getLast().heightMetres() - rings.getFirst().heightMetres();
        boolean thin = rings.stream().allMatch(ring -> ring.radiusMetres() == 0) || height == 0;
        if (hole || thin) {
            given.refuse(
                    "profile",
                    "P-ASK-52",
                    hole ? "a profile with a hole" : "a profile without volume",
                    "rings from 0 mm up, with a radius everywhere between the ends",
                    "Measure the diameter at each height where the outline bends, from the base to the top.");
            return Optional.empty();
        }
        return Optional.of(new Turned(rings));
    }

    private static double[] readLiquid(Given given, boolean formless) {
        if (!given.has("contents")) {
            if (given.has("empty_mass")) {
                given.assume("contents.volume", "0 ml", "nothing was said to be in it" + (formless ? "" : " but air"));
            }
            return new double[] {0, 1000};
        }
        Given contents = given.map("contents");
        double density = contents.si(
                "density", "1 g/ml", "about water, as a sugar-free drink; a sugared one has about 1.04: weigh 100 ml");
        return new double[] {contents.si("volume"), density};
    }

    private static Parts.Known readParts(Given given, double outside, double empty, double[] liquid, boolean closed) {
        String why = "aluminium; steel has 7.85, glass 2.5, PET 1.38, paper about 0.8";
        double density = given.has("wall")
                ? given.map("wall").si("density", "2.7 g/ml", why)
                : given.assume("wall.density", "2.7 g/ml", why);
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

    /// Lift less weight, kilograms; positive floats.
    double netKilograms() {
        return waterKilogramsPerMetre3 * outsideMetres3 - wholeKilograms;
    }

    double netNewtons() {
        return netKilograms() * Water.GRAVITY_METRES_PER_SECOND2;
    }

    /// The body with what moves in it; empty where form or contents aren't known. The wall is taken as evenly thick.
    Optional<Vessel> findVessel() {
        if (figure.isEmpty() || !(parts instanceof Parts.Known known)) {
            return Optional.empty();
        }
        double cavity = known.liquidMetres3() + known.airMetres3() + known.floodedMetres3();
        double liquid = known.liquidMetres3() + known.floodedMetres3();
        double density = liquid > 0
                ? (known.liquidMetres3() * known.liquidKilogramsPerMetre3()
                                + known.floodedMetres3() * waterKilogramsPerMetre3)
                        / liquid
                : waterKilogramsPerMetre3;
        return Optional.of(Vessel.evenWalled(figure.get(), known.emptyKilograms(), cavity, liquid, density));
    }

    /// What each ± does to lift less weight, to first order.
    private static final class Halves {
        private double squares;

        private Halves(Given given, double outside, double water, double[] liquid) {
            add(given, "outside", water);
            add(given, "gained", 1);
            add(given, "empty_mass", 1);
            add(given, "whole_mass", 1);
            if (given.has("diameter")) {
                add(given, "diameter", 2 * outside * water / given.si("diameter"));
                add(given, "height", outside * water / given.si("height"));
                add(given, "shape_factor", outside * water / given.si("shape_factor"));
            }
            if (given.has("contents") && given.has("empty_mass")) {
                add(given.map("contents"), "volume", liquid[1]);
                add(given.map("contents"), "density", liquid[0]);
            }
            if (given.has("water") && given.map("water").has("density")) {
                add(given.map("water"), "density", given.has("gained") ? 0 : outside);
            }
        }

        private void add(Given given, String key, double slope) {
            if (given.has(key)) {
                double half = slope * given.quantity(key).halfWidthSi();
                squares += half * half;
            }
        }

        private double kilograms() {
            return Math.sqrt(squares);
        }
    }
}
