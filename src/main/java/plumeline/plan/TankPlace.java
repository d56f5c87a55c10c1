package plumeline.plan;

import java.util.List;
import java.util.Optional;
import plumeline.quantity.Quantity;

/// A tank placed in a shot. Its place is fixed, never a mark.
///
/// @param tank the tank
/// @param at x, y and, where written, z of the middle of its outer base
/// @param water the water's depth from the tank's floor, where written
/// @param written all keys as written
public record TankPlace(Kit.Tank tank, List<Quantity> at, Optional<Quantity> water, Written written) {
    /// Copies the list.
    public TankPlace {
        at = List.copyOf(at);
    }
}
