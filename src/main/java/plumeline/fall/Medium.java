package plumeline.fall;

import java.util.OptionalDouble;
import plumeline.ranges.Ranges;
import plumeline.water.Water;

/// What a piece falls through.
///
/// @param densityKilogramsPerMetre3 density, kg/m³, > 0
/// @param viscosityPascalSeconds dynamic viscosity, Pa s, > 0
public record Medium(double densityKilogramsPerMetre3, double viscosityPascalSeconds) {
    /// Air of a room: 20 degC, one atmosphere. 10 degC more or less change both by less than 4 %.
    ///
    /// **Source:** ideal gas of 28.96 g/mol; Sutherland's viscosity; from memory of the standard atmosphere.
    public static final Medium AIR = new Medium(1.204, 1.81e-5);

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public Medium {
        Ranges.checkPositive(densityKilogramsPerMetre3, "density");
        Ranges.checkPositive(viscosityPascalSeconds, "viscosity");
    }

    /// Makes fresh water.
    ///
    /// @param temperatureKelvin its temperature, K, 273.15 to 313.15
    /// @return the water
    /// @throws IllegalArgumentException outside that range
    public static Medium ofWater(double temperatureKelvin) {
        OptionalDouble density =
                Water.densityKilogramsPerMetre3(temperatureKelvin).find();
        OptionalDouble viscosity =
                Water.viscosityPascalSeconds(temperatureKelvin).find();
        if (density.isEmpty() || viscosity.isEmpty()) {
            throw new IllegalArgumentException("water of " + temperatureKelvin + " K");
        }
        return new Medium(density.getAsDouble(), viscosity.getAsDouble());
    }
}
