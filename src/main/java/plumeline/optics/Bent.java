package plumeline.optics;

import plumeline.geom.Vec;

/// What a boundary does to a ray.
public sealed interface Bent {
    /// The ray goes on behind the boundary.
    ///
    /// @param direction its direction there, unit vector
    record Passed(Vec direction) implements Bent {}

    /// The ray is totally reflected.
    ///
    /// @param direction its direction back in the first medium, unit vector
    record Reflected(Vec direction) implements Bent {}
}
