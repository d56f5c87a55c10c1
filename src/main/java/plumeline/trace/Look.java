package plumeline.trace;

/// A world as it is at an instant, and the camera there.
///
/// @param tracer the world, made ready
/// @param eye the camera
public record Look(Tracer tracer, Eye eye) {}
