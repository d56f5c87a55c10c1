package plumeline.optics;

import plumeline.ranges.Ranges;

/// What counts as sharp: a lens, the f-number it is set to, and the largest blur disc that is accepted.
///
/// @param lens the lens
/// @param fNumber engraved f-number, dimensionless, > 0
/// @param blurMetres largest accepted blur-disc diameter on the sensor, metres, > 0
public record Sharpness(LensModel lens, double fNumber, double blurMetres) {
    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException where a number is not finite and > 0
    public Sharpness {
        Ranges.checkPositive(fNumber, "f-number");
        Ranges.checkPositive(blurMetres, "blur-disc diameter");
    }
}
