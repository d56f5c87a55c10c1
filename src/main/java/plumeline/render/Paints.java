package plumeline.render;

import java.util.Optional;
import plumeline.colour.Chromaticity;
import plumeline.colour.Lab;
import plumeline.colour.Primaries;
import plumeline.colour.Rgb;
import plumeline.colour.Srgb;
import plumeline.colour.Xyz;
import plumeline.plan.Written;
import plumeline.quantity.Quantity;

/// What surfaces send back, as the plan has it: a `colour`, else a `hue`, else grey; `reflects` says how much.
final class Paints {
    /// What a surface of which nobody says anything sends back.
    static final double GREY = 0.5;

    /// White paper; common practice.
    static final double PAPER = 0.8;

    /// What is black all the same: matte lacquer, black cloth. Common practice.
    static final double DARK = 0.04;

    /// A mid colour: nearly every hue of it is within a screen's colours.
    private static final double HUE_L = 60;

    private static final double HUE_CHROMA = 40;

    private Paints() {}

    static Rgb grey(double share) {
        return new Rgb(share, share, share);
    }

    /// Finds the colour that keys give.
    ///
    /// @param keys `colour`, `hue`
    /// @return its channels under daylight; empty where neither is written
    static Optional<Rgb> findColour(Written keys) {
        Optional<Rgb> code = keys.findWord("colour").flatMap(Srgb::find).map(srgb -> rgb(srgb.toXyz()));
        return code.or(() -> keys.findQuantity("hue").map(Quantity::si).map(Paints::ofHue));
    }

    private static Rgb ofHue(double radians) {
        Lab lab = new Lab(HUE_L, HUE_CHROMA * Math.cos(radians), HUE_CHROMA * Math.sin(radians));
        return rgb(lab.toXyz(Chromaticity.D65));
    }

    private static Rgb rgb(Xyz colour) {
        Rgb rgb = Primaries.REC_709.toRgb(colour);
        return new Rgb(held(rgb.red()), held(rgb.green()), held(rgb.blue()));
    }

    private static double held(double channel) {
        return Math.clamp(channel, 0, 1);
    }

    /// Gives what of it keys say it sends back: its colour, as bright as `reflects`.
    ///
    /// @param keys `colour`, `hue`, `reflects`
    /// @param usual what is sent back where none is written
    /// @return shares of one; no channel over 1
    static Rgb of(Written keys, double usual) {
        Optional<Double> reflects = keys.findQuantity("reflects").map(Quantity::si);
        Optional<Rgb> colour = findColour(keys);
        if (colour.isEmpty()) {
            return grey(reflects.orElse(usual));
        }
        return reflects.isEmpty() ? colour.get() : scaled(colour.get(), reflects.get());
    }

    /// As bright as a share of light, or as bright as that colour can be.
    private static Rgb scaled(Rgb colour, double share) {
        double own = Primaries.REC_709.toXyz(colour).y();
        if (!(own > 0)) {
            return grey(share);
        }
        double factor = Math.min(share / own, 1 / colour.most());
        return times(colour, factor);
    }

    static Rgb times(Rgb rgb, double factor) {
        return new Rgb(factor * rgb.red(), factor * rgb.green(), factor * rgb.blue());
    }

    /// Gives a light's channels at luminance 1; a colour that a screen doesn't hold is brought in toward white.
    static Rgb tint(Chromaticity colour) {
        Rgb rgb = Primaries.REC_709.toRgb(colour.at(1));
        if (rgb.least() >= 0) {
            return rgb;
        }
        // A mixture with white of the same luminance: none below 0, luminance still 1.
        double white = -rgb.least() / (1 - rgb.least());
        return new Rgb(mixed(rgb.red(), white), mixed(rgb.green(), white), mixed(rgb.blue(), white));
    }

    private static double mixed(double channel, double white) {
        return Math.max(0, (1 - white) * channel + white);
    }
}
