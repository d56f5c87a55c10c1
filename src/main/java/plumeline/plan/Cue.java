package plumeline.plan;

import java.util.Optional;
import plumeline.quantity.Quantity;

/// A sound cue.
///
/// @param sound what is heard
/// @param shot the shot that it falls in
/// @param pass the pass of it, where written
/// @param when the instant that its sync point meets
/// @param lead how many frames or seconds the sound begins earlier
/// @param written all keys as written
public record Cue(
        String sound,
        Named shot,
        Optional<Named> pass,
        When when,
        Optional<Quantity> lead,
        Written written) {}
