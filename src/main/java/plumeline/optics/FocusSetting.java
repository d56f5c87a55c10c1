package plumeline.optics;

/// An f-number and a focus distance that together make a zone sharp.
///
/// @param fNumber smallest engraved f-number that does it, dimensionless, > 0
/// @param focusMetres focus distance from the front principal plane, metres
public record FocusSetting(double fNumber, double focusMetres) {}
