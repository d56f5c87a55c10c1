package plumeline.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import plumeline.ranges.Ranges;

/// Power a wavelength of a light, in any unit, or what share of each wavelength a surface throws back: whole nanometres
/// from 380 nm to 780 nm. What lies beyond is left out; an eye sees next to none of it.
///
/// @param values one for each nanometre, 401 of them, finite
public record Spectrum(List<Double> values) {
    /// The first wavelength, metres.
    public static final double FIRST_METRES = 380e-9;

    /// The last wavelength, metres.
    public static final double LAST_METRES = 780e-9;

    /// The narrowest peak that whole nanometres hold, metres.
    public static final double LEAST_WIDTH_METRES = 3e-9;

    private static final double STEP_METRES = 1e-9;
    private static final double WIDTH_A_SIGMA = 2 * Math.sqrt(2 * Math.log(2));

    /// Checks and copies the values.
    ///
    /// @throws IllegalArgumentException where they are not 401 finite numbers
    public Spectrum {
        values = List.copyOf(values);
        Ranges.check(values.size() == Observer.FINE, "values", values.size(), "401 of them");
        values.forEach(each -> Ranges.checkFinite(each, "power"));
    }

    /// A row of a table.
    ///
    /// @param metres the wavelength, metres
    /// @param value power, or share that is thrown back
    public record Row(double metres, double value) {}

    /// What stands before a table's first row and after its last.
    public enum Beyond {
        /// Nothing, as of a light that was measured over all of it.
        NOTHING,
        /// The nearest row's value, as of a surface (CIE 15:2004, 7.2.3).
        THE_SAME
    }

    /// Makes it of a law.
    ///
    /// @param law the value at a wavelength in metres
    /// @return the spectrum
    public static Spectrum of(DoubleUnaryOperator law) {
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < Observer.FINE; i++) {
            values.add(law.applyAsDouble(FIRST_METRES + i * STEP_METRES));
        }
        return new Spectrum(values);
    }

    /// Makes it of a table, straight between the rows.
    ///
    /// @param rows at least one, by rising wavelength
    /// @param beyond what stands beyond them
    /// @return the spectrum
    public static Spectrum of(List<Row> rows, Beyond beyond) {
        return of(metres -> {
            double slack = STEP_METRES / 1e6;
            if (beyond == Beyond.NOTHING
                    && (metres < rows.getFirst().metres - slack || metres > rows.getLast().metres + slack)) {
                return 0;
            }
            Row before = rows.getFirst();
            for (Row row : rows) {
                if (row.metres > metres) {
                    double way = row.metres - before.metres;
                    double share = way > 0 ? (metres - before.metres) / way : 0;
                    return before.value + share * (row.value - before.value);
                }
                before = row;
            }
            return before.value;
        });
    }

    /// Makes a light of one peak, as an LED without phosphor has, by a Gaussian curve. Real ones lean a little to the
    /// long side.
    ///
    /// **Source:** the normal curve as a model of an LED's peak: common practice.
    ///
    /// @param peakMetres where the peak is, metres, > 0
    /// @param widthMetres its full width where half of the power is left, metres, ≥ 3e-9
    /// @return the spectrum, 1 at the peak
    /// @throws IllegalArgumentException outside these ranges
    public static Spectrum peak(double peakMetres, double widthMetres) {
        Ranges.checkPositive(peakMetres, "peak");
        Ranges.check(widthMetres >= LEAST_WIDTH_METRES * (1 - 1e-9), "width", widthMetres, "3e-9 m or more");
        double sigma = widthMetres / WIDTH_A_SIGMA;
        return of(metres -> Math.exp(-Math.pow((metres - peakMetres) / sigma, 2) / 2));
    }

    /// Gives what a law makes of each value.
    ///
    /// @param law of a value
    /// @return the spectrum
    public Spectrum map(DoubleUnaryOperator law) {
        return new Spectrum(values.stream().map(law::applyAsDouble).toList());
    }

    /// Adds a share of another light.
    ///
    /// @param other the other
    /// @param share how much of it, dimensionless
    /// @return both together
    public Spectrum plus(Spectrum other, double share) {
        List<Double> sums = new ArrayList<>();
        for (int i = 0; i < Observer.FINE; i++) {
            sums.add(values.get(i) + share * other.values.get(i));
        }
        return new Spectrum(sums);
    }

    /// Gives what a surface throws back of this light.
    ///
    /// @param surface its share of each wavelength
    /// @return the light that comes back
    public Spectrum from(Spectrum surface) {
        List<Double> products = new ArrayList<>();
        for (int i = 0; i < Observer.FINE; i++) {
            products.add(values.get(i) * surface.values.get(i));
        }
        return new Spectrum(products);
    }

    /// Gives the tristimulus values by sums in steps of 1 nm.
    ///
    /// **Source:** CIE 15:2004, 7.1.
    ///
    /// @return X, Y and Z, in proportion to the power
    public Xyz xyz() {
        return Observer.sum(values);
    }

    /// Gives the tristimulus values of a surface under this light.
    ///
    /// @param surface its share of each wavelength
    /// @return X, Y and Z; Y of a surface that throws back all is 1
    /// @throws IllegalArgumentException where this light has nothing that is seen
    public Xyz xyz(Spectrum surface) {
        return Xyz.DARK.plus(from(surface).xyz(), 1 / Ranges.checkPositive(xyz().y(), "the light's Y"));
    }
}
