package plumeline.scenery;

import plumeline.colour.Rgb;
import plumeline.ranges.Ranges;

/// A clear substance: `exp(−absorption · way)` of the light is left of what goes a way in it (Beer's and Lambert's
/// law).
///
/// @param index its refractive index, ≥ 1
/// @param absorption how fast it takes light, 1/m a channel, ≥ 0
public record Medium(double index, Rgb absorption) {
    /// Nothing.
    public static final Medium AIR = new Medium(1, new Rgb(0, 0, 0));

    /// Checks the ranges.
    public Medium {
        Ranges.check(index >= 1, "index", index, "1 or more");
        Ranges.check(absorption.least() >= 0, "absorption", absorption.least(), "0 or more");
    }

    /// Makes one that takes no light.
    ///
    /// @param index its refractive index, ≥ 1
    /// @return the substance
    public static Medium clear(double index) {
        return new Medium(index, new Rgb(0, 0, 0));
    }
}
