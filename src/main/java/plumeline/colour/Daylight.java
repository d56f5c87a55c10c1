package plumeline.colour;

import java.util.List;
import java.util.stream.Stream;
import plumeline.ranges.Ranges;

/// The daylight locus: the colours of the sky's light from noon to blue, on the green side of Planck's.
public final class Daylight {
    private static final double BEND_KELVIN = 7000;

    private static final double STEP_METRES = 10e-9;

    /// The mean of the skies' spectra that were measured, 380 nm to 780 nm in steps of 10 nm.
    private static final List<Double> MEAN = row("""
            63.4 65.8 94.8 104.8 105.9 96.8 113.9 125.6 125.5 121.3 121.3 113.5 113.1 110.8 106.5 108.8 105.3
            104.4 100 96 95.1 89.1 90.5 90.3 88.4 84 85.1 81.9 82.6 84.9 81.3 71.9 74.3 76.4 63.3 71.7 77 65.2
            47.7 68.6 65
            """);

    /// How they differ most: bluer or yellower.
    private static final List<Double> FIRST = row("""
            38.5 35 43.4 46.3 43.9 37.1 36.7 35.9 32.6 27.9 24.3 20.1 16.2 13.2 8.6 6.1 4.2 1.9 0 -1.6 -3.5 -3.5
            -5.8 -7.2 -8.6 -9.5 -10.9 -10.7 -12 -14 -13.6 -12 -13.3 -12.9 -10.6 -11.6 -12.2 -10.2 -7.8 -11.2
            -10.4
            """);

    /// How they differ most beside that: pinker or greener.
    private static final List<Double> SECOND = row("""
            3 1.2 -1.1 -0.5 -0.7 -1.2 -2.6 -2.9 -2.8 -2.6 -2.6 -1.8 -1.5 -1.3 -1.2 -1 -0.5 -0.3 0 0.2 0.5 2.1
            3.2 4.1 4.7 5.1 6.7 7.3 8.6 9.8 10.2 8.3 9.6 8.5 7 7.6 8 6.7 5.2 7.4 6.8
            """);

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

    private static List<Double> row(String numbers) {
        return Stream.of(numbers.strip().split("\\s+")).map(Double::valueOf).toList();
    }

    /// Gives the spectrum of a phase of daylight: `S = S₀ + M₁S₁ + M₂S₂` by its chromaticity, in steps of 10 nm and
    /// straight between them. D65 is `spectrum(6504)`.
    ///
    /// **Source:** CIE 15:2004, 3.1, equations 3.1, 3.5 and 3.6, and table T.2.
    ///
    /// @param kelvin its correlated colour temperature, K, 4000 to 25 000
    /// @return power a wavelength, about 100 at 560 nm
    /// @throws IllegalArgumentException outside this range
    public static Spectrum spectrum(double kelvin) {
        Chromaticity colour = chromaticity(kelvin);
        double x = colour.x();
        double y = colour.y();
        double under = 0.0241 + 0.2562 * x - 0.7341 * y;
        double first = (-1.3515 - 1.7703 * x + 5.9114 * y) / under;
        double second = (0.0300 - 31.4424 * x + 30.0717 * y) / under;
        return Spectrum.of(metres -> {
            double place = (metres - Spectrum.FIRST_METRES) / STEP_METRES;
            int before = Math.clamp((int) place, 0, MEAN.size() - 2);
            double share = place - before;
            return (1 - share) * power(before, first, second) + share * power(before + 1, first, second);
        });
    }

    private static double power(int place, double first, double second) {
        return MEAN.get(place) + first * FIRST.get(place) + second * SECOND.get(place);
    }
}
