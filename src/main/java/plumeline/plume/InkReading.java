package plumeline.plume;

/// What a shot says of its ink.
public sealed interface InkReading {
    /// Enough to set a flow up.
    ///
    /// @param shot the shot's ink and water
    record Ready(InkShot shot) implements InkReading {}

    /// Something is missing, or can't be computed.
    ///
    /// @param field the plan's field, dotted
    /// @param lack what is the matter with it, to be read after the field
    /// @param attempt what to do
    record Lacking(String field, String lack, String attempt) implements InkReading {}
}
