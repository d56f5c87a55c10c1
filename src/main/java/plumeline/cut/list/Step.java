package plumeline.cut.list;

import plumeline.quantity.FrameRate;
import plumeline.timeline.Span;

/// A stretch of a span at one speed.
///
/// @param span what it is of
/// @param rate the film's rate
/// @param first the film's frame that it begins with
/// @param frames how many there are, ≥ 1
/// @param sourceFrame the recorded frame shown first, 0 at GO
/// @param speedPerSecond recorded frames a second of the film; 0 holds, negative runs backward
/// @param number which step of its span, from 1
/// @param of how many its span has
record Step(
        Span span,
        FrameRate rate,
        long first,
        long frames,
        long sourceFrame,
        double speedPerSecond,
        int number,
        int of) {
    /// Positions are rounded so, as those of [plumeline.time.SourceFrames] are, recorded frames.
    private static final double STEPS = 1e9;

    /// Speeds that differ by less are one, recorded frames a second.
    private static final double SAME = 1e-6;

    /// How far a list's frames are from what the film shows.
    ///
    /// @param frames the most, recorded frames
    /// @param at the film's frame where that is first so
    record Loss(long frames, long at) {}

    long past() {
        return first + frames;
    }

    /// Tells whether it runs at the film's own rate, so that no list has to say so.
    boolean isPlain() {
        return Math.abs(speedPerSecond - rate.framesPerSecond()) < SAME;
    }

    boolean isHeld() {
        return Math.abs(speedPerSecond) < SAME;
    }

    /// The speed as a share of the film's rate.
    double scalar() {
        // All digits: an exact half of a frame that is rounded down is another frame.
        return speedPerSecond / rate.framesPerSecond() + 0.0;
    }

    /// The recorded frame that a reader finds for the k-th frame of the step.
    long readAt(long k, double readPerSecond) {
        return sourceFrame + moved(k, readPerSecond, rate);
    }

    static long moved(long k, double speedPerSecond, FrameRate rate) {
        double way = rate.secondsOf((double) k) * speedPerSecond;
        return (long) Math.floor(Math.rint(way * STEPS) / STEPS + 0.5);
    }

    /// How far it is off where a reader takes this speed.
    Loss loss(double readPerSecond) {
        Loss worst = new Loss(0, first);
        for (long k = 0; k < frames; k++) {
            long off = Math.abs(readAt(k, readPerSecond) - span.sourceFrame(first + k));
            if (off > worst.frames()) {
                worst = new Loss(off, first + k);
            }
        }
        return worst;
    }

    /// The least recorded frame that a reader takes or the film shows, 0 at GO.
    long lowest(double readPerSecond) {
        long lowest = Math.min(sourceFrame, readAt(frames - 1, readPerSecond));
        for (long k = 0; k < frames; k++) {
            lowest = Math.min(lowest, span.sourceFrame(first + k));
        }
        return lowest;
    }

    /// The one after the greatest of them.
    long pastHighest(double readPerSecond) {
        long highest = Math.max(sourceFrame, readAt(frames - 1, readPerSecond));
        for (long k = 0; k < frames; k++) {
            highest = Math.max(highest, span.sourceFrame(first + k));
        }
        return highest + 1;
    }
}
