package plumeline.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;

/// A thing placed in a shot.
///
/// @param name its name in the shot
/// @param thing the thing, its variant merged in
/// @param at where the middle of its base is
/// @param turn the mark of its turn, where written; clockwise seen from above
/// @param tilt the mark of its tilt, where written; its top to camera right about its middle, before the turn
/// @param tied one mark a line: heights from the base where lines leave it; empty where not written
/// @param lines the number of lines it hangs on, where `lines` is written
/// @param written all keys as written
public record Placed(
        String name,
        Thing thing,
        Mark.Spot at,
        Optional<Mark> turn,
        Optional<Mark> tilt,
        List<Mark> tied,
        OptionalLong lines,
        Written written) {

    /// Copies the list.
    public Placed {
        tied = List.copyOf(tied);
    }

    /// Tells whether it hangs on lines.
    ///
    /// @return true where `tied` or `lines` is written
    public boolean isHung() {
        return !tied.isEmpty() || lines.isPresent();
    }

    /// Gives its marks.
    ///
    /// @return x, y(, z), turn, tilt, then the ties
    public List<Mark> marks() {
        return Stream.of(at.marks().stream(), turn.stream(), tilt.stream(), tied.stream())
                .flatMap(s -> s)
                .toList();
    }
}
