package plumeline.cut.review;

import plumeline.time.Timecode;

/// The film's timecode from its first frame to its last.
///
/// @param timecode which labels there are
/// @param startFrame the frame of the label of the film's first frame, counted from 00:00:00:00
/// @param frames how long the film is, > 0
public record FilmClock(Timecode timecode, long startFrame, long frames) {
    /// Gives the label of a frame.
    ///
    /// @param frame of the film, from 0
    /// @return such as `01:00:04:12`
    public String label(long frame) {
        return timecode.label(startFrame + frame);
    }

    /// Gives the film's frame that a frame of the clock is; the clock may go round once while the film runs.
    long filmFrame(long clockFrame) {
        return clockFrame >= startFrame ? clockFrame - startFrame : clockFrame + timecode.framesPerDay() - startFrame;
    }
}
