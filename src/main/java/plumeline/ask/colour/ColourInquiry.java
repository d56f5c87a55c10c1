package plumeline.ask.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Draft;
import plumeline.answer.Draft.Criterion;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.ask.colour.Mixing.By;
import plumeline.ask.colour.Mixing.Emitter;
import plumeline.ask.colour.Mixing.Want;
import plumeline.colour.Chromaticity;
import plumeline.colour.Mixture;
import plumeline.colour.Planck;
import plumeline.colour.SpectralLocus;
import plumeline.colour.Srgb;
import plumeline.colour.TypicalLamp;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;

/// The question `colour` in text.
final class ColourInquiry implements Inquiry<Mixing.Inputs> {
    private static final List<Emitter> TYPICAL = IntStream.range(0, TypicalLamp.NAMES.size())
            .mapToObj(i -> new Emitter(TypicalLamp.NAMES.get(i), TypicalLamp.PRIMARIES.get(i), Optional.empty()))
            .toList();

    private static final String EXAMPLE = """
        # colour: which drive gives which colour, as bright as the lamp can. Here the opposite hue of a teal label.
        colour: "#2a9d8f"            # in quotes; or xy such as [0.26, 0.35]; or kelvin such as 5600 K
        want: complement             # match (default), complement, or white of so many kelvin
        # by: lab                    # opposite in CIE LCh(ab) (default), luv, rgb (a screen's), or wavelength
        emitters:                    # x, y (or peak: 625 nm, width: 20 nm) and lumens at full drive, by the data sheet
          - {name: red, x: 0.700, y: 0.299, lumens: 300 lm}
          - {name: green, x: 0.170, y: 0.700, lumens: 600 lm}
          - {name: blue, x: 0.140, y: 0.050, lumens: 90 lm}
          - {name: white, x: 0.330, y: 0.340, lumens: 1000 lm}
        # primaries: typical         # in place of emitters, where nothing is known of the lamp
        # against: 5600 K            # the other white: by how many mireds it differs
        """;

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
        return Shape.Keys.of(
                        Key.optional("emitters", "the lamp's emitters", Emitters.shape()),
                        Key.optional("primaries", "a lamp of unknown make", new Shape.Choice(List.of("typical"))),
                        Key.required("colour", "the colour: \"#rrggbb\", [x, y] or kelvin", Asked.ANY)
                                .hint("\"#2a9d8f\" in quotes, [0.31, 0.33] or 5600 K", ""),
                        Key.optional(
                                "want",
                                "that colour, its opposite hue, or white",
                                new Shape.Choice(List.of("match", "complement", "white"))),
                        Key.optional(
                                "by",
                                "in what a complement's hue is opposite",
                                new Shape.Choice(List.of("lab", "luv", "rgb", "wavelength"))),
                        Key.optional("against", "the white to compare with", Asked.KELVIN))
                .with(new Shape.Rule.AtMostOne(List.of("emitters", "primaries")));
    }

    @Override
    public Mixing.Inputs read(Given given) {
        List<Emitter> emitters = given.has("emitters") ? Emitters.read(given, "emitters") : TYPICAL;
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
        By by = want == Want.COMPLEMENT ? by(given) : By.LAB;
        if (want != Want.COMPLEMENT && given.has("by")) {
            given.refuse(
                    "by",
                    "P-ASK-95",
                    given.text("by"),
                    "left out where no complement is wanted",
                    "Try want: complement.");
        }
        Chromaticity colour = Asked.light(given, "colour", asked);
        return new Mixing.Inputs(
                emitters,
                asked,
                want,
                by,
                want == Want.COMPLEMENT ? complement(given, asked, by, colour) : colour,
                against(given));
    }

    private static By by(Given given) {
        return switch (given.text("by", "lab", "the opposite hue in CIE LCh(ab), nearest to what an eye sees so")) {
            case "luv" -> By.LUV;
            case "rgb" -> By.RGB;
            case "wavelength" -> By.WAVELENGTH;
            default -> By.LAB;
        };
    }

    private static OptionalDouble against(Given given) {
        OptionalDouble kelvin = given.findSi("against");
        return kelvin.isPresent()
                ? OptionalDouble.of(Math.clamp(kelvin.getAsDouble(), Planck.LEAST_KELVIN, Planck.MOST_KELVIN))
                : kelvin;
    }

    private static Chromaticity complement(Given given, Asked asked, By by, Chromaticity colour) {
        return switch (by) {
            case LAB -> inLab(given, asked, colour);
            case LUV -> colour.opposite(Chromaticity.D65);
            case RGB -> onScreen(given, asked, colour);
            case WAVELENGTH -> SpectralLocus.complement(colour, Chromaticity.D65);
        };
    }

    private static Chromaticity inLab(Given given, Asked asked, Chromaticity colour) {
        Optional<Chromaticity> complement =
                asked.lab().complement().toXyz(Chromaticity.D65).findChromaticity();
        if (complement.isEmpty() && asked.findColour().isPresent()) {
            given.refuse(
                    "colour",
                    "P-ASK-93",
                    given.isList("colour") ? "one of such chroma" : given.text("colour"),
                    "a colour whose complement, as light and as saturated, has a place among colours",
                    asked instanceof Asked.Screen
                            ? "Dark colours so saturated have none: try the same hue as bright as it gets, \""
                                    + Srgb.findBrightest(colour)
                                            .map(Srgb::toHex)
                                            .orElse("#ffffff") + "\"."
                            : "Try a paler colour.");
        }
        return complement.orElse(colour);
    }

    private static Chromaticity onScreen(Given given, Asked asked, Chromaticity colour) {
        Optional<Srgb> code = asked.findScreen();
        if (code.isEmpty()) {
            given.refuse(
                    "colour",
                    "P-ASK-96",
                    MixingWords.xy(colour),
                    "a colour that a screen has (sRGB) where its opposite is by rgb",
                    "Try a paler colour, or by: luv.");
        }
        return code.flatMap(each -> each.opposite().toXyz().findChromaticity()).orElse(colour);
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
        if (found.inputs().by() == By.WAVELENGTH) {
            Chromaticity asked = found.inputs().asked().findColour().orElse(Chromaticity.D65);
            items.add(wavelength("dominant_wavelength", SpectralLocus.find(asked, Chromaticity.D65)));
            items.add(wavelength("complementary_wavelength", SpectralLocus.findOpposite(asked, Chromaticity.D65)));
        }
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

    private static Item wavelength(String name, Optional<SpectralLocus.Edge> edge) {
        return edge.orElse(null) instanceof SpectralLocus.Edge.Wavelength(var _, double metres)
                ? Item.of(name, metres * 1e9, "nm")
                : Item.word(name, "none");
    }
}
