package plumeline.scenery;

/// A body or a surface.
///
/// @param name what it is called, for whoever asks which part is seen
/// @param form its form, as it stands
/// @param coat what light does at it
public record Part(String name, Form form, Coat coat) {}
