package plumeline.optics;

import plumeline.ranges.Ranges;

/// Where the sharp zone ends on the far side.
public sealed interface FarLimit {
    /// The zone ends at a distance.
    ///
    /// @param metres distance from the front principal plane, metres, > 0
    record At(double metres) implements FarLimit {
        /// Checks the range.
        ///
        /// @throws IllegalArgumentException where the distance is not finite and > 0
        public At {
            Ranges.checkPositive(metres, "far limit");
        }
    }

    /// Everything beyond the near limit is sharp: focus is at the hyperfocal distance or beyond.
    record Endless() implements FarLimit {}
}
