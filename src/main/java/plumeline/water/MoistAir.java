package plumeline.water;

/// Air with water vapour in it, at one atmosphere.
///
/// @param temperatureKelvin its temperature, −20 to 60 degC, K
/// @param humidityShare its relative humidity, over liquid water at every temperature (as weather services count it),
/// fraction of one, above 0 to 1
public record MoistAir(double temperatureKelvin, double humidityShare) {
    private static final Range AIR = Range.ofCelsius(-20, 60);
    private static final double COLDEST_DEW_CELSIUS = -45;
    private static final Range DEW =
            new Range(Figure.Measure.VAPOUR_PRESSURE, Laws.magnus(COLDEST_DEW_CELSIUS), Laws.saturation(333.15));
    private static final Range FROST =
            new Range(Figure.Measure.VAPOUR_PRESSURE, Laws.sublimation(213.15), Laws.sublimation(273.15));

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public MoistAir {
        if (!AIR.holds(temperatureKelvin) || !(humidityShare > 0 && humidityShare <= 1)) {
            throw new IllegalArgumentException("air at " + temperatureKelvin + " K, " + humidityShare);
        }
    }

    /// Gives the pressure at which air is full of vapour over liquid water: the saturation line of the industrial
    /// formulation from 0 degC on, below it the formula of weather services for supercooled water.
    ///
    /// **Source:** IAPWS R7-97(2012), equation 30; WMO-No. 8, annex 4.B.
    ///
    /// @param temperatureKelvin −45 to 60 degC, K
    /// @return saturation pressure, Pa
    public static Figure saturationPascals(double temperatureKelvin) {
        Range range = Range.ofCelsius(COLDEST_DEW_CELSIUS, 60);
        boolean freezing = temperatureKelvin < Laws.ZERO_CELSIUS_KELVIN;
        return range.figure(temperatureKelvin, freezing ? 0.006 : 0.00025, () -> saturation(temperatureKelvin));
    }

    private static double saturation(double temperatureKelvin) {
        return temperatureKelvin < Laws.ZERO_CELSIUS_KELVIN
                ? Laws.magnus(temperatureKelvin - Laws.ZERO_CELSIUS_KELVIN)
                : Laws.saturation(temperatureKelvin);
    }

    /// Gives the pressure of its vapour.
    ///
    /// @return vapour pressure, Pa
    public double vapourPascals() {
        return humidityShare * saturation(temperatureKelvin);
    }

    /// Gives the mass of vapour in it, as an ideal gas; 0.2 % low at room temperature.
    ///
    /// **Source:** ideal gas law.
    ///
    /// @return vapour density, kg/m³
    public double vapourKilogramsPerMetre3() {
        return vapourPascals() / (Laws.VAPOUR_CONSTANT * temperatureKelvin);
    }

    /// Gives the dew point: where this vapour is in balance with liquid water, below 0 degC with supercooled water.
    /// Down to −45 degC. Within 0.05 K.
    ///
    /// **Source:** IAPWS R7-97(2012), equation 31; below 0 degC WMO-No. 8, annex 4.B, solved for the temperature.
    ///
    /// @return dew point, K
    public Figure dewPointKelvin() {
        double pressure = vapourPascals();
        return DEW.figure(pressure, 0.0002, () -> dewPoint(pressure));
    }

    private static double dewPoint(double pressure) {
        return pressure < Laws.saturation(Laws.ZERO_CELSIUS_KELVIN)
                ? Math.min(Laws.magnusTemperature(pressure) + Laws.ZERO_CELSIUS_KELVIN, Laws.ZERO_CELSIUS_KELVIN)
                : Laws.saturationTemperature(pressure);
    }

    /// Gives the frost point: where this vapour is in balance with ice. Only below 0 degC; it lies above the dew point,
    /// so frost grows on what is no colder than that.
    ///
    /// **Source:** IAPWS R14-08, equation 6, solved by halving.
    ///
    /// @return frost point, −60 to 0 degC, K
    public Figure frostPointKelvin() {
        double pressure = vapourPascals();
        return FROST.figure(pressure, 0.0002, () -> frostPoint(pressure));
    }

    private static double frostPoint(double pressure) {
        double low = 213.15;
        double high = Laws.ZERO_CELSIUS_KELVIN;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (Laws.sublimation(middle) < pressure) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
