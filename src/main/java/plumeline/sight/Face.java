package plumeline.sight;

import java.util.List;
import plumeline.geom.Point;

/// One connected part of a union of outlines, perhaps with holes.
///
/// @param shell outer edge, anticlockwise, not closed
/// @param holes edges of holes, clockwise, not closed
public record Face(List<Point> shell, List<List<Point>> holes) {
    /// Copies the lists.
    public Face {
        shell = List.copyOf(shell);
        holes = holes.stream().map(List::copyOf).toList();
    }
}
