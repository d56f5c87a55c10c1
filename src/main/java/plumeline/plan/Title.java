package plumeline.plan;

import plumeline.text.Place;

/// A title over a shot, in one language.
///
/// @param shot the shot's name
/// @param language the language, as written
/// @param text the words
/// @param place where they are written
public record Title(String shot, String language, String text, Place place) {}
