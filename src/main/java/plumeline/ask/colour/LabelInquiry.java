package plumeline.ask.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Draft;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.ask.colour.LabelColour.Colour;
import plumeline.ask.colour.LabelColour.Found;
import plumeline.ask.colour.LabelColour.Inputs;
import plumeline.ask.colour.LabelColour.Known;
import plumeline.ask.colour.LabelColour.Surface;
import plumeline.colour.Chromaticity;
import plumeline.colour.Lab;
import plumeline.colour.SmoothSpectrum;
import plumeline.colour.Spectrum;
import plumeline.colour.Srgb;
import plumeline.colour.Xyz;
import plumeline.quantity.Kind;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;

/// The question `label` in text.
final class LabelInquiry implements Inquiry<Inputs> {
    private static final String EXAMPLE = """
        # How a label's colour comes out under coloured light (the question label). Here a teal one under an orange mix.
        label: "#2a9d8f"          # in quotes; or {lab: [58, -33, -2], under: D50}; best is what a spectrometer read:
                                  # {reflectance: [[400 nm, 12 %], [450 nm, 25 %], [500 nm, 41 %], ... [700 nm, 9 %]]}
        light:                    # or kelvin, xy, {daylight: 6500 K}, {spectrum: [[400 nm, 0.2], ...]}
          emitters:               # peak and width as data sheets tell, or x and y; in place of each drive the
                                  # light may have one mixed_to: "#ff9040", the brightest mix of that colour
            - {name: red, peak: 625 nm, width: 20 nm, lumens: 300 lm, drive: 100 %}
            - {name: green, peak: 525 nm, width: 32 nm, lumens: 600 lm, drive: 25 %}
            - {name: blue, peak: 460 nm, width: 22 nm, lumens: 90 lm, drive: 5 %}
        # white: light            # what camera or eye takes for white: kelvin, xy or the light; default D65
        """;

    private static final Shape LIGHTNESS = new Shape.Amount(Kind.NUMBER, Range.between("0", "100"), Shape.Mark.FIXED);
    private static final Shape OPPONENT = new Shape.Amount(Kind.NUMBER, Range.between("-200", "200"), Shape.Mark.FIXED);

    @Override
    public String name() {
        return "label";
    }

