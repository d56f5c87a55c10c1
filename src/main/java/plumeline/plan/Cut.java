package plumeline.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/// One entry of the film's cut.
///
/// @param shot the shot's name
/// @param pass the pass, where written
/// @param frames how many screen frames it shows
/// @param alternate the passes that alternate, in their order; empty where none do
/// @param each how many frames each of them shows
/// @param written all keys as written, with `from_beat`
public record Cut(
        Named shot, Optional<Named> pass, long frames, List<Named> alternate, OptionalLong each, Written written) {
    /// Copies the list.
    public Cut {
        alternate = List.copyOf(alternate);
    }
}
