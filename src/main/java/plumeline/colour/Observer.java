package plumeline.colour;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

/// The CIE 1931 standard colorimetric observer, 2 degrees, 380 nm to 780 nm in steps of 5 nm; in steps of 1 nm by the
/// cubic through the four nearest rows, whose y sums to the standard's own table in such steps within 0.002 of 106.857.
///
/// **Source:** ISO/CIE 11664-1, and CIE 15:2004, table T.4; a standard's data, abridged to six decimals.
final class Observer {
    private static final double FIRST_METRES = 380e-9;
    private static final double STEP_METRES = 5e-9;

    /// x, y and z of each wavelength.
    private static final String TABLE = """
            0.001368 0.000039 0.006450  0.002236 0.000064 0.010550  0.004243 0.000120 0.020050
            0.007650 0.000217 0.036210  0.014310 0.000396 0.067850  0.023190 0.000640 0.110200
            0.043510 0.001210 0.207400  0.077630 0.002180 0.371300  0.134380 0.004000 0.645600
            0.214770 0.007300 1.039050  0.283900 0.011600 1.385600  0.328500 0.016840 1.622960
            0.348280 0.023000 1.747060  0.348060 0.029800 1.782600  0.336200 0.038000 1.772110
            0.318700 0.048000 1.744100  0.290800 0.060000 1.669200  0.251100 0.073900 1.528100
            0.195360 0.090980 1.287640  0.142100 0.112600 1.041900  0.095640 0.139020 0.812950
            0.057950 0.169300 0.616200  0.032010 0.208020 0.465180  0.014700 0.258600 0.353300
            0.004900 0.323000 0.272000  0.002400 0.407300 0.212300  0.009300 0.503000 0.158200
            0.029100 0.608200 0.111700  0.063270 0.710000 0.078250  0.109600 0.793200 0.057250
            0.165500 0.862000 0.042160  0.225750 0.914850 0.029840  0.290400 0.954000 0.020300
            0.359700 0.980300 0.013400  0.433450 0.994950 0.008750  0.512050 1.000000 0.005750
            0.594500 0.995000 0.003900  0.678400 0.978600 0.002750  0.762100 0.952000 0.002100
            0.842500 0.915400 0.001800  0.916300 0.870000 0.001650  0.978600 0.816300 0.001400
            1.026300 0.757000 0.001100  1.056700 0.694900 0.001000  1.062200 0.631000 0.000800
            1.045600 0.566800 0.000600  1.002600 0.503000 0.000340  0.938400 0.441200 0.000240
            0.854450 0.381000 0.000190  0.751400 0.321000 0.000100  0.642400 0.265000 0.000050
            0.541900 0.217000 0.000030  0.447900 0.175000 0.000020  0.360800 0.138200 0.000010
            0.283500 0.107000 0.000000  0.218700 0.081600 0.000000  0.164900 0.061000 0.000000
            0.121200 0.044580 0.000000  0.087400 0.032000 0.000000  0.063600 0.023200 0.000000
            0.046770 0.017000 0.000000  0.032900 0.011920 0.000000  0.022700 0.008210 0.000000
            0.015840 0.005723 0.000000  0.011359 0.004102 0.000000  0.008111 0.002929 0.000000
            0.005790 0.002091 0.000000  0.004109 0.001484 0.000000  0.002899 0.001047 0.000000
            0.002049 0.000740 0.000000  0.001440 0.000520 0.000000  0.001000 0.000361 0.000000
            0.000690 0.000249 0.000000  0.000476 0.000172 0.000000  0.000332 0.000120 0.000000
            0.000235 0.000085 0.000000  0.000166 0.000060 0.000000  0.000117 0.000042 0.000000
            0.000083 0.000030 0.000000  0.000059 0.000021 0.000000  0.000042 0.000015 0.000000
            """;

    /// How many whole nanometres there are from 380 to 780.
    static final int FINE = 401;

    private static final int FINE_A_STEP = 5;

    private static final double[] VALUES = values();

    private static final double[] FINE_VALUES = fineValues();

    private Observer() {}

    private static double[] values() {
        String[] numbers = TABLE.strip().split("\\s+");
        double[] values = new double[numbers.length];
        for (int i = 0; i < numbers.length; i++) {
            values[i] = Double.parseDouble(numbers[i]);
        }
        return values;
    }

    /// Sums a spectrum over the steps.
    ///
    /// @param spectrum power a wavelength, in any unit, of a wavelength in metres
    /// @return X, Y and Z in that unit, a step's width left out
    static Xyz sum(DoubleUnaryOperator spectrum) {
        double x = 0;
        double y = 0;
        double z = 0;
        for (int i = 0; i < VALUES.length / 3; i++) {
            double power = spectrum.applyAsDouble(FIRST_METRES + i * STEP_METRES);
            x += power * VALUES[3 * i];
            y += power * VALUES[3 * i + 1];
            z += power * VALUES[3 * i + 2];
        }
        return new Xyz(x, y, z);
    }

    /// Sums a spectrum of every whole nanometre.
    ///
    /// @param powers power a wavelength from 380 nm to 780 nm, in any unit
    /// @return X, Y and Z in that unit, a step's width left out
    static Xyz sum(List<Double> powers) {
        double x = 0;
        double y = 0;
        double z = 0;
        for (int i = 0; i < FINE; i++) {
            double power = powers.get(i);
            x += power * FINE_VALUES[3 * i];
            y += power * FINE_VALUES[3 * i + 1];
            z += power * FINE_VALUES[3 * i + 2];
        }
        return new Xyz(x, y, z);
    }

    /// Gives one wavelength.
    ///
    /// @param place its place among whole nanometres, 0 at 380 nm
    /// @return X, Y and Z of a unit of power
    static Xyz at(int place) {
        return new Xyz(FINE_VALUES[3 * place], FINE_VALUES[3 * place + 1], FINE_VALUES[3 * place + 2]);
    }

    private static double[] fineValues() {
        double[] fine = new double[3 * FINE];
        int rows = VALUES.length / 3;
        for (int i = 0; i < FINE; i++) {
            int first = Math.clamp(i / FINE_A_STEP - 1, 0, rows - 4);
            double place = i / (double) FINE_A_STEP - first;
            for (int row = 0; row < 4; row++) {
                double weight = 1;
                for (int other = 0; other < 4; other++) {
                    weight *= other == row ? 1 : (place - other) / (row - other);
                }
                for (int k = 0; k < 3; k++) {
                    fine[3 * i + k] += weight * VALUES[3 * (first + row) + k];
                }
            }
        }
        return fine;
    }
}
