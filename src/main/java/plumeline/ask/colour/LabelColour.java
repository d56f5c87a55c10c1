package plumeline.ask.colour;

import plumeline.colour.Chromaticity;
import plumeline.colour.Difference;
import plumeline.colour.Lab;
import plumeline.colour.LabDoubt;
import plumeline.colour.SmoothSpectrum;
import plumeline.colour.Spectrum;
import plumeline.colour.Xyz;

/// What `label` finds: a surface's colour under a light.
final class LabelColour {
    private LabelColour() {}

    /// How a surface was given.
    enum Known {
        /// By its share of each wavelength.
        SPECTRUM,
        /// By its colour under daylight, for which a smooth spectrum stands.
        COLOUR
    }

    /// A surface.
    ///
    /// @param share its share of each wavelength
    /// @param known how it was given
    record Surface(Spectrum share, Known known) {}

    /// What is asked.
    ///
    /// @param surface the surface
    /// @param light the light on it
    /// @param white what eye or camera takes for white
    record Inputs(Surface surface, SceneLight light, Chromaticity white) {
        LabDoubt doubt() {
            return surface.known == Known.COLOUR ? light.doubtOfSurface() : light.doubt();
        }
    }

    /// A colour with what is said of it.
    ///
    /// @param colour its tristimulus values; Y of a white card under the light is 1
    /// @param white what eye or camera takes for white
    /// @param before the surface's own colour in daylight, D65
    record Found(Xyz colour, Chromaticity white, Lab before) {
        Lab lab() {
            return Lab.of(colour, white);
        }

        double difference() {
            return Difference.ciede2000(before, lab());
        }

        /// The same, off by a part of what isn't known.
        ///
        /// @param l by how much of L*
        /// @param a of a*
        /// @param b of b*
        Found moved(double l, double a, double b) {
            Lab there = Lab.of(colour, Chromaticity.D65);
            Lab moved = new Lab(Math.max(0, there.l() + l), there.a() + a, there.b() + b);
            return new Found(moved.toXyz(Chromaticity.D65), white, before);
        }
    }

    static Found answer(Inputs inputs) {
        Spectrum light = inputs.light()
                .spectrum()
                .or(() -> SmoothSpectrum.findLight(inputs.light().colour()))
                .orElseThrow();
        Xyz colour = light.xyz(inputs.surface().share());
        Lab before = Lab.of(Daylights.D65.xyz(inputs.surface().share()), Chromaticity.D65);
        return new Found(colour, inputs.white(), before);
    }
}
