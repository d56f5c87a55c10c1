package plumeline.draw;

import java.util.List;
import java.util.Locale;

/// An instant of a shot that is drawn.
public sealed interface Moment {
    /// The instants with a name.
    enum Named implements Moment {
        /// The first frame.
        START,
        /// The frame half way.
        MIDDLE,
        /// The last frame.
        END
    }

    /// Any frame.
    ///
    /// @param number the screen frame, counted from 0
    record AtFrame(long number) implements Moment {
        /// Checks the frame.
        ///
        /// @throws IllegalArgumentException where it is below 0
        public AtFrame {
            if (number < 0) {
                throw new IllegalArgumentException("a frame is " + number + "; must be 0 or more");
            }
        }
    }

    /// Gives the instants that papers show.
    ///
    /// @return start, middle and end
    static List<Moment> values() {
        return List.of(Named.values());
    }

    /// Gives the words for it.
    ///
    /// @return such as `start` or `frame 12`
    default String word() {
        return switch (this) {
            case Named named -> named.name().toLowerCase(Locale.ROOT);
            case AtFrame(long number) -> "frame " + number;
        };
    }

    /// Gives its part of a drawing's id.
    ///
    /// @return such as `start` or `frame12`
    default String id() {
        return word().replace(" ", "");
    }

    /// Gives the screen frame.
    ///
    /// @param frames how many the shot has, 1 or more
    /// @return the frame, from 0; the last one where the shot is shorter
    default long frame(long frames) {
        return switch (this) {
            case Named.START -> 0;
            case Named.MIDDLE -> (frames - 1) / 2;
            case Named.END -> frames - 1;
            case AtFrame(long number) -> Math.min(number, frames - 1);
        };
    }
}
