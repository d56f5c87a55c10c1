package plumeline.plan;

import java.util.Optional;
import java.util.OptionalLong;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Quantity;

/// The film's own facts.
///
/// @param title the film's title
/// @param rate the rate at which the film is shown
/// @param frames the film's whole length in screen frames
/// @param tempo the music's tempo
/// @param papers the unit the papers speak, where written
/// @param written all keys as written
public record Film(
        Optional<String> title,
        Quantity rate,
        OptionalLong frames,
        Optional<Quantity> tempo,
        Optional<PaperUnit> papers,
        Written written) {

    /// Gives the papers' unit, millimetres where the plan doesn't say.
    ///
    /// @return the unit
    public PaperUnit papersOrDefault() {
        return papers.orElse(PaperUnit.MILLIMETRES);
    }
}
