package plumeline.water;

/// What glycerine does to drops: it holds water, so that a drop shrinks until it is in balance with the air and then
/// stays.
public final class Glycerine {
    private static final Range TEMPERATURES = Range.ofCelsius(15, 30);
    private static final Range HUMIDITIES = new Range(Figure.Measure.HUMIDITY, 0.1, 0.999);

    private Glycerine() {}

    /// Gives the surface tension of a mix: straight by mass from water's to 63.4 mN/m of pure glycerine. Within 2 %.
    ///
    /// **Source:** IAPWS R1-76 for water; glycerine's value and the nearly straight course from memory of the
    /// Glycerine Producers' Association's tables, 20 degC.
    ///
    /// @param mix the mix
    /// @param temperatureKelvin its temperature, 15 to 30 degC, K
    /// @return surface tension, N/m
    public static Figure surfaceTensionNewtonsPerMetre(Solution mix, double temperatureKelvin) {
        checkGlycerine(mix);
        return TEMPERATURES.figure(
                temperatureKelvin,
                0.02,
                () -> Laws.surfaceTension(temperatureKelvin) * (1 - mix.massShare()) + 0.0634 * mix.massShare());
    }

    /// Gives the relative humidity of the air that is in balance with a mix. Within 0.02.
    ///
    /// **Source:** Zhang, Grace and Sun, Drying Technology 40 (2022) 2404.
    ///
    /// @param mix the mix
    /// @param temperatureKelvin its temperature, 15 to 30 degC, K
    /// @return humidity, fraction of one
    public static Figure balanceHumidity(Solution mix, double temperatureKelvin) {
        checkGlycerine(mix);
        return TEMPERATURES.figure(
                temperatureKelvin,
                0.025,
                () -> mix.massShare() == 1 ? 0 : Laws.activity(mix.massShare(), temperatureKelvin));
    }

    /// Gives the mass share of glycerine at which a drop neither shrinks nor grows.
    ///
    /// **Source:** [#balanceHumidity] inverted.
    ///
    /// @param humidityShare the air's relative humidity, 0.1 to 0.999
    /// @param temperatureKelvin 15 to 30 degC, K
    /// @return mass share, fraction of one
    public static Figure balanceMassShare(double humidityShare, double temperatureKelvin) {
        if (!HUMIDITIES.holds(humidityShare)) {
            return HUMIDITIES.refuse(humidityShare);
        }
        return TEMPERATURES.figure(temperatureKelvin, 0.02, () -> balance(humidityShare, temperatureKelvin));
    }

    /// Gives the share of its first volume that a drop keeps once it is in balance with the air; above 1 it grows. The
    /// glycerine stays all there.
    ///
    /// **Source:** own derivation: mass of glycerine kept, `w₀ρ(w₀)/(w ρ(w))`.
    ///
    /// @param mix the mix as it is sprayed, with some glycerine
    /// @param humidityShare the air's relative humidity, 0.1 to 0.999
    /// @param temperatureKelvin 15 to 30 degC, K
    /// @return share of the first volume
    public static Figure keptVolumeShare(Solution mix, double humidityShare, double temperatureKelvin) {
        checkGlycerine(mix);
        double celsius = temperatureKelvin - Laws.ZERO_CELSIUS_KELVIN;
        double first = mix.massShare() * Laws.volk(mix.massShare(), celsius);
        return balanceMassShare(humidityShare, temperatureKelvin)
                .map(share -> first / (share * Laws.volk(share, celsius)));
    }

    private static double balance(double humidity, double temperatureKelvin) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (Laws.activity(middle, temperatureKelvin) > humidity) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private static void checkGlycerine(Solution mix) {
        if (mix.solute() != Solution.Solute.GLYCERINE) {
            throw new IllegalArgumentException("a mix of " + mix.solute());
        }
    }
}
