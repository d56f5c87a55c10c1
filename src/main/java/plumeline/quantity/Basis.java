package plumeline.quantity;

/// Where a quantity holds: everywhere, or at a distance, as in `4000 lx at 1 m`.
public sealed interface Basis {
    /// Nothing was said.
    record Plain() implements Basis {}

    /// At this distance.
    ///
    /// @param distance a length, without a spread
    record At(Quantity distance) implements Basis {}
}
