package plumeline.solve;

import plumeline.plan.Mark;
import plumeline.quantity.Origin;
import plumeline.search.Leeway;

/// One mark: where to set it, and how far off it may be.
///
/// @param mark the mark as written
/// @param setting where it is set
/// @param leeway how far it may be off to each side, SI; a stop's numbers for an f-number are f-numbers
/// @param ends which wants end the leeway
/// @param placingErrorSi how far off a hand may leave it, SI
public record MarkAnswer(Mark mark, Setting setting, Leeway leeway, Ends ends, double placingErrorSi) {
    /// Where a mark is set.
    public sealed interface Setting {
        /// At a value.
        ///
        /// @param si the value, SI
        /// @param origin given, measured, typical or solved
        record At(double si, Origin origin) implements Setting {}

        /// Nowhere yet: no want that is computed bears on it.
        record Open() implements Setting {}
    }

    /// The wants that end a leeway, by id; empty text where a side is endless.
    ///
    /// @param minus towards smaller values
    /// @param plus towards larger values
    public record Ends(String minus, String plus) {}
}
