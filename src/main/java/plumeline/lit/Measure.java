package plumeline.lit;

import java.util.List;
import java.util.Optional;

/// What a want on light measures at an instant.
public interface Measure {
    /// Gives the unit of its margin.
    ///
    /// @return `stops`, `%`
    String unit();

    /// Gives the margin in parts.
    ///
    /// @param now the instant
    /// @return always as many, negative where they fail, never NaN
    double[] parts(Instant now);

    /// Finds why it can't be judged at an instant.
    ///
    /// @param now the instant
    /// @return the reason, with the fact that is missing
    Optional<String> findUnknown(Instant now);

    /// Tells how it stands.
    ///
    /// @param now the instant at which it stands worst
    /// @return what is measured and what is wanted, in sentences
    String standing(Instant now);

    /// Finds why it may fail all the same.
    ///
    /// @param now the instant at which it stands worst
    /// @return a sentence; empty where the light's own spread leaves it holding
    Optional<String> findTight(Instant now);

    /// Finds what lacks, so that it fails whatever its margin.
    ///
    /// @param now the instant at which it stands worst
    /// @return a sentence
    default Optional<String> findLack(Instant now) {
        return Optional.empty();
    }

    /// Finds what a crew would want to know beside its margin.
    ///
    /// @param now the instant at which it stands worst
    /// @return a sentence
    default Optional<String> findCaution(Instant now) {
        return Optional.empty();
    }

    /// Lists what helps beside marks, each tried.
    ///
    /// @param now the instant at which it stands worst
    /// @return sentences, the best first
    default List<String> listAttempts(Instant now) {
        return List.of();
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
