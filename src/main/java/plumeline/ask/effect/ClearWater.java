package plumeline.ask.effect;

import java.util.ArrayList;
import java.util.List;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Course;
import plumeline.answer.Draft;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.ink.Clarity;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;

/// The question `clear-water`: when must the water be changed. Typed: [plumeline.ink.Clarity].
final class ClearWater implements Inquiry<ClearWater.Inputs> {
    /// A picture's largest value.
    private static final double MOST_VALUE = 255;

    /// From here on a picture is white, however bright what it shows.
    private static final double WHITE_VALUE = 254;

    /// What changes a share by less than this helps nothing.
    private static final double HELPS_SHARE = 0.02;

    private static final String EXAMPLE = """
        # clear-water: when must the water be changed, and how much of it. Ink is taken to mix with all of it.
        tank_volume: 60 l
        ink_per_take: 5 ml
        strength: 30 /cm           # decadic absorbance of neat ink, worst colour channel; or jar, to find it:
        # jar: {ink: 1 ml, water: 1 l, path: 80 mm, clean: 220, inked: 120}
        #   one jar clean, one inked, a white sheet behind; phone with exposure and white locked; read the
        #   colour channel that falls most, 0 to 255, in the middle of each jar. path: the way through it
        sight_path: 150 mm         # from front glass to what must be seen
        least_clear: 95 %          # of the light, worst channel; default 95 %
        """;

    /// Whether the ink's strength is known.
    sealed interface Strength {
        /// It is.
        ///
        /// @param perMetre decadic, 1/m
        /// @param isWhite whether it was read against a clean jar that is white in its picture, and so may be
        /// more
        record Known(double perMetre, boolean isWhite) implements Strength {}

        /// Nobody measured it.
        record Unknown() implements Strength {}
    }

    /// What is asked.
    record Inputs(double tankMetres3, double inkMetres3, Strength strength, double pathMetres, double leastShare) {}

    @Override
    public String name() {
        return "clear-water";
    }

