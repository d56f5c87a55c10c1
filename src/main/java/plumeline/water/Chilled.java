package plumeline.water;

/// A chilled product that stands in the air and warms as one lump: heat by convection and radiation, and the heat that
/// condensing water gives. An order of magnitude, within 40 % in still air: a draught, wet hands, a table that
/// conducts and the product's own layers are not in it.
///
/// **Source:** lumped heat balance; vapour's transfer from heat's by the analogy of Chilton and Colburn (Lewis number
/// 0.85 to the power 2/3).
///
/// @param heatJoulesPerKelvin its heat capacity, J/K, > 0
/// @param areaMetres2 its surface in the air, m², > 0
public record Chilled(double heatJoulesPerKelvin, double areaMetres2) {
    /// A filled drink can of 330 ml, 66 mm wide and 115 mm high, standing.
    public static final Chilled CAN = new Chilled(0.33 * 4186, Math.PI * 0.066 * 0.115 + Math.PI * 0.033 * 0.033);

    /// Convection in still air round something of a hand's size, W/(m² K).
    private static final double STILL_AIR = 4.5;

    private static final double EMISSIVITY = 0.8;
    private static final double STEFAN_BOLTZMANN = 5.670374e-8;

    /// Heat capacity of a cubic metre of air, J/(m³ K).
    private static final double AIR_HEAT = 1.2 * 1007;

    private static final double LEWIS_FACTOR = 0.897;
    static final double EVAPORATION_JOULES_PER_KILOGRAM = 2.47e6;
    private static final int STEPS = 200;

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException where one isn't > 0
    public Chilled {
        if (!(heatJoulesPerKelvin > 0 && areaMetres2 > 0)) {
            throw new IllegalArgumentException("heat " + heatJoulesPerKelvin + " J/K, area " + areaMetres2 + " m2");
        }
    }

    /// Gives how fast the film of dew first grows on a surface, in still air; negative where it dries.
    ///
    /// @param air the air
    /// @param surfaceKelvin the surface's temperature, 0 to 60 degC, K
    /// @return film growth, m/s
    public static Figure filmMetresPerSecond(MoistAir air, double surfaceKelvin) {
        return Range.ofCelsius(0, 60).figure(surfaceKelvin, 0.4, () -> condensed(air, surfaceKelvin) / 1000);
    }

    /// Gives the time until it has warmed to the dew point, when no more dew gathers. Dew that is there takes longer to
    /// dry.
    ///
    /// @param air the air
    /// @param startKelvin its temperature at the start, 0 degC to the dew point, K
    /// @return time, s
    public Figure secondsToDewPoint(MoistAir air, double startKelvin) {
        return switch (air.dewPointKelvin()) {
            case Figure.Unknown unknown -> unknown;
            case Figure.Known(double dewKelvin, double _) -> {
                Range range = new Range(Figure.Measure.TEMPERATURE, Laws.ZERO_CELSIUS_KELVIN, dewKelvin);
                boolean full = air.temperatureKelvin() - dewKelvin < 0.1;
                yield full
                        ? range.refuse(Double.POSITIVE_INFINITY)
                        : range.figure(startKelvin, 0.4, () -> warming(air, startKelvin, dewKelvin));
            }
        };
    }

    /// Time to warm, by the midpoint rule over the temperature.
    private double warming(MoistAir air, double startKelvin, double endKelvin) {
        double step = (endKelvin - startKelvin) / STEPS;
        double seconds = 0;
        for (int i = 0; i < STEPS; i++) {
            double surface = startKelvin + (i + 0.5) * step;
            seconds += step * heatJoulesPerKelvin / (areaMetres2 * flux(air, surface));
        }
        return seconds;
    }

    private static double flux(MoistAir air, double surfaceKelvin) {
        double mean = (air.temperatureKelvin() + surfaceKelvin) / 2;
        double radiation = 4 * EMISSIVITY * STEFAN_BOLTZMANN * mean * mean * mean;
        return (STILL_AIR + radiation) * (air.temperatureKelvin() - surfaceKelvin)
                + EVAPORATION_JOULES_PER_KILOGRAM * condensed(air, surfaceKelvin);
    }

    /// Water that condenses, kg/(m² s).
    private static double condensed(MoistAir air, double surfaceKelvin) {
        double surface = Laws.saturation(surfaceKelvin) / (Laws.VAPOUR_CONSTANT * surfaceKelvin);
        return STILL_AIR / (AIR_HEAT * LEWIS_FACTOR) * (air.vapourKilogramsPerMetre3() - surface);
    }
}
