package plumeline.ask.colour;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Draft;
import plumeline.answer.Draft.Criterion;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.ask.colour.Mixing.Emitter;
import plumeline.ask.colour.Mixing.Want;
import plumeline.colour.Chromaticity;
import plumeline.colour.Mixture;
import plumeline.colour.Planck;
import plumeline.colour.Primary;
import plumeline.colour.Srgb;
import plumeline.quantity.Kind;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;

/// The question `colour` in text.
final class ColourInquiry implements Inquiry<Mixing.Inputs> {
    private static final int LONGEST_NAME = 40;
    private static final int MOST_EMITTERS = 20;
    private static final double LEAST_LUMENS = 0.01;

    private static final List<Emitter> TYPICAL = List.of(
            typical("red", 0.700, 0.299, 300),
            typical("green", 0.170, 0.700, 600),
            typical("blue", 0.140, 0.050, 90),
            typical("white", 0.330, 0.340, 1000));

    private static final String EXAMPLE = """
        # colour: which drive gives which colour, as bright as the lamp can. Here the opposite hue of a teal label.
        colour: "#2a9d8f"            # in quotes; or xy such as [0.26, 0.35]; or kelvin such as 5600 K
        want: complement             # match (default), complement, or white of so many kelvin
        emitters:                    # x, y and lumens of each at full drive, from the lamp's data sheet
          - {name: red, x: 0.700, y: 0.299, lumens: 300 lm}
          - {name: green, x: 0.170, y: 0.700, lumens: 600 lm}
          - {name: blue, x: 0.140, y: 0.050, lumens: 90 lm}
          - {name: white, x: 0.330, y: 0.340, lumens: 1000 lm}
        # primaries: typical         # in place of emitters, where nothing is known of the lamp
        # against: 5600 K            # the other white: by how many mireds it differs
        """;

    private static Emitter typical(String name, double x, double y, double lumens) {
        return new Emitter(name, new Primary(Chromaticity.ofXy(x, y), lumens));
    }

    @Override
    public String name() {
        return "colour";
    }

