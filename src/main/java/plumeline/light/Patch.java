package plumeline.light;

import plumeline.geom.Vec;

/// A small flat piece of a surface, on which light falls.
///
/// @param place where it is, m
/// @param facing away from the surface, of length 1
public record Patch(Vec place, Vec facing) {
    /// Checks the direction.
    ///
    /// @throws IllegalArgumentException for a direction whose length isn't 1
    public Patch {
        Directions.check(facing);
    }
}
