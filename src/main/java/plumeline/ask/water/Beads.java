package plumeline.ask.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Course;
import plumeline.answer.Draft;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.quantity.Kind;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;
import plumeline.water.ContactAngles;
import plumeline.water.Drops;
import plumeline.water.Figure;
import plumeline.water.Glycerine;
import plumeline.water.MoistAir;
import plumeline.water.Solution;
import plumeline.water.Surface;
import plumeline.water.Water;

/// Whether droplets stay on a product: the question `beads`, in plain SI numbers and in text.
public final class Beads {
    private static final double ZERO_CELSIUS_KELVIN = 273.15;

    private static final Course WHOLE = new Course.Whole();

    /// Base diameter of the drop whose drying is told.
    private static final double DRYING_METRES = 2e-3;

    /// A draught of 0.1 m/s about halves a drop's life; one that cools itself on a poor conductor lasts up to double.
    private static final double DRAUGHT = 0.5;

    private static final double SELF_COOLED = 2;

    /// The middle of the factors that hold a drop.
    private static final double HOLD = (Drops.LEAST_HOLD + Drops.MOST_HOLD) / 2;

    private Beads() {}

    /// A value with the ends of its middle 80 %.
    ///
    /// @param value the value, SI
    /// @param low low end, SI
    /// @param high high end, SI
    public record Span(double value, double low, double high) {
        /// Gives a value that is exact.
        ///
        /// @param value the value, SI
        /// @return it
        public static Span of(double value) {
            return new Span(value, value, value);
        }

        private Span at(double other) {
            return new Span(other, low, high);
        }
    }

    /// What is asked.
    ///
    /// @param advancingRadians contact angle at which a drop's edge creeps out, radians
    /// @param recedingRadians contact angle at which it draws back, radians
    /// @param tiltRadians the surface's tilt from level, radians, 0 to π/2
    /// @param glycerineShare glycerine by volume, fraction of one
    /// @param airKelvin the air's and the drop's temperature, K: 0 to 40 degC, with glycerine 15 to 30 degC
    /// @param humidityShare the air's relative humidity, fraction of one, above 0
    public record Inputs(
            Span advancingRadians,
            Span recedingRadians,
            Span tiltRadians,
            Span glycerineShare,
            Span airKelvin,
            Span humidityShare) {
        private static final int MOVED = 5;

        /// The same with one of the first five at an end.
        private Inputs moved(int index, End end) {
            List<Span> all =
                    new ArrayList<>(List.of(advancingRadians, recedingRadians, tiltRadians, glycerineShare, airKelvin));
            all.set(index, end.of(all.get(index)));
            return new Inputs(all.get(0), all.get(1), all.get(2), all.get(3), all.get(4), humidityShare);
        }

        private ContactAngles angles() {
            double advancing = Math.clamp(advancingRadians.value, 0, Math.PI);
            return new ContactAngles(advancing, Math.clamp(recedingRadians.value, 0, advancing));
        }

        private MoistAir air() {
            return new MoistAir(airKelvin.value, Math.clamp(humidityShare.value, 1e-6, 1));
        }

        private Solution mix() {
            return Solution.ofGlycerineByVolume(Math.clamp(glycerineShare.value, 0, 1));
        }

        private boolean isWater() {
            return glycerineShare.value == 0;
        }
    }

    private enum End {
        LOW,
        HIGH;

        private Span of(Span span) {
            return span.at(this == LOW ? span.low : span.high);
        }
    }

    /// What was found.
    ///
    /// @param inputs what was asked
    /// @param stay how large a drop stays, at the middle factor
    /// @param lowMetres low end of that diameter's middle 80 %, m; the diameter itself where the law ends
    /// @param highMetres high end, from which drops run, m
    /// @param drying time in which a drop of water with a base of 2 mm dries, s; unknown where it doesn't
    public record Found(Inputs inputs, Drops.Stay stay, double lowMetres, double highMetres, Figure drying) {}

    /// Answers.
    ///
    /// @param inputs what is asked
    /// @return what was found
    public static Found answer(Inputs inputs) {
        Drops.Stay stay = stay(inputs, HOLD);
        double middle = diameter(stay);
        double below = square(Math.min(0, diameter(stay(inputs, Drops.LEAST_HOLD)) - middle));
        double above = square(Math.max(0, diameter(stay(inputs, Drops.MOST_HOLD)) - middle));
        if (stay instanceof Drops.Stay.UpTo) {
            for (int i = 0; i < Inputs.MOVED; i++) {
                double one = change(inputs.moved(i, End.LOW), middle);
                double other = change(inputs.moved(i, End.HIGH), middle);
                below += square(Math.min(0, Math.min(one, other)));
                above += square(Math.max(0, Math.max(one, other)));
            }
        }
        double low = Math.max(0, middle - Math.sqrt(below));
        Figure drying = inputs.isWater()
                ? Drops.dryingSeconds(DRYING_METRES, inputs.angles().meanRadians(), inputs.air())
                : new Figure.Unknown(Figure.Measure.MASS_SHARE, inputs.mix().massShare(), 0, 0);
        return new Found(inputs, stay, low, middle + Math.sqrt(above), drying);
    }

