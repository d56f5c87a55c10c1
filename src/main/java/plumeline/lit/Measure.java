package plumeline.lit;

import java.util.Optional;
import plumeline.stage.Gauge;

/// What a want on light measures at an instant.
public interface Measure extends Gauge<Instant> {
    @Override
    default boolean restsOnMarks() {
        return true;
    }

    /// Finds by how much all light, or the camera's setting, would have to change.
    ///
    /// @param now the instant
    /// @return the stops that would do; empty where more or less light decides nothing
    default Optional<Change> findChange(Instant now) {
        return Optional.empty();
    }

    /// What would do: as many stops more light as any of these, negative for less.
    ///
    /// @param leastStops the least; −∞ where ever less light would do
    /// @param mostStops the most; below the least where none would do
    record Change(double leastStops, double mostStops) {
        /// Gives what would do for both.
        ///
        /// @param other another
        /// @return where they agree
        public Change and(Change other) {
            return new Change(Math.max(leastStops, other.leastStops), Math.min(mostStops, other.mostStops));
        }

        /// Gives what to aim at: the middle of what would do; where ever less would do, half a stop past the edge.
        ///
        /// @return stops
        public double aimStops() {
            return leastStops == Double.NEGATIVE_INFINITY ? mostStops - 0.5 : leastStops + (mostStops - leastStops) / 2;
        }
    }

    /// Gives the same asking for less.
    ///
    /// @param lack by how much, in its unit, > 0
    /// @return it, with what is asked for instead; empty where it can't
    default Optional<Easier> findEasier(double lack) {
        return Optional.empty();
    }

    /// A measure that asks for less.
    ///
    /// @param measure it
    /// @param sentence what to ask for instead of what
    record Easier(Measure measure, String sentence) {}
}
