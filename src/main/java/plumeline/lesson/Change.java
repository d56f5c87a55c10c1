package plumeline.lesson;

import plumeline.ink.Descent;

/// One thing that is done otherwise in the next take.
///
/// @param what what is changed
/// @param from what it is now, in SI
/// @param to what it is then, in SI
/// @param descent what is let go then
/// @param odds the odds that the front is where it is wanted in time, 0 to 1
public record Change(What what, double from, double to, Descent descent, double odds) {
    /// What may be changed.
    public enum What {
        /// The nozzle's height over the surface, m.
        HEIGHT,
        /// The ink's volume, m³.
        VOLUME,
        /// How long it is squeezed, s.
        SQUEEZE,
        /// The ink's speed at the nozzle, m/s.
        SPEED,
        /// The nozzle's bore, m.
        BORE
    }
}
