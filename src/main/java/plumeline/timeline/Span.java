package plumeline.timeline;

import java.util.OptionalDouble;
import plumeline.roots.Roots;

/// A stretch that shows one shot's pass without a break: an entry of the cut, or one look's turn of an entry in which
/// looks alternate.
///
/// @param entry which entry of the cut, from 0
/// @param shot the shot's name
/// @param pass the pass's name; empty for the shot itself
/// @param first the film's frame that it begins with
/// @param frames how many there are, ≥ 1
/// @param shotFrame the shot's own screen frame shown first
/// @param played how the shot runs
public record Span(int entry, String shot, String pass, long first, long frames, long shotFrame, Played played) {
    /// Instants that miss each other by less are one, s.
    private static final double NEAR = 1e-9;

    /// Gives the film's frame after its last.
    ///
    /// @return the frame
    public long past() {
        return first + frames;
    }

    /// Tells whether it shows a frame of the film.
    ///
    /// @param frame the film's frame
    /// @return true where it does
    public boolean has(long frame) {
        return frame >= first && frame < past();
    }

    /// Gives the shot's own screen frame.
    ///
    /// @param frame a frame of the film within the span
    /// @return screen frames from the shot's first
    public long shotFrameAt(long frame) {
        return shotFrame + frame - first;
    }

    /// Finds where it shows an instant of its shot's table, first of several.
    ///
    /// @param realSeconds real seconds after GO
    /// @return the film's frames, whole or between; empty where it doesn't show it
    public OptionalDouble findFrame(double realSeconds) {
        for (long frame = first; frame < past(); frame++) {
            double own = (double) shotFrameAt(frame);
            double now = played.retime().realSeconds(own) - realSeconds;
            double next = played.retime().realSeconds(own + 1) - realSeconds;
            if (Math.abs(now) < NEAR) {
                return OptionalDouble.of((double) frame);
            }
            if (now * next < 0 && Math.abs(next) >= NEAR) {
                double at = Roots.end(part -> (played.retime().realSeconds(own + part) - realSeconds) * now > 0, 0, 1);
                return OptionalDouble.of((double) frame + at);
            }
        }
        return OptionalDouble.empty();
    }

    /// Gives the recorded frame that is seen.
    ///
    /// @param frame a frame of the film within the span
    /// @return recorded frames, 0 at GO
    public long sourceFrame(long frame) {
        return played.sources().shown(Math.toIntExact(shotFrameAt(frame)));
    }

    /// Gives the pass as papers and lists name it.
    ///
    /// @return `shot`, or `shot, pass`
    public String name() {
        return pass.isEmpty() ? shot : shot + ", " + pass;
    }
}
