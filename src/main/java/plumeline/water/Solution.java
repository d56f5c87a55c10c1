package plumeline.water;

import java.util.function.DoubleSupplier;

/// Water with one thing dissolved in it.
///
/// @param solute what is dissolved
/// @param massShare mass of it over mass of the solution, fraction of one, 0 to 1; how much stays in solution is said
/// by the ranges
public record Solution(Solute solute, double massShare) {
    private static final double ROOM_CELSIUS = 20;

    /// Index of water against air at 20 degC in sodium light, as tables of solutions count it.
    private static final double WATER_INDEX = 1.33299;

    private static final double[] SALT_VOLUME = {
        -0.00324112223655149, 0.0636354335906616, 1.01371399467365, 0.0145951015210159, 3317.34854426537
    };
    private static final double[] SALT_VISCOSITY = {
        16.221788633396, 1.32293086770011, 1.48485985010431, 0.00746912559657377, 30.7802007540575, 2.05826852322558
    };
    private static final double[] SUGAR_VOLUME = {
        532.919899042424, 13692.5881480438, 12.6127261369233, 0.0266415899284128, 649.049186827162
    };

    /// What can be dissolved.
    public enum Solute {
        /// Table salt, NaCl, up to 26 % by mass; sea salt is not the same.
        SALT(0.26, 5, 40),
        /// Sea salt, up to 4.2 % by mass; a sea has about 3.5 %.
        SEA_SALT(0.042, 0, 40),
        /// Table sugar, sucrose, up to 50 % by mass.
        SUGAR(0.50, 15, 40),
        /// Glycerine, up to the pure liquid.
        GLYCERINE(1, 15, 30),
        /// Ethanol, up to the pure liquid; it burns from about 20 % on.
        ETHANOL(1, 0, 40);

        private final double mostShare;
        private final double lowCelsius;
        private final double highCelsius;

        Solute(double mostShare, double lowCelsius, double highCelsius) {
            this.mostShare = mostShare;
            this.lowCelsius = lowCelsius;
            this.highCelsius = highCelsius;
        }

        private Range temperatures() {
            return Range.ofCelsius(lowCelsius, highCelsius);
        }
    }

    /// Checks the share.
    ///
    /// @throws IllegalArgumentException outside 0 to 1
    public Solution {
        if (!(massShare >= 0 && massShare <= 1)) {
            throw new IllegalArgumentException("massShare is " + massShare + "; must be 0 to 1");
        }
    }

    /// Makes a mix of glycerine and water by the measuring jug. Both volumes count before they are mixed: the mix is up
    /// to 1 % less than both.
    ///
    /// @param volumeShare volume of glycerine over both volumes, fraction of one, 0 to 1; pure glycerine
    /// @return the mix, by mass at 20 degC; 15 to 30 degC changes its share by less than 0.001
    /// @throws IllegalArgumentException outside 0 to 1
    public static Solution ofGlycerineByVolume(double volumeShare) {
        double glycerine = Laws.volk(1, ROOM_CELSIUS) * volumeShare;
        double water = Laws.volk(0, ROOM_CELSIUS) * (1 - volumeShare);
        return new Solution(Solute.GLYCERINE, glycerine / (glycerine + water));
    }