    @Override
    public String asks() {
        return "which drive of a lamp's emitters gives which colour";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Shape shape() {
        Shape emitter = Shape.Keys.of(
                Key.optional("name", "its name", new Shape.Free(LONGEST_NAME)),
                Key.required("x", "x of its colour, CIE 1931", Asked.X),
                Key.required("y", "y of its colour, CIE 1931", Asked.Y),
                Key.required(
                        "lumens",
                        "its light at full drive",
                        new Shape.Amount(Kind.FLUX, Range.between("0.01 lm", "10000000 lm"), Shape.Mark.FIXED)));
        return Shape.Keys.of(
                        Key.optional("emitters", "the lamp's emitters", new Shape.Items(emitter, 1, MOST_EMITTERS)),
                        Key.optional("primaries", "a lamp of unknown make", new Shape.Choice(List.of("typical"))),
                        Key.required("colour", "the colour: \"#rrggbb\", [x, y] or kelvin", Asked.ANY)
                                .hint("\"#2a9d8f\" in quotes, [0.31, 0.33] or 5600 K", ""),
                        Key.optional(
                                "want",
                                "that colour, its opposite hue, or white",
                                new Shape.Choice(List.of("match", "complement", "white"))),
                        Key.optional("against", "the white to compare with", Asked.KELVIN))
                .with(new Shape.Rule.AtMostOne(List.of("emitters", "primaries")));
    }

    @Override
    public Mixing.Inputs read(Given given) {
        List<Emitter> emitters = given.has("emitters") ? emitters(given) : TYPICAL;
        if (!given.has("emitters")) {
            given.text("primaries", "typical", "no emitters were given");
            given.text(
                    "emitters",
                    MixingWords.listed(TYPICAL),
                    "usual of such emitters (common practice), so the drives are a start: the lamp's data sheet or"
                            + " a colour meter knows its own");
        }
        Asked asked = Asked.read(given, "colour");
        Want want = switch (given.text("want", "match", "nothing else was asked for")) {
            case "complement" -> Want.COMPLEMENT;
            case "white" -> Want.WHITE;
            default -> Want.MATCH;
        };
        if (want == Want.WHITE && !(asked instanceof Asked.Body)) {
            given.refuse(
                    "colour",
                    "P-ASK-91",
                    "no temperature",
                    "a temperature in kelvin where white is wanted",
                    "Try 5600 K, or want: match.");
        }
        return new Mixing.Inputs(
                emitters,
                asked,
                want,
                want == Want.COMPLEMENT ? complement(given, asked) : colour(given, asked),
                against(given));
    }

    private static OptionalDouble against(Given given) {
        OptionalDouble kelvin = given.findSi("against");
        return kelvin.isPresent()
                ? OptionalDouble.of(Math.clamp(kelvin.getAsDouble(), Planck.LEAST_KELVIN, Planck.MOST_KELVIN))
                : kelvin;
    }

    private static List<Emitter> emitters(Given given) {
        List<Emitter> emitters = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (Given each : given.maps("emitters")) {
            String name = each.text("name", Integer.toString(emitters.size() + 1), "its place in the list")
                    .strip()
                    .replaceAll("\\s+", "_");
            if (!names.add(name)) {
                each.refuse("name", "P-ASK-94", name + " again", "a name of its own", "Try " + name + "_2.");
            }
            emitters.add(new Emitter(
                    name,
                    new Primary(
                            Asked.place(each, "x", each.si("x"), each.si("y")),
                            Math.max(LEAST_LUMENS, each.si("lumens")))));
        }
        return emitters;
    }

    private static Chromaticity colour(Given given, Asked asked) {
        Optional<Chromaticity> colour = asked.findColour();
        if (colour.isEmpty()) {
            given.refuse(
                    "colour",
                    "P-ASK-92",
                    "black",
                    "a colour that a light can have",
                    "Black is every drive at 0; give the colour that the light shall have.");
        }
        return colour.orElse(Chromaticity.D65);
    }

    private static Chromaticity complement(Given given, Asked asked) {
        Chromaticity colour = colour(given, asked);
        Optional<Chromaticity> complement =
                asked.lab().complement().toXyz(Chromaticity.D65).findChromaticity();
        if (complement.isEmpty() && asked.findColour().isPresent()) {
            given.refuse(
                    "colour",
                    "P-ASK-93",
                    given.isList("colour") ? "one of such chroma" : given.text("colour"),
                    "a colour whose complement, as light and as saturated, has a place among colours",
                    asked instanceof Asked.Screen(Srgb code)
                            ? "Dark colours so saturated have none: try the same hue as bright as it gets, \""
                                    + brightest(code) + "\"."
                            : "Try a paler colour.");
        }
        return complement.orElse(colour);
    }

    /// The same chromaticity with its largest part full.
    private static String brightest(Srgb code) {
        Chromaticity colour = code.toXyz().findChromaticity().orElse(Chromaticity.D65);
        double low = 0;
        double high = 1;
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            Srgb there = Srgb.clipped(colour.at(middle));
            boolean full = Math.max(there.red(), Math.max(there.green(), there.blue())) >= 1;
            low = full ? low : middle;
            high = full ? middle : high;
        }
        return Srgb.clipped(colour.at(low)).toHex();
    }

    @Override
    public Draft answer(Mixing.Inputs inputs, double[] settled, Words words) {
        Mixing.Found found = Mixing.answer(inputs);
        return draft(found, new MixingWords(found).notes());
    }

    @Override
    public Draft vary(Mixing.Inputs moved, double[] settled) {
        return draft(Mixing.answer(moved), Notes.NONE);
    }

    private static Draft draft(Mixing.Found found, Notes notes) {
        Mixture mixture = found.mixture();
        List<Emitter> emitters = found.inputs().emitters();
        List<Item> items = new ArrayList<>();
        items.add(Item.of("x", mixture.colour().x(), "1"));
        items.add(Item.of("y", mixture.colour().y(), "1"));
        for (int i = 0; i < emitters.size(); i++) {
            double drive = mixture.drives().get(i);
            Item item = Item.of("drive_" + emitters.get(i).name(), 100 * drive, "%");
            items.add(drive > 0.5 ? item.atMost(100) : item.atLeast(0));
        }
        items.add(Item.of("lumens", mixture.lumens(), "lm").atLeast(0));
        items.add(Item.of("distance_uv", mixture.distance(), "1").atLeast(0));
        items.add(found.white()
                .map(white -> Item.of("kelvin", white.kelvin(), "K"))
                .orElse(Item.word("kelvin", "unknown")));
        items.add(found.white().map(white -> Item.of("duv", white.duv(), "1")).orElse(Item.word("duv", "unknown")));
        boolean compared = found.inputs().againstKelvin().isPresent();
        if (compared) {
            items.add(
                    found.findMiredShift().isPresent()
                            ? Item.of("mired_shift", found.findMiredShift().getAsDouble(), "1/MK")
                            : Item.word("mired_shift", "unknown"));
        }
        return new Draft(
                items,
                List.of(new Criterion("the lamp's reach", mixture.room())),
                compared && found.white().isEmpty() ? Verdict.UNKNOWN : Verdict.HOLDS,
                notes);
    }
}
