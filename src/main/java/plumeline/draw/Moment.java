package plumeline.draw;

/// The instants of a shot that papers show.
public enum Moment {
    /// The first frame.
    START("start"),
    /// The frame half way.
    MIDDLE("middle"),
    /// The last frame.
    END("end");

    private final String word;

    Moment(String word) {
        this.word = word;
    }

    /// Gives the word for it.
    ///
    /// @return the word
    public String word() {
        return word;
    }

    /// Gives the screen frame.
    ///
    /// @param frames how many the shot has, 1 or more
    /// @return the frame, from 0
    public long frame(long frames) {
        return switch (this) {
            case START -> 0;
            case MIDDLE -> (frames - 1) / 2;
            case END -> frames - 1;
        };
    }
}
