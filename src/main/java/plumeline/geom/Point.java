package plumeline.geom;

/// A point of the picture, on the plane at unit depth; tangents of angles, no unit.
///
/// @param x to the right
/// @param y up
public record Point(double x, double y) {}
