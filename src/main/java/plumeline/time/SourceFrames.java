package plumeline.time;

/// Which captured frame is seen at each screen frame of a shot.
///
/// At screen frame n the shot is at `position = real seconds · capture rate` captured frames from the earliest instant
/// that it shows. Seen is the nearest one, halves up: `floor(position + 1/2)`; what is left, −1/2 to 1/2, is the phase.
/// Positions are rounded to 1e-9 of a frame, so that wholes and halves that come of round speeds and rates are met
/// however they were computed; that is finer than what doubles leave of them up to a million captured frames.
///
/// **Source:** own; nearest frame, halves up, is how the contract of `ramp` reads a frame.
public final class SourceFrames {
    /// Positions are counted in steps of one over this, captured frames.
    private static final double STEPS = 1e9;

    private final Retime filmed;
    private final double capturedPerSecond;
    private final int frames;

    private SourceFrames(Retime filmed, double capturedPerSecond, int frames) {
        this.filmed = filmed;
        this.capturedPerSecond = capturedPerSecond;
        this.frames = frames;
    }

    /// Looks up all frames of a shot.
    ///
    /// @param retime the shot's map
    /// @param capturedPerSecond the camera's rate, 1/s, > 0
    /// @param frames the shot's screen frames, ≥ 0
    /// @return what is seen at screen frames 0 to `frames` − 1
    public static SourceFrames of(Retime retime, double capturedPerSecond, int frames) {
        if (!(capturedPerSecond > 0)) {
            throw new IllegalArgumentException("a capture rate of " + capturedPerSecond);
        }
        return new SourceFrames(retime.fromEarliest(frames), capturedPerSecond, frames);
    }

    /// Gives how many screen frames there are.
    ///
    /// @return the count
    public int count() {
        return frames;
    }

    /// Gives where between captured frames a screen frame is.
    ///
    /// @param frame a screen frame, 0 to count − 1
    /// @return captured frames from the earliest instant, ≥ 0
    public double position(int frame) {
        if (frame < 0 || frame >= frames) {
            throw new IndexOutOfBoundsException("frame " + frame + " of " + frames);
        }
        return Math.rint(filmed.realSeconds(frame) * capturedPerSecond * STEPS) / STEPS;
    }

    /// Gives the captured frame that is seen.
    ///
    /// @param frame a screen frame, 0 to count − 1
    /// @return its number, from 0 at the earliest instant
    public long shown(int frame) {
        return (long) Math.floor(position(frame) + 0.5);
    }

    /// Gives by how much a screen frame is past the captured frame that is seen.
    ///
    /// @param frame a screen frame, 0 to count − 1
    /// @return captured frames, from −1/2 to less than 1/2
    public double phase(int frame) {
        return position(frame) - shown(frame);
    }

    /// Counts the screen frames that show the same as the one before.
    ///
    /// @return how many
    public int repeated() {
        int repeated = 0;
        for (int n = 1; n < frames; n++) {
            repeated += shown(n) == shown(n - 1) ? 1 : 0;
        }
        return repeated;
    }

    /// Counts the captured frames that are left out between two screen frames, one after the other.
    ///
    /// @return how many
    public long skipped() {
        long skipped = 0;
        for (int n = 1; n < frames; n++) {
            skipped += Math.max(0, Math.abs(shown(n) - shown(n - 1)) - 1);
        }
        return skipped;
    }
}
