package plumeline.quantity;

/// What came of reading a text as a quantity.
public sealed interface Reading {
    /// It is one.
    ///
    /// @param quantity what it says
    record Read(Quantity quantity) implements Reading {}

    /// It is none, or not of an accepted kind. The three texts are parts of a message: "is `given`; must be `allowed`",
    /// and on a line of its own `attempt`.
    ///
    /// @param given what was found, as it follows "is"
    /// @param allowed what is accepted, as it follows "must be"
    /// @param attempt a whole sentence that says what to try
    record Refused(String given, String allowed, String attempt) implements Reading {}
}
