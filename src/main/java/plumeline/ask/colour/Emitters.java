package plumeline.ask.colour;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plumeline.answer.Given;
import plumeline.ask.colour.Mixing.Emitter;
import plumeline.colour.Primary;
import plumeline.colour.Spectrum;
import plumeline.quantity.Kind;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;

/// A lamp's emitters as questions list them: each by its colour, its peak or its spectrum.
final class Emitters {
    private static final int LONGEST_NAME = 40;
    private static final int MOST_EMITTERS = 20;
    private static final double LEAST_LUMENS = 0.01;

    private static final List<Key> KEYS = List.of(
            Key.optional("name", "its name", new Shape.Free(LONGEST_NAME)),
            Key.optional("x", "x of its colour, CIE 1931", Asked.X),
            Key.optional("y", "y of its colour, CIE 1931", Asked.Y),
            Key.optional(
                            "peak",
                            "in place of x and y the wavelength at which an LED without phosphor is strongest",
                            new Shape.Amount(Kind.LENGTH, Range.between("400 nm", "700 nm"), Shape.Mark.FIXED))
                    .hint("what the data sheet says, such as 625 nm", ""),
            Key.optional(
                            "width",
                            "the peak's full width at half its height",
                            new Shape.Amount(Kind.LENGTH, Range.between("3 nm", "200 nm"), Shape.Mark.FIXED))
                    .hint("what the data sheet says, such as 20 nm", ""),
            Key.optional("spectrum", "in place of both what a spectrometer read", Wavelengths.LIGHT),
            Key.required(
                    "lumens",
                    "its light at full drive",
                    new Shape.Amount(Kind.FLUX, Range.between("0.01 lm", "10000000 lm"), Shape.Mark.FIXED)));

    private static final Key DRIVE = Key.optional(
            "drive",
            "how far it is driven",
            new Shape.Amount(Kind.SHARE, Range.between("0 %", "100 %"), Shape.Mark.FIXED));

    private Emitters() {}

    /// A list of emitters.
    static Shape shape() {
        return items(KEYS);
    }

    /// A list of emitters, each with its drive.
    static Shape driven() {
        List<Key> keys = new ArrayList<>(KEYS);
        keys.add(DRIVE);
        return items(keys);
    }

    private static Shape items(List<Key> keys) {
        Shape emitter = new Shape.Keys(
                keys,
                List.of(
                        new Shape.Rule.ExactlyOne(List.of(List.of("x", "y"), List.of("peak"), List.of("spectrum"))),
                        new Shape.Rule.Needs("width", "peak")));
        return new Shape.Items(emitter, 1, MOST_EMITTERS);
    }

    /// Reads the list.
    static List<Emitter> read(Given given, String key) {
        List<Emitter> emitters = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (Given each : given.maps(key)) {
            String name = each.text("name", Integer.toString(emitters.size() + 1), "its place in the list")
                    .strip()
                    .replaceAll("\\s+", "_");
            if (!names.add(name)) {
                each.refuse("name", "P-ASK-94", name + " again", "a name of its own", "Try " + name + "_2.");
            }
            emitters.add(emitter(each, name));
        }
        return emitters;
    }

    private static Emitter emitter(Given given, String name) {
        double lumens = Math.max(LEAST_LUMENS, given.si("lumens"));
        if (given.has("x")) {
            return new Emitter(
                    name, new Primary(Asked.place(given, "x", given.si("x"), given.si("y")), lumens), Optional.empty());
        }
        Spectrum spectrum = given.has("peak")
                ? Spectrum.peak(
                        given.si("peak"),
                        Math.max(
                                Spectrum.LEAST_WIDTH_METRES,
                                given.si("width", "20 nm", "usual of red and blue LEDs; green ones have some 30 nm")))
                : Wavelengths.light(given, "spectrum");
        return new Emitter(
                name, new Primary(spectrum.xyz().findChromaticity().orElseThrow(), lumens), Optional.of(spectrum));
    }
}
