package plumeline.light;

import java.util.List;
import plumeline.geom.Vec;
import plumeline.ranges.Ranges;

/// A flat round that shines to its front.
///
/// @param middle its middle, m
/// @param facing where its front faces, of length 1
/// @param radiusMetres m, > 0
/// @param luminance cd/m², ≥ 0
public record Disc(Vec middle, Vec facing, double radiusMetres, double luminance) implements Emitter {
    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public Disc {
        Ranges.checkPositive(radiusMetres, "radius");
        Ranges.checkNotNegative(luminance, "luminance");
        Directions.check(facing);
    }

    @Override
    public Disc withLuminance(double candelaPerMetre2) {
        return new Disc(middle, facing, radiusMetres, candelaPerMetre2);
    }

    @Override
    public List<Vec> outline(Vec from) {
        if (from.minus(middle).dot(facing) <= 0) {
            return List.of();
        }
        Vec one = Directions.squareTo(facing);
        return new Circle(middle, one, facing.cross(one), radiusMetres).corners(CIRCLE_PIECES);
    }
}
