package plumeline.stage;

import java.util.Optional;
import plumeline.plan.Plan;
import plumeline.quantity.Quantity;
import plumeline.water.MoistAir;

/// The air on the set, as the film writes it.
public final class RoomAir {
    private static final double ZERO_CELSIUS_KELVIN = 273.15;
    private static final double COLDEST_CELSIUS = -20;
    private static final double WARMEST_CELSIUS = 60;

    private RoomAir() {}

    /// Finds the air where both its temperature and its humidity are written.
    ///
    /// @param film the film's own facts
    /// @return the air; empty where one isn't written, or past −20 to 60 degC
    public static Optional<MoistAir> find(Plan.Film film) {
        Optional<Quantity> temperature = film.written().findQuantity("air.temperature");
        Optional<Quantity> humidity = film.written().findQuantity("air.humidity");
        if (temperature.isEmpty() || humidity.isEmpty()) {
            return Optional.empty();
        }
        double celsius = temperature.get().si() - ZERO_CELSIUS_KELVIN;
        return celsius < COLDEST_CELSIUS || celsius > WARMEST_CELSIUS
                ? Optional.empty()
                : Optional.of(
                        new MoistAir(temperature.get().si(), humidity.get().si()));
    }
}
