package plumeline.colour;

import plumeline.ranges.Ranges;

/// How far off a surface's colour under a light may be where a spectrum is made up: half-widths in CIELAB under D65,
/// within which four in five lie. They are what fourteen painted samples came to (the test colour samples of CIE
/// 13.3-1995) under the lights named below, against their measured spectra; surfaces made of few narrow bands, or
/// that glow, may be off by more.
///
/// @param l of L*, ≥ 0
/// @param a of a*, ≥ 0
/// @param b of b*, ≥ 0
public record LabDoubt(double l, double a, double b) {
    /// Both spectra are known.
    public static final LabDoubt NONE = new LabDoubt(0, 0, 0);

    /// The surface's is made up, the light is a glowing body's from 2000 K up, or daylight.
    public static final LabDoubt SURFACE_UNDER_BROAD_LIGHT = new LabDoubt(0.1, 2.0, 0.8);

    /// The surface's is made up, the light has known peaks or is measured: mixtures of red, green and blue peaks, one
    /// alone to all three.
    public static final LabDoubt SURFACE = new LabDoubt(2.5, 5.5, 4.5);

    /// The light's is made up, of which only the colour is known: the same mixtures.
    public static final LabDoubt LIGHT = new LabDoubt(4, 20, 11);

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public LabDoubt {
        Ranges.checkNotNegative(l, "doubt of L*");
        Ranges.checkNotNegative(a, "doubt of a*");
        Ranges.checkNotNegative(b, "doubt of b*");
    }
}
