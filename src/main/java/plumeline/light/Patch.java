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
        if (!(Math.abs(facing.lengthMetres() - 1) < 1e-9)) {
            throw new IllegalArgumentException("a patch faces along a direction of length 1, given " + facing);
        }
    }
}
