package plumeline.solve;

import java.util.List;

/// The finding on one want.
///
/// @param id the want's id, `reveal.1`
/// @param want the want in words
/// @param verdict how it stands
/// @param margin how far from failing
/// @param overPupil the margin over the whole entrance pupil, for wants to which its width matters
/// @param because why, in sentences
/// @param attempts what to try, each tested against all other wants
/// @param pass the pass that is worst; empty where the shot has none
public record WantAnswer(
        String id,
        String want,
        Verdict verdict,
        Margin margin,
        Margin overPupil,
        List<String> because,
        List<String> attempts,
        String pass) {
    /// Copies the lists.
    public WantAnswer {
        because = List.copyOf(because);
        attempts = List.copyOf(attempts);
    }

    /// Makes a finding to which the entrance pupil's width is nothing.
    ///
    /// @param id the want's id, `reveal.1`
    /// @param want the want in words
    /// @param verdict how it stands
    /// @param margin how far from failing
    /// @param because why, in sentences
    /// @param attempts what to try, each tested against all other wants
    /// @param pass the pass that is worst; empty where the shot has none
    public WantAnswer(
            String id,
            String want,
            Verdict verdict,
            Margin margin,
            List<String> because,
            List<String> attempts,
            String pass) {
        this(id, want, verdict, margin, new Margin.None(), because, attempts, pass);
    }

    /// Tells whether the pass needn't be said beside the want, as that names it.
    ///
    /// @return true where it is named, or there is none
    public boolean namesPass() {
        return pass.isEmpty() || List.of(want.split("[ ,]+")).contains(pass);
    }

    /// How far a want is from failing.
    public sealed interface Margin {
        /// A figure.
        ///
        /// @param value in the unit, negative where the want fails
        /// @param unit `%`, `mm` …
        record Of(double value, String unit) implements Margin {}

        /// There is none: the want isn't judged, or what lacks has no measure.
        record None() implements Margin {}
    }
}