    private static double square(double value) {
        return value * value;
    }

    /// By how much the diameter changes; not at all where a moved input leaves no beads.
    private static double change(Inputs moved, double middle) {
        return switch (stay(moved, HOLD)) {
            case Drops.Stay.UpTo(double diameter) -> diameter - middle;
            case Drops.Stay.PastCaps(double diameter) -> diameter - middle;
            case Drops.Stay.Every(), Drops.Stay.NoBeads(double _) -> 0;
        };
    }

    private static double diameter(Drops.Stay stay) {
        return switch (stay) {
            case Drops.Stay.UpTo(double diameter) -> diameter;
            case Drops.Stay.PastCaps(double diameter) -> diameter;
            case Drops.Stay.Every(), Drops.Stay.NoBeads(double _) -> 0;
        };
    }

    private static Drops.Stay stay(Inputs inputs, double hold) {
        double tilt = Math.clamp(inputs.tiltRadians.value, 0, Math.PI / 2);
        return Drops.largestStaying(liquid(inputs), inputs.angles(), tilt, hold);
    }

    private static Drops.Liquid liquid(Inputs inputs) {
        double least = inputs.isWater() ? 0 : 15;
        double most = inputs.isWater() ? 40 : 30;
        double kelvin = Math.clamp(inputs.airKelvin.value, ZERO_CELSIUS_KELVIN + least, ZERO_CELSIUS_KELVIN + most);
        return inputs.isWater()
                ? new Drops.Liquid(
                        known(Water.densityKilogramsPerMetre3(kelvin)),
                        known(Water.surfaceTensionNewtonsPerMetre(kelvin)))
                : new Drops.Liquid(
                        known(inputs.mix().densityKilogramsPerMetre3(kelvin)),
                        known(Glycerine.surfaceTensionNewtonsPerMetre(inputs.mix(), kelvin)));
    }

    private static double known(Figure figure) {
        return figure.find().orElseThrow();
    }

    /// The question in text.
    static final class Asked implements Inquiry<Inputs> {
        private static final String EXAMPLE = """
            # beads: do droplets stay, and how long. Every field has a default.
            surface: lacquer        # or glass, clean glass, metal, paint, wax, pet, polypropylene, polyethylene,
                                    # acrylic, polycarbonate, ptfe, silicone; or {advancing: 80 deg, receding: 50 deg}
            tilt: 90 deg            # of the surface from level; default upright
            liquid: {glycerine: 0 %}                   # by volume; default water
            air: {temperature: 20 degC, humidity: 50 %}
            """;

        @Override
        public String name() {
            return "beads";
        }

        @Override
        public String asks() {
            return "whether droplets stay on a product, and how long";
        }

        @Override
        public String example() {
            return EXAMPLE;
        }

        @Override
        public Shape shape() {
            List<String> words = new ArrayList<>();
            for (Surface each : Surface.values()) {
                words.add(each.word());
            }
            Shape angle = amount(Kind.ANGLE, Range.between("0 deg", "180 deg"));
            Shape angles = Shape.Keys.of(
                    Key.required("advancing", "angle inside a growing drop", angle)
                            .hint("the angle inside a drop that is fed until its edge creeps out, such as 80 deg", ""),
                    Key.required("receding", "angle inside a shrinking drop", angle)
                            .hint(
                                    "the angle inside a drop that is drawn off until its edge moves, such as 50 deg",
                                    ""));
            return Shape.Keys.of(
                    Key.optional("surface", "the surface", Shape.AnyOf.of(Shape.Choice.inAnyCase(words), angles))
                            .hint(
                                    "a name, or photograph a growing and a shrinking drop from the side and give {"
                                            + "advancing: 80 deg, receding: 50 deg}",
                                    ""),
                    Key.optional(
                            "tilt",
                            "the surface's tilt from level",
                            amount(Kind.ANGLE, Range.between("0 deg", "90 deg"))),
                    Key.optional(
                            "liquid",
                            "what the drops are of",
                            Shape.Keys.of(Key.optional(
                                    "glycerine",
                                    "glycerine by volume, the rest water",
                                    amount(Kind.SHARE, Range.between("0 %", "100 %"))))),
                    Key.optional(
                            "air",
                            "the air round it",
                            Shape.Keys.of(
                                    Key.optional(
                                            "temperature",
                                            "its temperature",
                                            Sweat.Asked.temperature("0 degC", "40 degC")),
                                    Key.optional(
                                            "humidity",
                                            "its relative humidity",
                                            amount(Kind.SHARE, Range.above("0 %", "100 %"))))));
        }

        private static Shape amount(Kind kind, Range range) {
            return new Shape.Amount(kind, range, Shape.Mark.FIXED);
        }