    @Override
    public String asks() {
        return "when the tank's water must be changed";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Shape shape() {
        Shape value = new Shape.Amount(Kind.NUMBER, Range.between("1", "255"), Shape.Mark.FIXED);
        Shape jar = Shape.Keys.of(
                Key.required("ink", "ink in the jar", amount(Kind.VOLUME, "0.001 ml", "1 l")),
                Key.required("water", "water in the jar", amount(Kind.VOLUME, "1 ml", "100 l")),
                Key.required("path", "the way through the jar", amount(Kind.LENGTH, "1 mm", "1 m")),
                Key.required("clean", "picture's value through the clean jar, 0 to 255", value),
                Key.required("inked", "picture's value through the inked jar, 0 to 255", value));
        return Shape.Keys.of(
                        Key.required("tank_volume", "water in the tank", amount(Kind.VOLUME, "0.1 l", "10000 l"))
                                .hint("inside length × width × depth of water, such as 60 l", ""),
                        Key.required("ink_per_take", "ink a take", amount(Kind.VOLUME, "0.01 ml", "10 l")),
                        Key.optional(
                                "strength",
                                "decadic absorbance of neat ink, worst colour channel",
                                amount(Kind.ABSORBANCE, "0.0001 /cm", "100000 /cm")),
                        Key.optional("jar", "a jar and a phone, to find the strength", jar),
                        Key.required(
                                "sight_path",
                                "through the water to what must be seen",
                                amount(Kind.LENGTH, "1 mm", "10 m")),
                        Key.optional("least_clear", "light that must be left", amount(Kind.SHARE, "1 %", "99.9 %")))
                .with(new Shape.Rule.AtMostOne(List.of("strength", "jar")));
    }

    private static Shape amount(Kind kind, String low, String high) {
        return new Shape.Amount(kind, Range.between(low, high), Shape.Mark.FIXED);
    }

    @Override
    public Inputs read(Given given) {
        return new Inputs(
                given.si("tank_volume"),
                given.si("ink_per_take"),
                strength(given),
                given.si("sight_path"),
                Math.clamp(given.si("least_clear", "95 %", "a loss that a grade hides"), 0.01, 0.9999));
    }

    private static Strength strength(Given given) {
        if (given.has("strength")) {
            return new Strength.Known(given.si("strength"), false);
        }
        if (!given.has("jar")) {
            return new Strength.Unknown();
        }
        Given jar = given.map("jar");
        double clean = Clarity.linear(jar.si("clean") / MOST_VALUE);
        double inked = Clarity.linear(jar.si("inked") / MOST_VALUE);
        double share = inked / clean;
        if (!(share > 0.02 && share < 0.95)) {
            jar.refuse(
                    "inked",
                    "P-ASK-75",
                    Print.number(jar.si("inked"), 0) + ", " + Print.share(share, 0) + " of the clean jar's light",
                    "from 2 % to 95 % of the light",
                    share < 0.5 ? "Thin it: a tenth of the ink." : "Add ink, or look through a longer jar.");
            return new Strength.Unknown();
        }
        double ink = jar.si("ink");
        return new Strength.Known(
                Clarity.strengthPerMetre(share, jar.si("path"), ink / (ink + jar.si("water"))),
                jar.si("clean") >= WHITE_VALUE);
    }

    @Override
    public Draft answer(Inputs inputs, double[] settled, Words words) {
        return draft(inputs, notes(inputs));
    }

    @Override
    public Draft vary(Inputs moved, double[] settled) {
        return draft(moved, Notes.NONE);
    }

    private static Draft draft(Inputs inputs, Notes notes) {
        return switch (inputs.strength) {
            case Strength.Known(double perMetre, boolean _) -> {
                Clarity clarity = new Clarity(perMetre, inputs.pathMetres, inputs.tankMetres3);
                yield new Draft(
                        List.of(
                                Item.of("clear_after_1", 100 * clarity.clearShare(inputs.inkMetres3), "%"),
                                Item.of("takes_before_change", clarity.takes(inputs.inkMetres3, inputs.leastShare), "1")
                                        .following(new Course.Jumping()),
                                Item.of(
                                        "change_fraction",
                                        100 * clarity.changeShare(inputs.inkMetres3, inputs.leastShare),
                                        "%")),
                        List.of(),
                        Verdict.HOLDS,
                        notes);
            }
            case Strength.Unknown() ->
                new Draft(
                        List.of(
                                Item.word("clear_after_1", "unknown"),
                                Item.word("takes_before_change", "unknown"),
                                Item.word("change_fraction", "unknown")),
                        List.of(),
                        Verdict.UNKNOWN,
                        notes);
        };
    }

    private static Notes notes(Inputs inputs) {
        List<String> because = new ArrayList<>();
        List<String> attempts = new ArrayList<>();
        switch (inputs.strength) {
            case Strength.Known known -> sayKnown(inputs, known, because, attempts);
            case Strength.Unknown() -> sayUnknown(because, attempts);
        }
        return new Notes(
                because,
                attempts,
                List.of(
                        "Water and mains: plugs, leads and pumps off the floor; siphon with lamps and pumps unplugged.",
                        "A full bucket weighs 10 kg: two people, short ways; a wet floor is slippery."),
                List.of("Beer–Lambert, decadic; a jar's picture by the sRGB curve"));
    }

    private static void sayKnown(Inputs inputs, Strength.Known known, List<String> because, List<String> attempts) {
        double perMetre = known.perMetre();
        Clarity clarity = new Clarity(perMetre, inputs.pathMetres, inputs.tankMetres3);
        double most = clarity.mostInkMetres3(inputs.leastShare) * 1e6;
        because.add("Strength " + Print.number(perMetre / 100, perMetre < 1000 ? 2 : 0) + " /cm, worst channel: "
                + Words.share(inputs.leastShare) + " of the light is left with " + Print.number(most, most < 10 ? 1 : 0)
                + " ml of ink in all the water.");
        because.add("takes_before_change counts takes that begin clear enough, the first in clean water;"
                + " change_fraction is the share of the water to change after every take so that each"
                + " does, however many follow.");
        because.add(
                "Ink is taken as mixed with all the water. Before it has mixed it hangs in clouds: stir, then wait.");
        if (known.isWhite()) {
            because.add("The clean jar is white in its picture, 254 or more of 255: more light than that isn't seen, so"
                    + " the ink may be stronger and the water less clear than this.");
            attempts.add("Photograph both jars again, darker, exposure and white locked: the clean one at about 220.");
        }
        double all = clarity.changeShare(inputs.inkMetres3, inputs.leastShare);
        double half = clarity.changeShare(inputs.inkMetres3 / 2, inputs.leastShare);
        if (all - half >= HELPS_SHARE) {
            attempts.add(
                    "Half the ink a take needs " + Words.share(half) + " changed instead of " + Words.share(all) + ".");
        }
        Clarity nearer = new Clarity(perMetre, inputs.pathMetres / 2, inputs.tankMetres3);
        double far = clarity.clearShare(inputs.inkMetres3);
        double near = nearer.clearShare(inputs.inkMetres3);
        if (near - far >= HELPS_SHARE) {
            attempts.add("With half the sight path (the product nearer the front glass) " + Words.share(near)
                    + " is left after one take instead of " + Words.share(far) + ".");
        }
    }

    private static void sayUnknown(List<String> because, List<String> attempts) {
        because.add("How strong an ink is can't be guessed: inks differ by a hundred times.");
        attempts.add(
                "Measure it: two like jars of water, 1 ml of ink a litre stirred into one, a white sheet behind, even"
                        + " light.");
        attempts.add(
                "Photograph both at once with a phone, exposure and white locked; read the colour channel that falls"
                        + " most, 0 to 255, in the middle of each.");
        attempts.add(
                "Give jar: {ink: 1 ml, water: 1 l, path: (the way through), clean: (value), inked: (value)}. Black:"
                        + " thin it ten times more.");
    }
}
