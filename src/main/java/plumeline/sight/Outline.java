package plumeline.sight;

import java.util.List;
import plumeline.geom.Point;

/// One convex part of a body's outline.
///
/// @param corners picture points on the exact outline, anticlockwise (x right, y up), not closed
public record Outline(List<Point> corners) {
    /// Copies the corners.
    public Outline {
        corners = List.copyOf(corners);
    }
}
