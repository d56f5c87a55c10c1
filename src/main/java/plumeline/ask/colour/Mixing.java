package plumeline.ask.colour;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.colour.Chromaticity;
import plumeline.colour.Mixture;
import plumeline.colour.Primary;
import plumeline.colour.Spectrum;
import plumeline.colour.White;

/// What `colour` finds: the brightest mixture of a colour.
final class Mixing {
    private Mixing() {}

    /// What is wanted of the colour that is named.
    enum Want {
        MATCH,
        COMPLEMENT,
        WHITE
    }

    /// In what a complement's hue is opposite.
    enum By {
        /// CIE LCh(ab).
        LAB,
        /// CIE LCh(uv).
        LUV,
        /// A screen's red, green and blue: HSL and HSV alike.
        RGB,
        /// The CIE 1931 diagram: across the white, by the complementary wavelength.
        WAVELENGTH
    }

    /// An emitter.
    ///
    /// @param name its name, as an answer's name ends
    /// @param primary its colour and light
    /// @param spectrum its power at each wavelength; empty where only its colour is known
    record Emitter(String name, Primary primary, Optional<Spectrum> spectrum) {}

    /// What is asked.
    ///
    /// @param emitters the lamp's emitters, at least one
    /// @param asked the colour as it was written
    /// @param want what is wanted of it
    /// @param by in what a complement's hue is opposite
    /// @param wanted the colour wanted of it
    /// @param againstKelvin the white to compare with, K; empty where none was named
    record Inputs(
            List<Emitter> emitters, Asked asked, Want want, By by, Chromaticity wanted, OptionalDouble againstKelvin) {
        Inputs {
            emitters = List.copyOf(emitters);
        }

        List<Primary> primaries() {
            return emitters.stream().map(Emitter::primary).toList();
        }
    }

    /// What was found.
    ///
    /// @param inputs what was asked
    /// @param mixture the brightest mixture of the colour, or of the nearest
    /// @param white the white that it is; empty where it is none
    record Found(Inputs inputs, Mixture mixture, Optional<White> white) {
        /// The shift from the white to compare with, 1/MK; empty where there are not two whites.
        OptionalDouble findMiredShift() {
            return inputs.againstKelvin.isPresent() && white.isPresent()
                    ? OptionalDouble.of(White.miredShift(
                            inputs.againstKelvin.getAsDouble(), white.get().kelvin()))
                    : OptionalDouble.empty();
        }
    }

    static Found answer(Inputs inputs) {
        Mixture mixture = Mixture.brightest(inputs.primaries(), inputs.wanted);
        return new Found(inputs, mixture, White.find(mixture.colour()));
    }
}
