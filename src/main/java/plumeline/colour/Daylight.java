package plumeline.colour;

import plumeline.ranges.Ranges;

/// The daylight locus: the colours of the sky's light from noon to blue, on the green side of Planck's.
public final class Daylight {
    private static final double BEND_KELVIN = 7000;

    private Daylight() {}

    /// Gives the colour of a phase of daylight by its correlated colour temperature: x by powers of 1/T,
    /// `y = −3x² + 2.87x − 0.275`. A fit: at 4000 K and 25 000 K it ends. The number in a standard illuminant's
    /// name is by an older constant: D65 is 6504 K.
    ///
    /// **Source:** CIE 15:2004, 3.1, equations 3.2 to 3.4.
    ///
    /// @param kelvin its correlated colour temperature, K, 4000 to 25 000
    /// @return the colour
    /// @throws IllegalArgumentException outside this range
    public static Chromaticity chromaticity(double kelvin) {
        Ranges.check(kelvin >= 4000 && kelvin <= 25_000, "temperature", kelvin, "4000 K to 25 000 K");
        double m = 1000 / kelvin;
        double x = kelvin <= BEND_KELVIN
                ? ((-4.6070 * m + 2.9678) * m + 0.09911) * m + 0.244063
                : ((-2.0064 * m + 1.9018) * m + 0.24748) * m + 0.237040;
        return Chromaticity.ofXy(x, (-3 * x + 2.870) * x - 0.275);
    }
}
