package plumeline.ink;

/// What is known of a front at a depth before a take.
public sealed interface Prediction {
    /// It comes.
    ///
    /// @param regime how it comes down
    /// @param seconds when, from the first ink that leaves the nozzle, s
    /// @param radiusMetres its half-width then, m
    /// @param dilution how many times its own volume the ink then fills
    record Reached(Regime regime, Estimate seconds, Estimate radiusMetres, Estimate dilution) implements Prediction {}

    /// Ink lighter than the water that turns before in half of the takes or more, or as dense without push.
    ///
    /// @param regime how it comes down
    /// @param deepestMetres the deepest it goes, m below the surface
    record Never(Regime regime, Estimate deepestMetres) implements Prediction {}

    /// No law is known here.
    ///
    /// @param regime how it comes down
    /// @param limit what is out of range
    /// @param given its value, in the limit's unit
    /// @param bound the limit of the laws, in the same unit
    record Unknown(Regime regime, Limit limit, double given, double bound) implements Prediction {}

    /// What may be out of range.
    enum Limit {
        /// Reynolds number of a puff, `√B/ν`, or at the nozzle, the larger: too small.
        PUFF_REYNOLDS,
        /// How long ink flows from a slot, s: longer than half of its way's time.
        ROW_SECONDS,
        /// n of a line `z = k tⁿ` through readings: no front's.
        EXPONENT,
        /// A reading's depth, m: deeper than its law has the front come at all.
        READING,
        /// Height of the nozzle over the surface, m: too large.
        HEIGHT
    }
}