        @Override
        public Inputs read(Given given) {
            Span tilt = span(given, "tilt", "90 deg", "an upright side");
            Optional<Given> liquid = given.findMap("liquid");
            Span glycerine = liquid.isPresent()
                    ? span(liquid.get(), "glycerine", "0 %", "water alone")
                    : Span.of(given.assume("liquid.glycerine", "0 %", "water alone"));
            Optional<Given> air = given.findMap("air");
            String warm = "a usual room; lamps warm it";
            String damp = "a usual room; measure it, dry air dries drops faster";
            Span kelvin = air.isPresent()
                    ? span(air.get(), "temperature", "20 degC", warm)
                    : Span.of(given.assume("air.temperature", "20 degC", warm));
            Span humidity = air.isPresent()
                    ? span(air.get(), "humidity", "50 %", damp)
                    : Span.of(given.assume("air.humidity", "50 %", damp));
            double celsius = kelvin.value - ZERO_CELSIUS_KELVIN;
            if (glycerine.value > 0 && (celsius < 15 - 1e-9 || celsius > 30 + 1e-9) && air.isPresent()) {
                air.get()
                        .refuse(
                                "temperature",
                                "P-ASK-31",
                                Print.number(celsius, 1) + " degC",
                                "from 15 degC to 30 degC with glycerine",
                                "Measure where the drops sit; past that its mixes aren't known here.");
            }
            Span[] angles = readAngles(given);
            return new Inputs(angles[0], angles[1], tilt, glycerine, kelvin, humidity);
        }

        private static Span[] readAngles(Given given) {
            if (!given.isMap("surface")) {
                String word =
                        given.text("surface", Surface.LACQUER.word(), "a drink can; name it or measure its angles");
                Surface surface = Surface.find(word).orElseThrow();
                return new Span[] {
                    new Span(
                            surface.usual().advancingRadians(),
                            surface.low().advancingRadians(),
                            surface.high().advancingRadians()),
                    new Span(
                            surface.usual().recedingRadians(),
                            surface.low().recedingRadians(),
                            surface.high().recedingRadians())
                };
            }
            Given map = given.map("surface");
            Span advancing = span(map, "advancing");
            Span receding = span(map, "receding");
            if (receding.value > advancing.value) {
                map.refuse(
                        "receding",
                        "P-ASK-32",
                        Print.degrees(receding.value),
                        "at most the advancing angle, " + Print.degrees(advancing.value),
                        "Measure again: the angle is larger while a drop grows than while it shrinks.");
            }
            return new Span[] {advancing, receding};
        }

        private static Span span(Given given, String key, String otherwise, String why) {
            return given.has(key) ? span(given, key) : Span.of(given.si(key, otherwise, why));
        }

        private static Span span(Given given, String key) {
            Quantity quantity = given.quantity(key);
            double half = quantity.eightyHalfWidthSi();
            return new Span(quantity.si(), quantity.si() - half, quantity.si() + half);
        }

        @Override
        public double[] settle(Inputs inputs, PaperUnit unit) {
            return new double[] {Beads.answer(inputs).highMetres};
        }

        @Override
        public Draft answer(Inputs inputs, double[] settled, Words words) {
            Found found = Beads.answer(inputs);
            return draft(found, settled[0], new BeadsWords(found, words).notes());
        }

        /// Intervals are in the answer already: they hold the law's own and a surface's, not only the inputs'. Where
        /// drops run from is an end of one, so that it has none itself.
        @Override
        public Draft vary(Inputs moved, double[] settled) {
            return draft(Beads.answer(moved), settled[0], Notes.NONE);
        }

        private static Draft draft(Found found, double runsFromMetres, Notes notes) {
            boolean none = found.stay instanceof Drops.Stay.NoBeads || found.stay instanceof Drops.Stay.PastCaps;
            List<Item> items = new ArrayList<>();
            switch (found.stay) {
                case Drops.Stay.UpTo(double metres) -> {
                    double low = found.lowMetres * 1e3;
                    double high = found.highMetres * 1e3;
                    items.add(new Item("largest_staying", new Value.Spread(metres * 1e3, "mm", low, high))
                            .following(WHOLE));
                    items.add(Item.millimetres("runs_from", runsFromMetres));
                }
                case Drops.Stay.Every() -> {
                    items.add(Item.word("largest_staying", "endless"));
                    items.add(Item.word("runs_from", "endless"));
                }
                case Drops.Stay.PastCaps(double _), Drops.Stay.NoBeads(double _) -> {
                    items.add(Item.word("largest_staying", "unknown"));
                    items.add(Item.word("runs_from", "unknown"));
                }
            }
            items.add(new Item("dries_in", drying(found)).following(WHOLE));
            return new Draft(items, List.of(), none ? Verdict.UNKNOWN : Verdict.HOLDS, notes);
        }

        private static Value drying(Found found) {
            if (found.stay instanceof Drops.Stay.NoBeads) {
                return new Value.Word("unknown");
            }
            OptionalDouble seconds = found.drying.find();
            if (seconds.isEmpty()) {
                return new Value.Word("never");
            }
            double minutes = seconds.getAsDouble() / 60;
            return new Value.Spread(minutes, "min", minutes * DRAUGHT, minutes * SELF_COOLED);
        }
    }
}
