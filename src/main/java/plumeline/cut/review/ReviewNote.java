package plumeline.cut.review;

import java.util.List;
import java.util.stream.Stream;

/// What somebody says of one instant of one version.
///
/// @param version the version's name, as written
/// @param frame of the film, from 0; past its last where the film has become shorter since
/// @param author who says it, as written
/// @param text what is said, as written
/// @param standing whether it is done
/// @param landing where it lands; empty cells where nobody has filled them in yet
/// @param others the cells of columns that we don't know, in their order
public record ReviewNote(
        String version,
        long frame,
        String author,
        String text,
        Standing standing,
        Landing landing,
        List<String> others) {
    /// Whether something is left to do.
    public enum Standing {
        /// Something is.
        OPEN("no"),
        /// Nothing is.
        DONE("yes");

        private final String word;

        Standing(String word) {
            this.word = word;
        }

        /// Gives what stands in the column `done`.
        ///
        /// @return `yes` or `no`
        public String word() {
            return word;
        }
    }

    /// Where a note lands on the plan, as its cells say it.
    ///
    /// @param shot the shot's name
    /// @param pass the pass's name; empty for the shot itself
    /// @param shotFrame the shot's own screen frame, from 0
    /// @param sourceTimecode the label of the recorded frame that is shown
    public record Landing(String shot, String pass, String shotFrame, String sourceTimecode) {
        /// Tells whether nobody has filled it in.
        ///
        /// @return true where all is empty
        public boolean isEmpty() {
            return (shot + pass + shotFrame + sourceTimecode).isEmpty();
        }

        boolean isPlaceOf(Landing other) {
            return shot.equals(other.shot) && pass.equals(other.pass) && shotFrame.equals(other.shotFrame);
        }
    }

    /// Copies the list.
    public ReviewNote {
        others = List.copyOf(others);
    }

    /// What makes it one note with another: who says what of which instant of which version, but for blanks around it
    /// and how lines end.
    List<String> key() {
        return Stream.of(version, Long.toString(frame), author, text)
                .map(cell -> cell.strip().replace("\r\n", "\n"))
                .toList();
    }

    ReviewNote landedAt(Landing other) {
        return new ReviewNote(version, frame, author, text, standing, other, others);
    }
}
