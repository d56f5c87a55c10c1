package plumeline.colour;

import java.util.function.DoubleUnaryOperator;
import plumeline.ranges.Ranges;

/// Planck's locus: the colours of a body that glows by its heat alone.
public final class Planck {
    /// The coolest body whose colour is given, K.
    public static final double LEAST_KELVIN = 1000;

    /// The hottest body whose colour is given, K.
    public static final double MOST_KELVIN = 100_000;

    private static final double SECOND_RADIATION_METRE_KELVIN = 0.01438776877;
    private static final double REFERENCE_METRES = 560e-9;

    private Planck() {}

    /// Gives the colour of a glowing body by Planck's law `1/(λ⁵ (exp(c₂/λT) − 1))`, summed with the CIE 1931 observer
    /// in steps of 5 nm from 380 nm to 780 nm. From sums in steps of 1 nm it is off by less than 0.0001 in x and y
    /// up to 10 000 K and 0.0002 above, as the ultraviolet is left out.
    ///
    /// **Source:** CIE 15:2004, 7.1 and 9.5; c₂ of the SI of 2019.
    ///
    /// @param kelvin its temperature, K, 1000 to 100 000
    /// @return the colour
    /// @throws IllegalArgumentException outside this range
    public static Chromaticity chromaticity(double kelvin) {
        Ranges.check(kelvin >= LEAST_KELVIN && kelvin <= MOST_KELVIN, "temperature", kelvin, "1000 K to 100 000 K");
        return ofMireds(White.MEGA / kelvin);
    }

    /// Gives its spectrum.
    ///
    /// @param kelvin its temperature, K, 1000 to 100 000
    /// @return power a wavelength by Planck's law, 1 at 560 nm
    /// @throws IllegalArgumentException outside this range
    public static Spectrum spectrum(double kelvin) {
        Ranges.check(kelvin >= LEAST_KELVIN && kelvin <= MOST_KELVIN, "temperature", kelvin, "1000 K to 100 000 K");
        return Spectrum.of(power(White.MEGA / kelvin));
    }

    /// The same colour for reciprocal temperatures, 1/MK, > 0. Powers are scaled to about one.
    static Chromaticity ofMireds(double mireds) {
        return Observer.sum(power(mireds)).findChromaticity().orElseThrow();
    }

    private static DoubleUnaryOperator power(double mireds) {
        double c2 = SECOND_RADIATION_METRE_KELVIN * mireds / White.MEGA;
        double scale = Math.expm1(c2 / REFERENCE_METRES);
        return metres -> scale * Math.pow(REFERENCE_METRES / metres, 5) / Math.expm1(c2 / metres);
    }
}
