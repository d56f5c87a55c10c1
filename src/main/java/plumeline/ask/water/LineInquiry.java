package plumeline.ask.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Course;
import plumeline.answer.Draft;
import plumeline.answer.Draft.Criterion;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Sensor;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.optics.Layer;
import plumeline.optics.LensModel;
import plumeline.optics.Optics;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;
import plumeline.water.Line;
import plumeline.water.Water;

/// The question `line` in text. Typed: [plumeline.water.Line].
final class LineInquiry implements Inquiry<LineInquiry.Asked> {
    private static final double GRAVITY = Water.GRAVITY_METRES_PER_SECOND2;

    /// Pixels that a mask is wider than the line on each side: one for its soft edge, one to be sure (common practice).
    private static final double MASK_EDGE_PIXELS = 2;

    /// What a swing keeps of the one before, of something light in air (common practice; water damps more).
    private static final double KEPT_SHARE = 0.9;

    private static final String EXAMPLE = """
        # line: does the hanging line hold, does it show. Leave out what has a default.
        load: 0.55 kg              # the heaviest it can be: in air, full or flooded; or a force, 5.4 N
        diameter: 0.40 mm          # or strength: 75 N (or 17 lb), as labelled, unknotted; or both
        material: nylon            # or fluorocarbon; default nylon
        knot: 50 %                 # share of the strength that is left at the knot; default 50 %
        between: water             # what lies between lens and line; default air
        length: 0.6 m              # for its swing: from where it is held to the thing's middle
        view:                      # for the width on the picture
          distance: 962 mm         # front principal plane to the line
          focal_length: 100 mm
          sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}
        """;

    /// What is asked.
    ///
    /// @param loadNewtons load
    /// @param strengthNewtons unknotted strength
    /// @param diameterMetres diameter
    /// @param from what was given of the two
    /// @param material what it is made of
    /// @param knotShare share of the strength left at the knot
    /// @param lengthMetres from where it is held to the thing's middle, where that was given
    /// @param view how it is seen
    record Asked(
            double loadNewtons,
            double strengthNewtons,
            double diameterMetres,
            From from,
            Line.Material material,
            double knotShare,
            OptionalDouble lengthMetres,
            View view) {
        double factor() {
            return Line.safetyFactor(strengthNewtons, knotShare, loadNewtons);
        }

        /// The breaking stress: of this line where strength and diameter are known, else the one to plan with.
        double stressPascals() {
            return strengthNewtons / Line.strengthNewtons(diameterMetres, 1);
        }

        double leastDiameterMetres(double stressPascals) {
            return Line.diameterMetres(Line.neededNewtons(loadNewtons, knotShare, Line.LEAST_FACTOR), stressPascals);
        }

        double leastDiameterMetres() {
            return leastDiameterMetres(stressPascals());
        }

        /// The factor of the weakest line of its diameter that charts give; with a label the factor itself.
        double lowFactor() {
            return switch (from) {
                case DIAMETER -> factor() * material.lowPascals() / material.plannedPascals();
                case STRENGTH, BOTH -> factor();
            };
        }
    }

    private enum From {
        DIAMETER,
        STRENGTH,
        BOTH
    }

    /// How it is seen.
    sealed interface View {
        /// Nobody said.
        record Unknown() implements View {}

        /// By a lens from this far.
        record From(double distanceMetres, LensModel lens, Sensor sensor, double index) implements View {
            double pixels(double diameterMetres) {
                return pixels(diameterMetres, index);
            }

            double pixels(double diameterMetres, double waterIndex) {
                double apparentMetres = distanceMetres / waterIndex;
                return diameterMetres * Optics.magnificationAt(lens, apparentMetres) / sensor.pitchMetres();
            }
        }
    }

    @Override
    public String name() {
        return "line";
    }

