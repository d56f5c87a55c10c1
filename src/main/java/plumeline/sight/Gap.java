package plumeline.sight;

/// The clear space between two neighbours in the picture.
///
/// @param leftIndex which of the given bodies stands left in the picture
/// @param rightIndex which stands right
/// @param width clear width, tangent, no unit; negative where the outlines overlap sideways
public record Gap(int leftIndex, int rightIndex, double width) {}
