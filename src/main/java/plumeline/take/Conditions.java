package plumeline.take;

import plumeline.quantity.Quantity;

/// What was let go in a take, and from where.
public sealed interface Conditions {
    /// Enough is told for a law.
    ///
    /// @param volume of ink
    /// @param density of the ink; the water's own counts against it
    /// @param outlet how it left the nozzle
    /// @param height of the nozzle's mouth over the still surface, − below it
    /// @param water the water's temperature
    record Told(Quantity volume, Quantity density, Outlet outlet, Quantity height, Quantity water)
            implements Conditions {}

    /// Volume or density isn't told.
    record Untold() implements Conditions {}

    /// How ink leaves a nozzle.
    sealed interface Outlet {
        /// At once, without push.
        record AtOnce() implements Outlet {}

        /// Squeezed out evenly.
        ///
        /// @param bore the nozzle's bore
        /// @param time how long it flows
        record Squeezed(Quantity bore, Quantity time) implements Outlet {}

        /// At a speed.
        ///
        /// @param bore the nozzle's bore
        /// @param speed the ink's mean speed there
        record AtSpeed(Quantity bore, Quantity speed) implements Outlet {}
    }
}
