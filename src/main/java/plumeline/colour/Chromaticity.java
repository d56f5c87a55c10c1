package plumeline.colour;

import plumeline.ranges.Ranges;

/// Which colour a light has, whatever its amount: a place in the CIE 1976 u'v' diagram, which the other diagrams follow
/// from. Places that no light has, such as a complement beyond the spectrum, are places too.
///
/// **Source:** CIE 15:2004, 7.1 and 8.1: `u' = 4X/(X + 15Y + 3Z)`, `v' = 9Y/(X + 15Y + 3Z)`.
///
/// @param u u' of CIE 1976, dimensionless, finite
/// @param v v' of CIE 1976, dimensionless, > 0
public record Chromaticity(double u, double v) {
    /// D65, to the four digits that pictures' standards give it (ITU-R BT.709): x 0.3127, y 0.3290.
    public static final Chromaticity D65 = ofXy(0.3127, 0.3290);

    /// Checks both.
    ///
    /// @throws IllegalArgumentException outside these ranges
    public Chromaticity {
        Ranges.checkFinite(u, "u'");
        Ranges.checkPositive(v, "v'");
    }

    /// Makes it of CIE 1931 coordinates: `u' = 4x/(3 + 12y − 2x)`, `v' = 9y/(3 + 12y − 2x)`.
    ///
    /// @param x x of CIE 1931, dimensionless, 0 to 1
    /// @param y y of CIE 1931, dimensionless, > 0, x + y ≤ 1
    /// @return the chromaticity
    /// @throws IllegalArgumentException outside these ranges
    public static Chromaticity ofXy(double x, double y) {
        Ranges.checkNotNegative(x, "x");
        Ranges.checkPositive(y, "y");
        Ranges.checkAtMost(x + y, 1 + 1e-12, "x + y");
        double all = 3 + 12 * y - 2 * x;
        return new Chromaticity(4 * x / all, 9 * y / all);
    }

    /// Gives x of CIE 1931.
    ///
    /// @return x, dimensionless; 0 to 1 for every light that there is
    public double x() {
        return 9 * u / (6 * u - 16 * v + 12);
    }

    /// Gives y of CIE 1931.
    ///
    /// @return y, dimensionless; more than 0, and x + y no more than 1, for every light that there is
    public double y() {
        return 4 * v / (6 * u - 16 * v + 12);
    }

    /// Gives v of CIE 1960, the diagram in which colour temperatures are defined; its u is u'.
    ///
    /// @return v, two thirds of v', dimensionless
    public double v1960() {
        return v * 2 / 3;
    }

    /// Gives the tristimulus values of a light or surface of this chromaticity.
    ///
    /// @param luminance its Y, in any unit, ≥ 0
    /// @return X, Y and Z, in that unit
    /// @throws IllegalArgumentException outside this range
    public Xyz at(double luminance) {
        Ranges.checkNotNegative(luminance, "luminance");
        return new Xyz(luminance * 9 * u / (4 * v), luminance, luminance * (12 - 3 * u - 20 * v) / (4 * v));
    }

    /// Gives the distance to another in u'v'. A few thousandths are what an eye tells apart side by side.
    ///
    /// @param other the other
    /// @return the distance, dimensionless, ≥ 0
    public double distance(Chromaticity other) {
        return Math.hypot(u - other.u, v - other.v);
    }

    /// Gives the colour of the opposite hue in CIE LCh(uv) at the same lightness and chroma: as u* and v* grow with the
    /// distance from white in u'v', it lies across the white, as far.
    ///
    /// **Source:** CIE 15:2004, 8.2.2.
    ///
    /// @param white the white
    /// @return the complement, which no light may have
    /// @throws IllegalArgumentException where it has no place in the diagram
    public Chromaticity opposite(Chromaticity white) {
        return new Chromaticity(2 * white.u - u, 2 * white.v - v);
    }
}
