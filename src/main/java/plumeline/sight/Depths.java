package plumeline.sight;

/// Depths of a body along the optical axis from the lens point.
///
/// @param nearMetres depth of the surface point that is least deep, metres
/// @param outlineMetres depth of the deepest point of the outline as seen, metres
/// @param axisMetres depth of the body's middle, metres
public record Depths(double nearMetres, double outlineMetres, double axisMetres) {}
