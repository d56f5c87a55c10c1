package plumeline.motion;

/// What an axis's way is told in.
public enum Measure {
    /// Metres.
    LENGTH,
    /// Radians.
    ANGLE
}
