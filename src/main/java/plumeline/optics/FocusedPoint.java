package plumeline.optics;

/// A point and the focus it is seen with, both from the front principal plane along the optical axis.
///
/// @param focusMetres focus distance, metres
/// @param pointMetres the point's depth, metres
public record FocusedPoint(double focusMetres, double pointMetres) {}