    @Override
    public String asks() {
        return "whether the hanging line holds, and how wide it shows";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Shape shape() {
        Shape load = Shape.AnyOf.of(amount(Kind.FORCE, "0.0001 N", "1000 N"), amount(Kind.MASS, "0.01 g", "100 kg"));
        Shape strength = Shape.AnyOf.of(amount(Kind.FORCE, "0.1 N", "10000 N"), amount(Kind.MASS, "10 g", "1000 kg"));
        Shape shutter = Shape.AnyOf.of(amount(Kind.ANGLE, "0.1 deg", "360 deg"), amount(Kind.TIME, "0.001 ms", "10 s"));
        Shape view = Shape.Keys.of(
                Key.required("distance", "front principal plane to the line", amount(Kind.LENGTH, "1 mm", "100 m")),
                Key.required("focal_length", "the lens's focal length", amount(Kind.LENGTH, "1 mm", "5 m"))
                        .hint("the value engraved on the lens, such as 50 mm", ""),
                Key.required("sensor", "the part of the sensor that makes the picture", Sensor.shape()),
                Key.optional(
                        "rate", "frame rate; a still line is as wide at any", amount(Kind.RATE, "1 fps", "100000 fps")),
                Key.optional("shutter", "angle or time; a still line is as wide at any", shutter));
        return Shape.Keys.of(
                        Key.required("load", "the heaviest that can hang on it", load),
                        Key.optional("diameter", "the line's diameter", amount(Kind.LENGTH, "0.01 mm", "10 mm")),
                        Key.optional("strength", "as labelled, unknotted; a force or the mass it holds", strength),
                        Key.optional(
                                "material",
                                "what it is made of",
                                Shape.Choice.inAnyCase(List.of("nylon", "fluorocarbon"))),
                        Key.optional(
                                "knot", "share of the strength left at the knot", amount(Kind.SHARE, "1 %", "100 %")),
                        Key.optional("view", "how the line is seen", view),
                        Key.optional(
                                "length",
                                "from where it is held to the thing's middle",
                                amount(Kind.LENGTH, "10 mm", "20 m")),
                        Key.optional(
                                "between",
                                "what lies between lens and line",
                                new Shape.Choice(List.of("air", "water"))))
                .with(new Shape.Rule.AtLeastOne(List.of("diameter", "strength")));
    }

    private static Shape amount(Kind kind, String low, String high) {
        return new Shape.Amount(kind, Range.between(low, high), Shape.Mark.FIXED);
    }

    @Override
    public Asked read(Given given) {
        double load = newtons(given, "load");
        String word = given.text("material", "nylon", "the usual clear line");
        Line.Material material = Line.Material.valueOf(word.toUpperCase(Locale.ROOT));
        From from = !given.has("strength") ? From.DIAMETER : given.has("diameter") ? From.BOTH : From.STRENGTH;
        double diameter;
        double strength;
        if (from == From.DIAMETER) {
            diameter = given.si("diameter");
            strength = Line.strengthNewtons(diameter, material.plannedPascals());
        } else {
            strength = newtons(given, "strength");
            double typical = Line.diameterMetres(strength, material.plannedPascals());
            diameter = given.findSi("diameter").orElse(typical);
            if (from == From.STRENGTH) {
                given.assume(
                        "diameter",
                        Print.number(typical * 1e3, 3) + " mm",
                        "typical for this strength; read the label");
            }
        }
        double knot = given.si("knot", "50 %", "what a plain knot leaves; good ones leave 85 %");
        return new Asked(load, strength, diameter, from, material, knot, given.findSi("length"), readView(given));
    }

    /// A force, or the weight of a mass.
    private static double newtons(Given given, String key) {
        return given.si(key) * (given.quantity(key).kind() == Kind.MASS ? GRAVITY : 1);
    }

    private static View readView(Given given) {
        String between = given.text("between", "air", "a line outside the tank, or a dry set");
        if (!given.has("view")) {
            return new View.Unknown();
        }
        Given view = given.map("view");
        double focalLengthMetres = view.si("focal_length");
        double index = between.equals("water") ? Layer.WATER_INDEX : 1;
        double least = focalLengthMetres * index;
        double distance = view.si("distance");
        if (distance <= least * 1.0001) {
            view.refuse(
                    "distance",
                    "P-ASK-21",
                    Words.MILLIMETRES.length(distance),
                    "more than " + Words.MILLIMETRES.length(least) + " with this lens",
                    "Measure from the lens to the line, such as 900 mm.");
            distance = 2 * least;
        }
        return new View.From(
                distance, LensModel.ofFocalLength(focalLengthMetres), Sensor.read(view.map("sensor")), index);
    }

    @Override
    public Draft answer(Asked inputs, double[] settled, Words words) {
        return draft(
                inputs,
                new Notes(
                        because(inputs),
                        attempts(inputs),
                        cautions(),
                        List.of(
                                "nylon 530 to 780 N/mm² by retail charts, planned with 600; knots, factor: "
                                        + "common practice",
                                "Gaussian lens, docs/derivations/lens.md; through water at its apparent distance")));
    }

    @Override
    public Draft vary(Asked moved, double[] settled) {
        return draft(moved, Notes.NONE);
    }

    private static Draft draft(Asked asked, Notes notes) {
        List<Item> items = new ArrayList<>();
        double low = asked.material().lowPascals() / asked.material().plannedPascals();
        double high = asked.material().highPascals() / asked.material().plannedPascals();
        boolean charted = asked.from() == From.DIAMETER;
        items.add(spread("strength", asked.strengthNewtons(), charted ? low : 1, charted ? high : 1, "N"));
        items.add(spread("safety_factor", asked.factor(), charted ? low : 1, charted ? high : 1, "1"));
        boolean labelled = asked.from() == From.BOTH;
        items.add(spread(
                        "least_diameter",
                        asked.leastDiameterMetres() * 1e3,
                        labelled ? 1 : 1 / Math.sqrt(high),
                        labelled ? 1 : 1 / Math.sqrt(low),
                        "mm")
                .rounded(Item.Rounding.HUNDREDTHS_UP));
        boolean guessed = asked.from() == From.STRENGTH;
        double thin = guessed ? 1 / Math.sqrt(high) : 1;
        double thick = guessed ? 1 / Math.sqrt(low) : 1;
        switch (asked.view()) {
            case View.From view -> {
                double pixels = view.pixels(asked.diameterMetres());
                items.add(spread("width", pixels, thin, thick, "px"));
                items.add(new Item("mask_width", between(mask(pixels), mask(pixels * thin), mask(pixels * thick), "px"))
                        .following(new Course.Jumping()));
            }
            case View.Unknown() -> {
                items.add(Item.word("width", "unknown"));
                items.add(Item.word("mask_width", "unknown"));
            }
        }
        Criterion holds = new Criterion("the safety factor", asked.factor() - Line.LEAST_FACTOR);
        Verdict best = asked.lowFactor() < Line.LEAST_FACTOR ? Verdict.TIGHT : Verdict.NO_OBJECTION_FOUND;
        return new Draft(items, List.of(holds), best, notes);
    }

    /// A value that charts give, with what the lines in them go from and to.
    private static Item spread(String name, double value, double lowShare, double highShare, String unit) {
        return new Item(name, between(value, lowShare * value, highShare * value, unit)).atLeast(0);
    }

    private static Value between(double value, double low, double high, String unit) {
        return low < high ? new Value.Spread(value, unit, low, high) : new Value.Number(value, unit);
    }

    private static double mask(double pixels) {
        return Math.ceil(pixels - 1e-9) + 2 * MASK_EDGE_PIXELS;
    }

    private static List<String> because(Asked asked) {
        List<String> because = new ArrayList<>();
        double left = asked.strengthNewtons() * asked.knotShare();
        because.add("The knot leaves " + Words.share(asked.knotShare()) + ", " + newtons(left) + ", against a load of "
                + newtons(asked.loadNewtons())
                + "; five times the load is wanted. Heaviest is the lift out of the water:"
                + " count it full, in air.");
        if (asked.from() == From.DIAMETER) {
            Line.Material material = asked.material();
            because.add("Labels of such lines say "
                    + newtons(Line.strengthNewtons(asked.diameterMetres(), material.lowPascals()))
                    + " to " + newtons(Line.strengthNewtons(asked.diameterMetres(), material.highPascals()))
                    + ": at the lowest the factor is " + Print.number(asked.lowFactor(), 1)
                    + (asked.lowFactor() < Line.LEAST_FACTOR && asked.factor() >= Line.LEAST_FACTOR
                            ? ", too little"
                            : "")
                    + ". low and high go by these. Read the label and give strength.");
        }
        if (asked.from() == From.STRENGTH) {
            double planned = asked.material().plannedPascals();
            because.add("Lines with that label are "
                    + thick(asked, planned / asked.material().highPascals()) + " to "
                    + thick(asked, planned / asked.material().lowPascals())
                    + " thick; low and high go by these. Measure it and give diameter.");
        }
        switch (asked.view()) {
            case View.Unknown() -> because.add("How wide it shows isn't known without view.");
            case View.From view -> because.add(shows(asked, view));
        }
        because.add(swings(asked));
        return because;
    }

    private static String thick(Asked asked, double share) {
        return Print.number(asked.diameterMetres() * Math.sqrt(share) * 1e3, 2) + " mm";
    }

    /// How it swings, how long to wait, and what two lines do against its turning.
    private static String swings(Asked asked) {
        String turns = " On one line it turns as it likes; two keep its face.";
        if (asked.lengthMetres().isEmpty()) {
            return "It swings in " + swing(0.5) + " on 0.5 m of line, " + swing(2)
                    + " on 2 m, slower in water: wait it out." + turns;
        }
        double metres = asked.lengthMetres().getAsDouble();
        double seconds = Line.swingSeconds(Line.Hung.inAir(1), metres, GRAVITY);
        return "In air it swings there and back in " + swing(metres) + ", slower in water. Where a swing keeps "
                + Words.share(KEPT_SHARE) + " of the one before (watch a few) it is down to a hundredth after "
                + Print.seconds(Line.waitSeconds(seconds, KEPT_SHARE, 0.01), 0) + "." + turns;
    }

    private static String swing(double metres) {
        return Print.seconds(Line.swingSeconds(Line.Hung.inAir(1), metres, GRAVITY), 1);
    }

    private static String shows(Asked asked, View.From view) {
        String wide = Print.number(asked.diameterMetres() * 1e3, 2) + " mm show ";
        double dry = view.pixels(asked.diameterMetres(), 1);
        String sharp =
                " when sharp; wider than 1 px is painted out, by a mask of whole px and 2 more on each side (common"
                        + " practice).";
        if (view.index() == 1) {
            return wide + fine(dry) + sharp;
        }
        return wide + fine(dry) + " with hardly any water before the line, " + fine(view.pixels(asked.diameterMetres()))
                + " with water all the way: the answer is the wider," + sharp;
    }

    private static String fine(double pixels) {
        return Print.number(pixels, 2) + " px";
    }

    private static String newtons(double newtons) {
        return Print.number(newtons, newtons < 1 ? 3 : newtons < 10 ? 1 : 0) + " N";
    }

    private static List<String> attempts(Asked asked) {
        List<String> attempts = new ArrayList<>();
        if (asked.lowFactor() >= Line.LEAST_FACTOR) {
            return attempts;
        }
        double lowShare = asked.lowFactor() / asked.factor();
        double thicker = Math.ceil(asked.leastDiameterMetres() / Math.sqrt(lowShare) * 1e5 - 1e-6) / 1e5;
        double factor = Line.safetyFactor(
                Line.strengthNewtons(thicker, asked.stressPascals() * lowShare),
                asked.knotShare(),
                asked.loadNewtons());
        if (factor >= Line.LEAST_FACTOR) {
            attempts.add("Take " + Print.number(thicker * 1e3, 2) + " mm or thicker of such line.");
        }
        if (asked.lowFactor() * 2 >= Line.LEAST_FACTOR) {
            attempts.add("Hang it on two upright lines that share the load: factor "
                    + Print.number(Math.floor(asked.lowFactor() * 20) / 10, 1) + " while both bear.");
        }
        double knot = 0.85;
        if (asked.knotShare() < knot && asked.lowFactor() * knot / asked.knotShare() >= Line.LEAST_FACTOR) {
            attempts.add("Tie a knot that leaves 85 % and pull a trial piece to the load times five.");
        }
        return attempts;
    }

    private static List<String> cautions() {
        return List.of(
                "Nobody under it, no glass under it; lift it out of the water with a hand beneath.",
                "New line for each set-up: nicks, kinks, lamps and wetness weaken it unseen.");
    }
}
