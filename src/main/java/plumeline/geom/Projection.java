package plumeline.geom;

/// A way of seeing: from places in the table frame to points of the picture.
///
/// Open on purpose, not sealed: a view through a tank wall lives with the optics. Must be pure, continuous, and keep
/// near things near; what is straight may come out slightly bent.
public interface Projection {
    /// Gives the lens point and where it looks.
    ///
    /// @return the aim
    Aim aim();

    /// Gives where a place shows in the picture.
    ///
    /// @param place a place of depth over 0, table frame, metres
    /// @return the picture point
    Point project(Vec place);

    /// Gives the depth of a place along the optical axis, as it truly stands.
    ///
    /// @param place a place, table frame, metres
    /// @return depth from the lens point, metres; 0 or less is not seen
    double depth(Vec place);
}
