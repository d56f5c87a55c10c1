package plumeline.motion;

/// How the speed of a move runs.
public enum Profile {
    /// The same speed throughout.
    EVEN,
    /// Speed up at one rate, run even, slow down at the same rate.
    TRAPEZOID,
    /// As a trapezoid whose corners are rounded by limited jerk.
    S_CURVE,
    /// Minimum jerk: position 10u³ − 15u⁴ + 6u⁵.
    SMOOTH
}
