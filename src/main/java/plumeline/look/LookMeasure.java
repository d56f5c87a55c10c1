package plumeline.look;

import java.util.List;
import java.util.Optional;

/// What a want on a shot's looks, or on how a lamp pulses, measures at an instant.
public interface LookMeasure {
    /// Gives the unit of its margin.
    ///
    /// @return `%`, `stops`, `frames`, `1`
    String unit();

    /// Gives the margin in parts.
    ///
    /// @param at the looks
    /// @return always as many, negative where they fail, never NaN
    double[] parts(Looks at);

    /// Finds why it can't be judged.
    ///
    /// @param at the looks
    /// @return the reason, with the fact that is missing
    default Optional<String> findUnknown(Looks at) {
        return Optional.empty();
    }

    /// Tells how it stands.
    ///
    /// @param at the looks where it stands worst
    /// @return what is measured and what is wanted, in sentences
    String standing(Looks at);

    /// Finds what lacks, so that it fails whatever its margin.
    ///
    /// @param at the looks
    /// @return a sentence
    default Optional<String> findLack(Looks at) {
        return Optional.empty();
    }

    /// Finds why it may fail all the same.
    ///
    /// @param at the looks where it stands worst
    /// @return a sentence
    default Optional<String> findTight(Looks at) {
        return Optional.empty();
    }

    /// Finds what a crew would want to know beside its margin.
    ///
    /// @param at the looks where it stands worst
    /// @return sentences
    default Optional<String> findCaution(Looks at) {
        return Optional.empty();
    }

    /// Finds by how many stops one look's light would have to change so that all compare as wanted.
    ///
    /// @param at the looks where it stands worst
    /// @param look the look's name
    /// @return stops, + for more light; empty where looks aren't compared by their light
    default Optional<Double> findChange(Looks at, String look) {
        return Optional.empty();
    }

    /// Lists what helps, each tried.
    ///
    /// @param at the looks where it stands worst
    /// @return sentences, the best first
    default List<String> listAttempts(Looks at) {
        return List.of();
    }

    /// Tells whether someone's safety rests on it.
    ///
    /// @return true for flashes
    default boolean isSafety() {
        return false;
    }

    /// Tells whether it has nothing to measure in this look.
    ///
    /// @param at the looks
    /// @return true where the lamp that it is about is off
    default boolean isIdle(Looks at) {
        return false;
    }

    /// Tells whether moving marks can change it.
    ///
    /// @return true for what light falls where
    default boolean restsOnMarks() {
        return false;
    }
}
