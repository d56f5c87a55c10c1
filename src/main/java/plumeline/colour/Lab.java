package plumeline.colour;

import plumeline.ranges.Ranges;

/// A surface's colour in CIELAB under a white: how it looks to an eye that is used to that white.
///
/// **Source:** CIE 15:2004, 8.2.1, with the exact constants `(6/29)³` and `(29/6)²/3`.
///
/// @param l L*, 0 black to 100 white
/// @param a a*, + to red
/// @param b b*, + to yellow
public record Lab(double l, double a, double b) {
    private static final double KNEE = 6.0 / 29;

    /// Checks that all are finite.
    ///
    /// @throws IllegalArgumentException where they aren't
    public Lab {
        Ranges.checkFinite(l, "L*");
        Ranges.checkFinite(a, "a*");
        Ranges.checkFinite(b, "b*");
    }

    /// Makes it of tristimulus values.
    ///
    /// @param colour the surface's, Y as a fraction of white's
    /// @param white the white's chromaticity; its Y is 1
    /// @return the colour
    public static Lab of(Xyz colour, Chromaticity white) {
        Xyz full = white.at(1);
        double fx = root(colour.x() / full.x());
        double fy = root(colour.y());
        double fz = root(colour.z() / full.z());
        return new Lab(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));
    }

    private static double root(double ratio) {
        return ratio > KNEE * KNEE * KNEE ? Math.cbrt(ratio) : ratio / (3 * KNEE * KNEE) + 4.0 / 29;
    }

    private static double cube(double root) {
        return root > KNEE ? root * root * root : 3 * KNEE * KNEE * (root - 4.0 / 29);
    }

    /// Gives the tristimulus values.
    ///
    /// @param white the white's chromaticity; its Y is 1
    /// @return the surface's, Y as a fraction of white's; below 0 where no surface has that colour
    public Xyz toXyz(Chromaticity white) {
        Xyz full = white.at(1);
        double fy = (l + 16) / 116;
        return new Xyz(full.x() * cube(fy + a / 500), cube(fy), full.z() * cube(fy - b / 200));
    }

    /// Gives the chroma C*ab.
    ///
    /// @return how far from grey, ≥ 0
    public double chroma() {
        return Math.hypot(a, b);
    }

    /// Gives the hue angle hab.
    ///
    /// @return from + a* toward + b*, radians, −π to π; 0 of a grey
    public double hueRadians() {
        return Math.atan2(b, a);
    }

    /// Gives the colour of the opposite hue, at the same lightness and chroma.
    ///
    /// @return the complement in LCh(ab), which no surface may have
    public Lab complement() {
        return new Lab(l, -a, -b);
    }
}
