package plumeline.draw;

import java.util.List;
import java.util.Locale;

/// An instant of a shot that is drawn.
///
/// @param which one of the instants with a name, or any frame
/// @param number the screen frame where it is any, counted from 0; else 0
public record Moment(Which which, long number) {
    /// The first frame.
    public static final Moment START = new Moment(Which.START, 0);

    /// The frame half way.
    public static final Moment MIDDLE = new Moment(Which.MIDDLE, 0);

    /// The last frame.
    public static final Moment END = new Moment(Which.END, 0);

    /// Which instant it is.
    public enum Which {
        /// The first frame.
        START,
        /// The frame half way.
        MIDDLE,
        /// The last frame.
        END,
        /// A frame by its number.
        FRAME
    }

    /// Checks the frame.
    ///
    /// @throws IllegalArgumentException where it is below 0, or not 0 for an instant with a name
    public Moment {
        if (number < 0 || (which != Which.FRAME && number != 0)) {
            throw new IllegalArgumentException("frame " + number + " of a moment at " + which);
        }
    }

    /// Gives the instant of any frame.
    ///
    /// @param number the screen frame, counted from 0
    /// @return the instant
    public static Moment atFrame(long number) {
        return new Moment(Which.FRAME, number);
    }

    /// Gives the instants that papers show.
    ///
    /// @return start, middle and end
    public static List<Moment> values() {
        return List.of(START, MIDDLE, END);
    }

    /// Gives the words for it.
    ///
    /// @return such as `start` or `frame 12`
    public String word() {
        String word = which.name().toLowerCase(Locale.ROOT);
        return which == Which.FRAME ? word + " " + number : word;
    }

    /// Gives its part of a drawing's id.
    ///
    /// @return such as `start` or `frame12`
    public String id() {
        return word().replace(" ", "");
    }

    /// Gives the screen frame.
    ///
    /// @param frames how many the shot has, 1 or more
    /// @return the frame, from 0; the last one where the shot is shorter
    public long frame(long frames) {
        return switch (which) {
            case START -> 0;
            case MIDDLE -> (frames - 1) / 2;
            case END -> frames - 1;
            case FRAME -> Math.min(number, frames - 1);
        };
    }
}
