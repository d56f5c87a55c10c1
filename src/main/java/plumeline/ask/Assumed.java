package plumeline.ask;

/// A default that was used because the input left it out.
///
/// @param name the field's dotted path
/// @param value what was taken
/// @param why where it comes from
public record Assumed(String name, Value value, String why) {}
