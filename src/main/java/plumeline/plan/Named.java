package plumeline.plan;

import plumeline.text.Place;

/// A name that the plan uses to point at something, and where it stands in the text.
///
/// @param name the name as written, such as `second` or `flacon.rose`
/// @param place where it is written
public record Named(String name, Place place) {}
