package plumeline.ask.colour;

import java.util.List;
import java.util.Optional;
import plumeline.answer.Given;
import plumeline.colour.Chromaticity;
import plumeline.colour.Lab;
import plumeline.colour.Planck;
import plumeline.colour.Srgb;
import plumeline.colour.Xyz;
import plumeline.quantity.Kind;
import plumeline.text.Range;
import plumeline.text.Shape;

/// A colour as a question writes it.
sealed interface Asked {
    /// A screen's colour: `"#2a9d8f"`.
    record Screen(Srgb code) implements Asked {}

    /// A place in the CIE 1931 diagram: `[0.31, 0.33]`.
    record Place(Chromaticity colour) implements Asked {}

    /// A glowing body of so many kelvin: `5600 K`.
    record Body(double kelvin) implements Asked {}

    /// The least y that is taken; no emitter has less.
    double LEAST_Y = 1e-5;

    Shape X = new Shape.Amount(Kind.NUMBER, Range.between("0", "1"), Shape.Mark.FIXED);

    Shape Y = new Shape.Amount(Kind.NUMBER, Range.between("0.00001", "1"), Shape.Mark.FIXED);

    Shape KELVIN = new Shape.Amount(Kind.COLOUR_TEMPERATURE, Range.between("1000 K", "100000 K"), Shape.Mark.FIXED);

    Shape XY = new Shape.Tuple(List.of(new Shape.Part("x", X), new Shape.Part("y", Y)), 2);

    Shape WHITE = Shape.AnyOf.of(KELVIN, XY);

    Shape SCREEN = new Shape.Written("#[0-9a-fA-F]{6}", "a colour in quotes", "\"#2a9d8f\"");

    Shape ANY = Shape.AnyOf.of(SCREEN, KELVIN, XY);

    /// Reads a colour.
    ///
    /// @param given the map it stands in
    /// @param key a key that must be there, of one of these shapes
    static Asked read(Given given, String key) {
        if (given.isList(key)) {
            List<Double> xy = given.list(key);
            return new Place(place(given, key, xy.get(0), xy.get(1)));
        }
        Optional<Srgb> code = Srgb.find(given.text(key));
        if (code.isPresent()) {
            return new Screen(code.get());
        }
        return new Body(Math.clamp(given.si(key), Planck.LEAST_KELVIN, Planck.MOST_KELVIN));
    }

    /// A place in the CIE 1931 diagram; refused where no light can be.
    ///
    /// @param key the key at which it is refused
    static Chromaticity place(Given given, String key, double x, double y) {
        if (x >= 0 && y >= LEAST_Y && x + y <= 1 + 1e-9) {
            return Chromaticity.ofXy(x, Math.min(y, 1 - x));
        }
        given.refuse(
                key,
                "P-ASK-90",
                "[" + x + ", " + y + "], together " + (float) (x + y),
                "x and y of the CIE 1931 diagram, whose sum is 1 at most",
                "Take both from the same line of a data sheet, or off a colour meter set to x, y.");
        return Chromaticity.D65;
    }

    /// The colour itself; empty of black.
    default Optional<Chromaticity> findColour() {
        return switch (this) {
            case Screen(Srgb code) -> code.toXyz().findChromaticity();
            case Place(Chromaticity colour) -> Optional.of(colour);
            case Body(double kelvin) -> Optional.of(Planck.chromaticity(kelvin));
        };
    }

    /// The colour of a light that is asked; refused of black.
    ///
    /// @param key the key at which it is refused
    static Chromaticity light(Given given, String key, Asked asked) {
        Optional<Chromaticity> colour = asked.findColour();
        if (colour.isEmpty()) {
            given.refuse(
                    key,
                    "P-ASK-92",
                    "black",
                    "a colour that a light can have",
                    "Black is every drive at 0; give the colour that the light shall have.");
        }
        return colour.orElse(Chromaticity.D65);
    }

    /// The colour as a screen has it, as bright as it gets where only its chromaticity was given; empty where sRGB
    /// doesn't hold it.
    default Optional<Srgb> findScreen() {
        return this instanceof Screen(Srgb code)
                ? Optional.of(code)
                : findColour().flatMap(Srgb::findBrightest);
    }

    /// The colour as CIELAB under D65, as light as it was written; at L* 100 where only its chromaticity was.
    default Lab lab() {
        Xyz light = switch (this) {
            case Screen(Srgb code) -> code.toXyz();
            case Place(Chromaticity colour) -> colour.at(1);
            case Body(double kelvin) -> Planck.chromaticity(kelvin).at(1);
        };
        return Lab.of(light, Chromaticity.D65);
    }
}