    @Override
    public String asks() {
        return "how a label's colour comes out under a light";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Shape shape() {
        Shape map = Shape.Keys.of(
                        Key.optional(
                                "lab",
                                "its colour in CIELAB",
                                new Shape.Tuple(
                                        List.of(
                                                new Shape.Part("L*", LIGHTNESS),
                                                new Shape.Part("a*", OPPONENT),
                                                new Shape.Part("b*", OPPONENT)),
                                        3)),
                        Key.optional(
                                "under", "the daylight it was measured by", new Shape.Choice(List.of("D50", "D65"))),
                        Key.optional("reflectance", "its share of each wavelength", Wavelengths.SURFACE))
                .with(
                        new Shape.Rule.ExactlyOne(List.of(List.of("lab"), List.of("reflectance"))),
                        new Shape.Rule.Needs("under", "lab"));
        return Shape.Keys.of(
                Key.required("label", "the label's colour", Shape.AnyOf.of(Asked.SCREEN, map))
                        .hint("\"#2a9d8f\" in quotes, or {lab: [58, -33, -2]}", ""),
                Key.required("light", "the light on it", SceneLight.shape())
                        .hint("5600 K, [0.31, 0.33] or a map of emitters", ""),
                Key.optional(
                        "white",
                        "what camera or eye takes for white",
                        Shape.AnyOf.of(new Shape.Choice(List.of("D65", "light")), Asked.WHITE)));
    }

    @Override
    public Inputs read(Given given) {
        SceneLight light = SceneLight.read(given, "light");
        return new Inputs(surface(given), stand(given, light), white(given, light));
    }

    /// A light of which only the colour is known, refused where none stands for it.
    private static SceneLight stand(Given given, SceneLight light) {
        if (light.spectrum().isPresent()
                || SmoothSpectrum.findLight(light.colour()).isPresent()) {
            return light;
        }
        given.refuse(
                "light",
                "P-ASK-97",
                MixingWords.xy(light.colour()) + ", as pure as a single wavelength",
                "a colour for which a spectrum can stand",
                "Give the emitters with peak and width.");
        return new SceneLight(Chromaticity.D65, Optional.of(Daylights.D65), SceneLight.Known.DAYLIGHT);
    }

    private static Chromaticity white(Given given, SceneLight light) {
        String word = given.isList("white")
                ? ""
                : given.text("white", "D65", "a camera or an eye that doesn't follow the light, as in colour");
        return switch (word) {
            case "D65" -> Chromaticity.D65;
            case "light" -> light.colour();
            default -> Asked.light(given, "white", Asked.read(given, "white"));
        };
    }

    private static Surface surface(Given given) {
        if (!given.isMap("label")) {
            Xyz colour = Srgb.find(given.text("label")).orElseThrow().toXyz();
            return surface(given, colour, Chromaticity.D65, Daylights.D65);
        }
        Given map = given.map("label");
        if (map.has("reflectance")) {
            return new Surface(Wavelengths.surface(map, "reflectance"), Known.SPECTRUM, Daylights.D65);
        }
        List<Double> lab = map.list("lab");
        Lab colour = new Lab(lab.get(0), lab.get(1), lab.get(2));
        boolean d50 =
                map.text("under", "D50", "as prints are measured (ISO 13655)").equals("D50");
        Chromaticity white = d50 ? Daylights.D50_COLOUR : Chromaticity.D65;
        return surface(given, colour.toXyz(white), white, d50 ? Daylights.D50 : Daylights.D65);
    }

    private static Surface surface(Given given, Xyz colour, Chromaticity white, Spectrum light) {
        Optional<Spectrum> smooth = SmoothSpectrum.findSurface(colour, white, light);
        if (smooth.isEmpty()) {
            given.refuse(
                    "label",
                    "P-ASK-98",
                    "a colour so bright and pure, or so dark",
                    "a colour that a surface can have",
                    "No paint throws back that much of so little: read the values again.");
        }
        return new Surface(smooth.orElse(Spectrum.of(_ -> 0.5)), Known.COLOUR, light);
    }

    @Override
    public Draft answer(Inputs inputs, double[] settled, Words words) {
        Found found = LabelColour.answer(inputs);
        return draft(found, LabelWords.notes(inputs, found));
    }

    @Override
    public Draft vary(Inputs moved, double[] settled) {
        return draft(LabelColour.answer(moved), Notes.NONE);
    }

    private static Draft draft(Found found, Notes notes) {
        List<Item> items = new ArrayList<>();
        items.add(item("x", "1", found, each -> chromaticity(each, found).x()));
        items.add(item("y", "1", found, each -> chromaticity(each, found).y()));
        items.add(item("luminance", "%", found, each -> 100 * each.xyz().y()).atLeast(0));
        items.add(item("l", "1", found, each -> each.lab().l()));
        items.add(item("a", "1", found, each -> each.lab().a()));
        items.add(item("b", "1", found, each -> each.lab().b()));
        items.add(item("difference", "1", found, Colour::difference).atLeast(0));
        return new Draft(items, List.of(), Verdict.HOLDS, notes);
    }

    /// What is so dark that it has no colour keeps the one it was moved from.
    private static Chromaticity chromaticity(Colour there, Found found) {
        return there.xyz()
                .findChromaticity()
                .or(() -> found.colour().xyz().findChromaticity())
                .orElse(Chromaticity.D65);
    }

    private static Item item(String name, String unit, Found found, ToDoubleFunction<Colour> value) {
        return found.doubts().isEmpty()
                ? Item.of(name, value.applyAsDouble(found.colour()), unit)
                : new Item(name, found.spread(unit, value));
    }
}
