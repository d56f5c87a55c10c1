package plumeline.cut.review;

import java.util.Optional;
import plumeline.plan.Plan;
import plumeline.time.Timecode;
import plumeline.timeline.Timeline;

/// The film's timecode from its first frame to its last.
///
/// @param timecode which labels there are
/// @param startFrame the frame of the label of the film's first frame, counted from 00:00:00:00
/// @param frames how long the film is, > 0
public record FilmClock(Timecode timecode, long startFrame, long frames) {
    /// Finds the clock of a timeline.
    ///
    /// @param plan the plan
    /// @param timeline its film's timeline, or a delivery's
    /// @return the clock; empty where the film's rate has no timecode, or nothing is cut
    public static Optional<FilmClock> find(Plan plan, Timeline timeline) {
        return plan.film()
                .findTimecode()
                .filter(_ -> timeline.frames() > 0)
                .map(timecode -> new FilmClock(timecode, plan.film().startFrame(), timeline.frames()));
    }

    /// Gives the label of a frame.
    ///
    /// @param frame of the film, from 0
    /// @return such as `01:00:04:12`
    public String label(long frame) {
        return timecode.label(startFrame + frame);
    }

    /// Tells whether a frame of the film comes before its first: on a round clock everything does that isn't reached
    /// within half a day of it.
    boolean isBefore(long filmFrame) {
        return filmFrame >= Math.max(frames, timecode.framesPerDay() / 2);
    }

    /// Gives the film's frame that a frame of the clock is; the clock may go round once while the film runs.
    long filmFrame(long clockFrame) {
        return clockFrame >= startFrame ? clockFrame - startFrame : clockFrame + timecode.framesPerDay() - startFrame;
    }
}
