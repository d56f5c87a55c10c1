package plumeline.colour;

import java.util.Optional;
import plumeline.ranges.Ranges;

/// CIE 1931 tristimulus values. They add as lights add (Grassmann).
///
/// @param x X, of the unit of Y; below 0 only for what no light is
/// @param y Y: lumens of a light, or luminance over that of white
/// @param z Z, of the unit of Y; below 0 only for what no light is
public record Xyz(double x, double y, double z) {
    /// No light.
    public static final Xyz DARK = new Xyz(0, 0, 0);

    /// Checks that they are finite.
    ///
    /// @throws IllegalArgumentException where they aren't
    public Xyz {
        Ranges.checkFinite(x, "X");
        Ranges.checkFinite(y, "Y");
        Ranges.checkFinite(z, "Z");
    }

    /// Adds a share of another light.
    ///
    /// @param other the other
    /// @param share how much of it, dimensionless
    /// @return both together
    public Xyz plus(Xyz other, double share) {
        return new Xyz(x + share * other.x, y + share * other.y, z + share * other.z);
    }

    /// Finds the chromaticity.
    ///
    /// @return the chromaticity; empty for no light, and for values that have no place in the u'v' diagram
    public Optional<Chromaticity> findChromaticity() {
        double all = x + 15 * y + 3 * z;
        return all > 0 && y > 0 ? Optional.of(new Chromaticity(4 * x / all, 9 * y / all)) : Optional.empty();
    }
}
