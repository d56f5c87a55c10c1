package plumeline.lit;

import plumeline.stage.Scene;

/// A shot at an instant with its light.
///
/// @param scene the instant
/// @param lighting its light
public record Instant(Scene scene, Lighting lighting) {}
