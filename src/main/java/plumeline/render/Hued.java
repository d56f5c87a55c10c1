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

/// The colour that is written of an ink or a piece: `colour`, else a middling saturated one of its `hue`.
final class Hued {
    private static final double LIGHTNESS = 60;
    private static final double MOST_CHROMA = 60;
    private static final int HALVINGS = 30;

    private Hued() {}

    /// Finds it.
    ///
    /// @param written the keys
    /// @return shares of light that it sends back or lets through, 0 to 1 a channel; empty where neither is written
    static Optional<Rgb> find(Written written) {
        return written.findWord("colour")
                .flatMap(Srgb::find)
                .map(code -> held(Primaries.REC_709.toRgb(code.toXyz())))
                .or(() -> written.findQuantity("hue").map(Quantity::si).map(Hued::ofHue));
    }

    /// As saturated as both the chroma and what sRGB holds allow.
    private static Rgb ofHue(double radians) {
        double low = 0;
        double high = MOST_CHROMA;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            Rgb there = at(middle, radians);
            if (there.least() >= 0 && there.most() <= 1) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return held(at(low, radians));
    }

    private static Rgb at(double chroma, double radians) {
        Xyz there = new Lab(LIGHTNESS, chroma * Math.cos(radians), chroma * Math.sin(radians)).toXyz(Chromaticity.D65);
        return Primaries.REC_709.toRgb(there);
    }

    private static Rgb held(Rgb rgb) {
        return new Rgb(
                Math.clamp(rgb.red(), 0, 1), Math.clamp(rgb.green(), 0, 1), Math.clamp(rgb.blue(), 0, 1));
    }
}
