package plumeline.water;

/// What holds a vessel in the water.
public sealed interface Hold {
    /// Nothing: it floats at the surface, or sinks through still water and turns as it does, about the centre of what
    /// it displaces.
    record Free() implements Hold {}

    /// An upright line from a point of its axis, all of it under: from above where it sinks, from below where it
    /// floats.
    ///
    /// @param heightMetres height of the point over the base, metres
    record Tied(double heightMetres) implements Hold {}
}
