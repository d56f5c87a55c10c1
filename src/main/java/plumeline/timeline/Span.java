package plumeline.timeline;

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
