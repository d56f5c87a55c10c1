package plumeline.stage;

import java.util.List;
import java.util.Optional;

/// What a want reads off a shot: at an instant, or of the shot as a whole.
///
/// @param <A> what it is read off
public interface Gauge<A> {
    /// What comes of a want as written.
    ///
    /// @param <A> what its gauge is read off
    sealed interface Reading<A> {
        /// It can be measured.
        ///
        /// @param <A> what its gauge is read off
        /// @param gauge what it measures
        record Of<A>(Gauge<A> gauge) implements Reading<A> {}

        /// It can't.
        ///
        /// @param <A> what its gauge would be read off
        /// @param reason what is missing
        record Missing<A>(String reason) implements Reading<A> {}
    }

    /// Gives the unit of its margin.
    ///
    /// @return `%`, `stops`, `frames`, `px`, `1`
    String unit();

    /// Gives the margin in parts.
    ///
    /// @param at what it is read off
    /// @return always as many, negative where they fail, never NaN
    double[] parts(A at);

    /// Finds why it can't be judged.
    ///
    /// @param at what it is read off
    /// @return the reason, with the fact that is missing
    default Optional<String> findUnknown(A at) {
        return Optional.empty();
    }

    /// Tells how it stands.
    ///
    /// @param at where it stands worst
    /// @return what is measured and what is wanted, in sentences
    String standing(A at);

    /// Finds what lacks, so that it fails whatever its margin.
    ///
    /// @param at where it stands worst
    /// @return a sentence
    default Optional<String> findLack(A at) {
        return Optional.empty();
    }

    /// Finds why it may fail all the same.
    ///
    /// @param at where it stands worst
    /// @return a sentence
    default Optional<String> findTight(A at) {
        return Optional.empty();
    }

    /// Finds what a crew would want to know beside its margin.
    ///
    /// @param at where it stands worst
    /// @return sentences
    default Optional<String> findCaution(A at) {
        return Optional.empty();
    }

    /// Finds by how many stops one look's light would have to change so that all compare as wanted.
    ///
    /// @param at where it stands worst
    /// @param look the look's name
    /// @return stops, + for more light; empty where looks aren't compared by their light
    default Optional<Double> findChange(A at, String look) {
        return Optional.empty();
    }

    /// Lists what helps, each tried.
    ///
    /// @param at where it stands worst
    /// @return sentences, the best first
    default List<String> listAttempts(A at) {
        return List.of();
    }

    /// Tells whether someone's safety rests on it.
    ///
    /// @return true for flashes
    default boolean isSafety() {
        return false;
    }

    /// Tells whether it has nothing to measure there.
    ///
    /// @param at what it is read off
    /// @return true where the lamp that it is about is off
    default boolean isIdle(A at) {
        return false;
    }

    /// Tells whether moving marks can change it.
    ///
    /// @return true for what light falls where
    default boolean restsOnMarks() {
        return false;
    }

    /// Tells whether it is one figure of the whole shot, the same at every instant.
    ///
    /// @return false for what is worse at one instant than at another
    default boolean isOfWhole() {
        return !restsOnMarks();
    }
}
