package plumeline.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/// A lamp placed in a shot.
///
/// @param name its name in the shot
/// @param light the lamp
/// @param at the middle of what shines
/// @param aim where it faces
/// @param level the mark of its level, % of what it gives, where written (full, where not)
/// @param written all keys as written: `hue`, `white` …
public record PlacedLight(
        String name, Kit.Light light, Mark.Spot at, Camera.Aim aim, Optional<Mark> level, Written written) {
    /// Gives its marks.
    ///
    /// @return x, y, z, turn, tilt, level, as far as they are written
    public List<Mark> marks() {
        return Stream.of(at.marks().stream(), Shot.aimMarks(aim), level.stream())
                .flatMap(s -> s)
                .toList();
    }
}
