package plumeline.ask.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.answer.Given;
import plumeline.ask.colour.Mixing.Emitter;
import plumeline.colour.Chromaticity;
import plumeline.colour.Daylight;
import plumeline.colour.Mixture;
import plumeline.colour.Planck;
import plumeline.colour.Primary;
import plumeline.colour.SpectralLocus;
import plumeline.colour.Spectrum;
import plumeline.colour.Xyz;
import plumeline.quantity.Kind;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;

/// The light of a scene as questions write it.
///
/// @param colour its colour
/// @param spectrum its power at each wavelength; empty where only its colour is known
/// @param known how it was given
record SceneLight(Chromaticity colour, Optional<Spectrum> spectrum, Known known) {
    /// What is known of a light.
    enum Known {
        /// A glowing body's, by its temperature.
        GLOWING("taken as a glowing body's; an LED of that colour temperature has another spectrum"),
        /// A phase of daylight.
        DAYLIGHT("daylight by the CIE's rule"),
        /// Peaks of emitters or a measured table.
        BANDS("the sum of what its emitters' peaks or tables give"),
        /// Nothing but its colour.
        COLOUR("only its colour is known, so the smoothest spectrum of that colour stands for it");

        private final String said;

        Known(String said) {
            this.said = said;
        }

        /// As a sentence ends.
        String said() {
            return said;
        }
    }

    static Shape shape() {
        Shape map = Shape.Keys.of(
                        Key.optional("emitters", "a lamp's emitters, each with its drive", Emitters.driven()),
                        Key.optional("mixed_to", "the colour to which they are mixed, in place of drives", Asked.ANY),
                        Key.optional(
                                "daylight",
                                "the sky's light of a colour temperature",
                                new Shape.Amount(
                                        Kind.COLOUR_TEMPERATURE, Range.between("4000 K", "25000 K"), Shape.Mark.FIXED)),
                        Key.optional("spectrum", "what a spectrometer read", Wavelengths.LIGHT))
                .with(
                        new Shape.Rule.ExactlyOne(
                                List.of(List.of("emitters"), List.of("daylight"), List.of("spectrum"))),
                        new Shape.Rule.Needs("mixed_to", "emitters"));
        return Shape.AnyOf.of(Asked.ANY, map);
    }

    /// Reads it.
    ///
    /// @param key a key that must be there, of this shape
    static SceneLight read(Given given, String key) {
        if (given.isMap(key)) {
            return of(given.map(key));
        }
        return switch (Asked.read(given, key)) {
            case Asked.Body(double kelvin) ->
                new SceneLight(Planck.chromaticity(kelvin), Optional.of(Planck.spectrum(kelvin)), Known.GLOWING);
            case Asked.Screen screen -> ofColour(given, key, Asked.light(given, key, screen));
            case Asked.Place(Chromaticity colour) -> ofColour(given, key, colour);
        };
    }

    private static SceneLight ofColour(Given given, String key, Chromaticity colour) {
        if (SpectralLocus.purity(colour, Chromaticity.D65) <= 1) {
            return new SceneLight(colour, Optional.empty(), Known.COLOUR);
        }
        given.refuse(
                key,
                "P-ASK-97",
                MixingWords.xy(colour),
                "a colour that light can have",
                "It lies beyond the spectrum's single wavelengths: read x and y again.");
        return new SceneLight(Chromaticity.D65, Optional.empty(), Known.COLOUR);
    }

    private static SceneLight of(Given given) {
        if (given.has("daylight")) {
            double kelvin = Math.clamp(given.si("daylight"), 4000, 25_000);
            return new SceneLight(
                    Daylight.chromaticity(kelvin), Optional.of(Daylight.spectrum(kelvin)), Known.DAYLIGHT);
        }
        if (given.has("spectrum")) {
            Spectrum light = Wavelengths.light(given, "spectrum");
            return new SceneLight(light.xyz().findChromaticity().orElseThrow(), Optional.of(light), Known.BANDS);
        }
        return mixed(given);
    }

    private static SceneLight mixed(Given given) {
        List<Emitter> emitters = Emitters.read(given, "emitters");
        List<Double> drives = drives(given, emitters);
        Xyz light = Xyz.DARK;
        Optional<Spectrum> spectrum = Optional.of(Spectrum.of(_ -> 0));
        for (int i = 0; i < emitters.size(); i++) {
            Primary each = emitters.get(i).primary();
            double lumens = each.lumens() * drives.get(i);
            light = light.plus(each.colour().at(1), lumens);
            Optional<Spectrum> own = emitters.get(i).spectrum();
            spectrum = lumens == 0
                    ? spectrum
                    : spectrum.flatMap(sum ->
                            own.map(more -> sum.plus(more, lumens / more.xyz().y())));
        }
        Optional<Chromaticity> colour = light.findChromaticity();
        if (colour.isEmpty()) {
            given.refuse("emitters", "P-ASK-99", "every drive at 0", "a light that is seen", "Drive one of them.");
            return new SceneLight(Chromaticity.D65, Optional.empty(), Known.COLOUR);
        }
        return spectrum.isPresent()
                ? new SceneLight(colour.get(), spectrum, Known.BANDS)
                : ofColour(given, "emitters", colour.get());
    }

    private static List<Double> drives(Given given, List<Emitter> emitters) {
        if (given.has("mixed_to")) {
            for (Given each : given.maps("emitters")) {
                if (each.has("drive")) {
                    each.refuse("drive", "P-ASK-29", "a drive", "left out beside mixed_to", "Leave one of both out.");
                }
            }
            Chromaticity wanted = Asked.light(given, "mixed_to", Asked.read(given, "mixed_to"));
            return Mixture.brightest(emitters.stream().map(Emitter::primary).toList(), wanted)
                    .drives();
        }
        List<Double> drives = new ArrayList<>();
        for (Given each : given.maps("emitters")) {
            drives.add(each.si("drive", "100 %", "as bright as it can"));
        }
        return drives;
    }
}