    /// Makes a mix of ethanol and water from the strength on a label: the volume of pure ethanol in the mix's volume,
    /// both at 20 degC.
    ///
    /// @param volumeShare strength by volume, fraction of one, 0 to 1
    /// @return the mix, by mass
    /// @throws IllegalArgumentException outside 0 to 1
    public static Solution ofEthanolByVolume(double volumeShare) {
        double pure = Laws.spiritDensity(1, ROOM_CELSIUS);
        double low = 0;
        double high = 1;
        for (int i = 0; i < 60 && volumeShare < 1; i++) {
            double middle = (low + high) / 2;
            if (middle * Laws.spiritDensity(middle, ROOM_CELSIUS) / pure < volumeShare) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new Solution(Solute.ETHANOL, volumeShare >= 0 && volumeShare < 1 ? low : volumeShare);
    }

    /// Gives the density. Salt to 26 % by mass, 5 to 40 degC; sea salt to 4.2 %, 0 to 40 degC; sugar to 50 %, 15 to
    /// 40 degC; glycerine 15 to 30 degC; ethanol 0 to 40 degC.
    ///
    /// **Source:** salt and sugar: Laliberté, J. Chem. Eng. Data 54 (2009) 1725; sea salt: Millero and Poisson,
    /// Deep-Sea Research 28A (1981) 625; glycerine: Volk and Kähler, Experiments in Fluids 59 (2018) 75; ethanol:
    /// OIML R 22 (1975).
    ///
    /// @param temperatureKelvin the solution's temperature, K
    /// @return density, kg/m³
    public Figure densityKilogramsPerMetre3(double temperatureKelvin) {
        return inRange(
                temperatureKelvin,
                solute.temperatures(),
                solute == Solute.GLYCERINE ? 0.001 : 0.0005,
                () -> density(temperatureKelvin));
    }

    /// Gives the dynamic viscosity. Salt to 26 % by mass, 5 to 40 degC; sea salt to 4.2 %, 0 to 40 degC; sugar to 50 %,
    /// 15 to 40 degC; glycerine 0 to 100 degC; ethanol 19 to 21 degC, as tables have it at 20 degC.
    ///
    /// **Source:** salt: Laliberté 2009; sea salt: Sharqawy, Lienhard and Zubair, Desalination and Water Treatment
    /// 16 (2010) 354; ethanol: rows of the CRC Handbook, 102nd edition, joined in the logarithm; sugar: at 20 degC
    /// a curve through the rows for 5, 20, 30 and 50 % of the CRC Handbook, 102nd edition, and Génotelle's course
    /// with temperature (Industries Alimentaires et Agricoles 95 (1978) 747, from memory); glycerine: Cheng, Ind.
    /// Eng. Chem. Res. 47 (2008) 3285.
    ///
    /// @param temperatureKelvin the solution's temperature, K
    /// @return viscosity, Pa s
    public Figure viscosityPascalSeconds(double temperatureKelvin) {
        Range range = switch (solute) {
            case GLYCERINE -> Range.ofCelsius(0, 100);
            case ETHANOL -> Range.ofCelsius(19, 21);
            case SALT, SEA_SALT, SUGAR -> solute.temperatures();
        };
        double errorShare = switch (solute) {
            case SALT, SEA_SALT -> 0.02;
            case SUGAR -> 0.03;
            case GLYCERINE -> 0.04;
            case ETHANOL -> 0.06;
        };
        return inRange(temperatureKelvin, range, errorShare, () -> viscosity(temperatureKelvin));
    }

    /// Gives the refractive index against air in sodium light, 15 to 30 degC: refractions of the parts, by mass, at the
    /// solution's density, `(n² − 1)/(n² + 2) = ρ Σ wᵢ rᵢ`.
    ///
    /// **Source:** Lorentz and Lorenz; each solute's refraction taken from one point or two of the CRC Handbook,
    /// 102nd edition, at 20 degC (salt 10 %, sugar 20 and 50 %, glycerine 52 %, ethanol 20 and 100 %); sea salt:
    /// Quan and Fry, Applied Optics 34 (1995) 3477.
    ///
    /// @param temperatureKelvin the solution's temperature, K
    /// @return index, dimensionless
    public Figure refractiveIndex(double temperatureKelvin) {
        return inRange(temperatureKelvin, Range.ofCelsius(15, 30), 0.0007, () -> index(temperatureKelvin));
    }

    private Figure inRange(double temperatureKelvin, Range temperatures, double errorShare, DoubleSupplier law) {
        Range shares = new Range(Figure.Measure.MASS_SHARE, 0, solute.mostShare);
        return shares.holds(massShare)
                ? temperatures.figure(temperatureKelvin, errorShare, law)
                : shares.refuse(massShare);
    }

    private double density(double temperatureKelvin) {
        double celsius = temperatureKelvin - Laws.ZERO_CELSIUS_KELVIN;
        return switch (solute) {
            case SALT -> Laws.laliberteDensity(massShare, celsius, SALT_VOLUME);
            case SUGAR -> Laws.laliberteDensity(massShare, celsius, SUGAR_VOLUME);
            case GLYCERINE -> Laws.volk(massShare, celsius);
            case SEA_SALT -> Laws.seaDensity(massShare, celsius);
            case ETHANOL -> Laws.spiritDensity(massShare, celsius);
        };
    }

    private double viscosity(double temperatureKelvin) {
        double celsius = temperatureKelvin - Laws.ZERO_CELSIUS_KELVIN;
        return switch (solute) {
            case GLYCERINE -> Laws.cheng(massShare, celsius);
            case SALT -> Laws.laliberteViscosity(massShare, celsius, SALT_VISCOSITY);
            case SUGAR -> sugarViscosity(celsius);
            case SEA_SALT -> Laws.seaViscosity(massShare, celsius);
            case ETHANOL -> spiritViscosity();
        };
    }

    /// The value at 20 degC by a curve through four rows of the CRC table, the course with temperature by Génotelle.
    private double sugarViscosity(double celsius) {
        double moles = massShare / 342.296 / (massShare / 342.296 + (1 - massShare) / 18.015);
        double course = (30 - celsius) / (91 + celsius) - (30 - ROOM_CELSIUS) / (91 + ROOM_CELSIUS);
        double water = Laws.viscosity(ROOM_CELSIUS + Laws.ZERO_CELSIUS_KELVIN, Laws.tanaka(ROOM_CELSIUS));
        return water
                * Math.exp(massShare * sugarSlope(massShare))
                * Math.pow(10, course * (1.1 + 43.1 * Math.pow(moles, 1.25)));
    }

    /// `ln(η/η_water)/w` at 20 degC: the cubic through 1.146, 1.945, 3.187 and 15.431 mPa s at 5, 20, 30 and 50 %
    /// (water 1.002 mPa s).
    private static double sugarSlope(double w) {
        double[] shares = {0.05, 0.20, 0.30, 0.50};
        double[] ratios = {1.146 / 1.002, 1.945 / 1.002, 3.187 / 1.002, 15.431 / 1.002};
        double sum = 0;
        for (int i = 0; i < shares.length; i++) {
            double term = Math.log(ratios[i]) / shares[i];
            for (int j = 0; j < shares.length; j++) {
                term *= j == i ? 1 : (w - shares[j]) / (shares[i] - shares[j]);
            }
            sum += term;
        }
        return sum;
    }

    /// The tables' rows for every tenth, at 20 degC, joined in the logarithm.
    private double spiritViscosity() {
        double[] rows = {1.002, 1.501, 2.142, 2.667, 2.846, 2.813, 2.547, 2.214, 1.881, 1.542, 1.203};
        int row = Math.min((int) (massShare * 10), rows.length - 2);
        double part = massShare * 10 - row;
        return 1e-3 * rows[row] * Math.pow(rows[row + 1] / rows[row], part);
    }

    private double index(double temperatureKelvin) {
        if (solute == Solute.SEA_SALT) {
            return Laws.seaIndex(massShare, temperatureKelvin - Laws.ZERO_CELSIUS_KELVIN);
        }
        double water = Laws.refraction(WATER_INDEX) / Laws.tanaka(ROOM_CELSIUS);
        double solved = switch (solute) {
            case SALT -> 1.5735e-4;
            case SUGAR -> 2.0703e-4 - 2.76e-6 * massShare;
            case GLYCERINE -> Laws.refraction(1.4739) / Laws.volk(1, ROOM_CELSIUS);
            case ETHANOL -> 2.7701e-4 + 3.60e-6 * massShare;
            case SEA_SALT -> throw new IllegalStateException("sea water has a law of its own");
        };
        return Laws.indexOf(density(temperatureKelvin) * ((1 - massShare) * water + massShare * solved));
    }
}
