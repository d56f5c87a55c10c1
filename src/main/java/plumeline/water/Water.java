package plumeline.water;

/// Pure water, at one atmosphere where nothing else is said.
public final class Water {
    /// Index of air against a vacuum, 20 degC, one atmosphere, visible light: an index against air is one against a
    /// vacuum over this.
    public static final double AIR_INDEX = 1.00027;

    /// Standard gravity, m/s².
    public static final double GRAVITY_METRES_PER_SECOND2 = 9.80665;

    /// A room, and water that has stood in it: 20 degC, K (common practice).
    public static final double ROOM_KELVIN = 293.15;

    private static final Range LIQUID = Range.ofCelsius(0, 40);
    private static final Range SURFACE = new Range(Figure.Measure.TEMPERATURE, 273.15, 647.096);
    private static final Range VISIBLE = new Range(Figure.Measure.WAVELENGTH, 0.2e-6, 1.1e-6);
    private static final Range VAPOUR = new Range(Figure.Measure.TEMPERATURE, 273.15, 647.096);

    private Water() {}

    /// Gives the density of air-free water, kg/m³, 0 to 40 degC. Water with air in it is up to 0.005 kg/m³ lighter,
    /// hard tap water up to 0.5 kg/m³ heavier.
    ///
    /// **Source:** Tanaka, Girard, Davis, Peuto, Bignell, Recommended table for the density of water, Metrologia 38
    /// (2001) 301, equation 1.
    ///
    /// @param temperatureKelvin the water's temperature, K
    /// @return density, kg/m³
    public static Figure densityKilogramsPerMetre3(double temperatureKelvin) {
        return LIQUID.figure(temperatureKelvin, 1e-6, () -> Laws.tanaka(temperatureKelvin - Laws.ZERO_CELSIUS_KELVIN));
    }

    /// Gives the dynamic viscosity, Pa s, 0 to 40 degC.
    ///
    /// **Source:** IAPWS R12-08 (2008), equations 10 to 12, at the density of [#densityKilogramsPerMetre3].
    ///
    /// @param temperatureKelvin the water's temperature, K
    /// @return viscosity, Pa s
    public static Figure viscosityPascalSeconds(double temperatureKelvin) {
        return LIQUID.figure(
                temperatureKelvin,
                0.01,
                () -> Laws.viscosity(temperatureKelvin, Laws.tanaka(temperatureKelvin - Laws.ZERO_CELSIUS_KELVIN)));
    }

    /// Gives the surface tension of clean water, N/m, 0 degC to the critical point. A trace of soap or grease halves
    /// it.
    ///
    /// **Source:** IAPWS R1-76, revised 2014.
    ///
    /// @param temperatureKelvin the water's temperature, K
    /// @return surface tension, N/m
    public static Figure surfaceTensionNewtonsPerMetre(double temperatureKelvin) {
        return SURFACE.figure(temperatureKelvin, 0.005, () -> Laws.surfaceTension(temperatureKelvin));
    }

    /// Gives the refractive index against a vacuum, 0 to 40 degC, 0.2 to 1.1 µm. Against air: over [#AIR_INDEX].
    ///
    /// **Source:** IAPWS R9-97, equation 1, at the density of [#densityKilogramsPerMetre3].
    ///
    /// @param temperatureKelvin the water's temperature, K
    /// @param wavelengthMetres the light's wavelength in a vacuum, metres
    /// @return index, dimensionless
    public static Figure refractiveIndex(double temperatureKelvin, double wavelengthMetres) {
        if (!VISIBLE.holds(wavelengthMetres)) {
            return VISIBLE.refuse(wavelengthMetres);
        }
        return LIQUID.figure(
                temperatureKelvin,
                2e-5,
                () -> Laws.refractiveIndex(
                        temperatureKelvin,
                        Laws.tanaka(temperatureKelvin - Laws.ZERO_CELSIUS_KELVIN),
                        wavelengthMetres * 1e6));
    }

    /// Gives the pressure of the vapour that is in balance with the water, Pa, 0 degC to the critical point.
    ///
    /// **Source:** IAPWS R7-97(2012), equation 30.
    ///
    /// @param temperatureKelvin the water's temperature, K
    /// @return vapour pressure, Pa
    public static Figure vapourPressurePascals(double temperatureKelvin) {
        return VAPOUR.figure(temperatureKelvin, 0.00025, () -> Laws.saturation(temperatureKelvin));
    }

    /// Gives the length below which surface tension shapes water and above which weight does: `√(σ/(ρ g))`, m, 0 to
    /// 40 degC.
    ///
    /// **Source:** definition.
    ///
    /// @param temperatureKelvin the water's temperature, K
    /// @return capillary length, m
    public static Figure capillaryLengthMetres(double temperatureKelvin) {
        return LIQUID.figure(
                temperatureKelvin,
                0.0025,
                () -> Math.sqrt(Laws.surfaceTension(temperatureKelvin)
                        / (Laws.tanaka(temperatureKelvin - Laws.ZERO_CELSIUS_KELVIN) * GRAVITY_METRES_PER_SECOND2)));
    }
}
