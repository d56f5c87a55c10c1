package plumeline.sight;

import java.util.List;
import plumeline.geom.Point;

/// A run of a body's rim, shoulder or box edge in the picture, all of it either seen or hidden.
///
/// @param points picture points along it, two or more
/// @param showing whether it is seen
public record Edge(List<Point> points, Showing showing) {
    /// Copies the points.
    public Edge {
        points = List.copyOf(points);
    }

    /// Whether a run is seen or lies behind something.
    public enum Showing {
        /// In view.
        SEEN,
        /// Behind its own body or another.
        HIDDEN
    }
}
