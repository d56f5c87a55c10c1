package plumeline.optics;

import plumeline.ranges.Ranges;

/// A lens as Gaussian optics sees it.
///
/// @param focalLengthMetres focal length, metres, > 0
/// @param pupilRatio exit pupil's diameter over the entrance pupil's, dimensionless, > 0; 1 for a symmetric lens
public record LensModel(double focalLengthMetres, double pupilRatio) {
    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException where a component is not finite and > 0
    public LensModel {
        Ranges.checkPositive(focalLengthMetres, "focal length");
        Ranges.checkPositive(pupilRatio, "pupil ratio");
    }

    /// A symmetric lens: pupil ratio 1.
    ///
    /// @param focalLengthMetres focal length, metres, > 0
    /// @return the lens
    public static LensModel ofFocalLength(double focalLengthMetres) {
        return new LensModel(focalLengthMetres, 1);
    }
}
