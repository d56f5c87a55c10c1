package plumeline.ask.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import plumeline.answer.Value;
import plumeline.colour.Chromaticity;
import plumeline.colour.Difference;
import plumeline.colour.Lab;
import plumeline.colour.Metamers;
import plumeline.colour.SmoothSpectrum;
import plumeline.colour.Spectrum;
import plumeline.colour.Xyz;

/// What `label` finds: a surface's colour under a light.
final class LabelColour {
    /// By how much of its own power a light's waves are tried.
    private static final double STEP = 0.1;

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
    /// @param under the daylight under which its colour is known
    record Surface(Spectrum share, Known known, Spectrum under) {}

    /// What is asked.
    ///
    /// @param surface the surface
    /// @param light the light on it
    /// @param white what eye or camera takes for white
    record Inputs(Surface surface, SceneLight light, Chromaticity white) {
        boolean isExact() {
            return surface.known == Known.SPECTRUM && light.spectrum().isPresent();
        }
    }

    /// A colour with what is said of it.
    ///
    /// @param xyz its tristimulus values; Y of a white card under the light is 1
    /// @param white what eye or camera takes for white
    /// @param before the surface's own colour in daylight, D65
    record Colour(Xyz xyz, Chromaticity white, Lab before) {
        Lab lab() {
            return Lab.of(xyz, white);
        }

        double difference() {
            return Difference.ciede2000(before, lab());
        }
    }

    /// A colour as one thing that isn't known moves it.
    ///
    /// @param less moved one way
    /// @param more moved the other way
    /// @param times how much farther than that it may be off
    record Doubt(Colour less, Colour more, double times) {}

    /// What was found.
    ///
    /// @param colour the colour
    /// @param doubts what isn't known of it
    record Found(Colour colour, List<Doubt> doubts) {
        /// The middle 80 % of a value: what each doubt does to it, added as a root sum of squares.
        Value.Spread spread(String unit, ToDoubleFunction<Colour> value) {
            double here = value.applyAsDouble(colour);
            double down = 0;
            double up = 0;
            for (Doubt doubt : doubts) {
                double less = doubt.times * (value.applyAsDouble(doubt.less) - here);
                double more = doubt.times * (value.applyAsDouble(doubt.more) - here);
                down = Math.hypot(down, Math.min(0, Math.min(less, more)));
                up = Math.hypot(up, Math.max(0, Math.max(less, more)));
            }
            return new Value.Spread(here, unit, here - down, here + up);
        }
    }

    static Found answer(Inputs inputs) {
        Spectrum share = inputs.surface().share();
        Spectrum light = inputs.light()
                .spectrum()
                .or(() -> SmoothSpectrum.findLight(inputs.light().colour()))
                .orElseThrow();
        Lab before = Lab.of(Daylights.D65.xyz(share), Chromaticity.D65);
        List<Doubt> doubts = new ArrayList<>();
        if (inputs.surface().known() == Known.COLOUR) {
            for (Spectrum wave : Metamers.ofSurface(share, inputs.surface().under())) {
                doubts.add(new Doubt(
                        new Colour(light.xyz(share.plus(wave, -1)), inputs.white(), before),
                        new Colour(light.xyz(share.plus(wave, 1)), inputs.white(), before),
                        1));
            }
        }
        if (inputs.light().spectrum().isEmpty()) {
            for (Spectrum wave : Metamers.ofLight(light)) {
                doubts.add(new Doubt(
                        new Colour(light.plus(wave, -STEP).xyz(share), inputs.white(), before),
                        new Colour(light.plus(wave, STEP).xyz(share), inputs.white(), before),
                        Metamers.LIGHT_DEPTH / STEP));
            }
        }
        return new Found(new Colour(light.xyz(share), inputs.white(), before), doubts);
    }
}
