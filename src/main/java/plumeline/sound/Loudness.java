package plumeline.sound;

/// How loud a sound is, and its peaks.
///
/// Each channel's power by ear ([KWeighting]), weighted by where it is heard from ([Speaker]), is summed; its mean over
/// a stretch is the loudness `−0.691 + 10 log₁₀ Σ G z`, in LUFS. A single channel counts once: the same in two channels
/// is 3 LU louder. **Integrated**: blocks of 400 ms, each 100 ms after the last, those at or below −70 LUFS left out,
/// then those not above 10 LU under the mean of the rest; what is left of a block at the end is left out. **Momentary**
/// (400 ms) and **short-term** (3 s) are the most over stretches that begin every 10 ms: a hop of 100 ms reads tones of
/// 400 ms up to 0.5 LU too low. **Range**: of short-term values every 100 ms those above −70 LUFS and not more than
/// 20 LU under their mean, from the tenth to the ninety-fifth in a hundred.
///
/// **Source:** ITU-R BS.1770-5 (11/2023), Annex 1; EBU Tech 3341 (2023), § 2; EBU Tech 3342 (2023), § 3 and 5.
///
/// @param integrated over all of it, LUFS
/// @param momentary the most over 400 ms, LUFS
/// @param shortTerm the most over 3 s, LUFS
/// @param range how far loud and soft are apart, LU
/// @param truePeak the highest between the samples too, dBTP
/// @param samplePeak the highest sample, dBFS
public record Loudness(
        Level integrated, Level momentary, Level shortTerm, Level range, Level truePeak, Level samplePeak) {
    /// The least rate that is metered: below it the shelf's frequency isn't in the sound.
    public static final int LEAST_SAMPLES_PER_SECOND = 8000;

    /// The shortest sound that has a loudness, s.
    public static final double BLOCK_SECONDS = 0.4;

    /// Meters a sound.
    ///
    /// @param sound at [#LEAST_SAMPLES_PER_SECOND] or more
    /// @return its loudness and peaks
    public static Loudness of(Sound sound) {
        if (sound.samplesPerSecond() < LEAST_SAMPLES_PER_SECOND) {
            throw new IllegalArgumentException("a sound of " + sound.samplesPerSecond() + " samples a second");
        }
        Cells cells = Cells.of(sound);
        Peaks peaks = Peaks.of(sound);
        return new Loudness(
                cells.integrated(),
                cells.mostMomentary(),
                cells.mostShortTerm(),
                cells.range(),
                peaks.truePeak(),
                peaks.samplePeak());
    }
}
