package plumeline.sound;

/// A loudness, a difference of such, or a peak; or why there is none.
public sealed interface Level {
    /// A level.
    ///
    /// @param decibels in the unit of what it is: LUFS, LU, dBTP or dBFS
    record At(double decibels) implements Level {}

    /// None.
    ///
    /// @param why what is missing
    record None(Missing why) implements Level {}

    /// What is missing where there is no level.
    enum Missing {
        /// The sound is shorter than one stretch over which it is measured.
        LENGTH,
        /// Nothing is heard: all of it is silence, or below the absolute gate.
        SOUND
    }
}
