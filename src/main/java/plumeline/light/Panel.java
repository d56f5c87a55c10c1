package plumeline.light;

import java.util.List;
import plumeline.geom.Vec;
import plumeline.ranges.Ranges;

/// A flat rectangle that shines to its front: a softbox, a window, a card.
///
/// @param middle its middle, m
/// @param facing where its front faces, of length 1
/// @param right along its width, of length 1, square to where it faces
/// @param widthMetres along that, m, > 0
/// @param heightMetres square to both, m, > 0
/// @param luminance cd/m², ≥ 0
public record Panel(Vec middle, Vec facing, Vec right, double widthMetres, double heightMetres, double luminance)
        implements Emitter {
    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public Panel {
        Ranges.checkPositive(widthMetres, "width");
        Ranges.checkPositive(heightMetres, "height");
        Ranges.checkNotNegative(luminance, "luminance");
        Directions.check(facing, right);
    }

    /// Gives what points up along its height.
    ///
    /// @return of length 1
    public Vec up() {
        return facing.cross(right);
    }

    @Override
    public Panel withLuminance(double candelaPerMetre2) {
        return new Panel(middle, facing, right, widthMetres, heightMetres, candelaPerMetre2);
    }

    @Override
    public List<Vec> outline(Vec from) {
        if (from.minus(middle).dot(facing) <= 0) {
            return List.of();
        }
        Vec across = right.times(widthMetres / 2);
        Vec along = up().times(heightMetres / 2);
        return List.of(
                middle.plus(across).plus(along),
                middle.plus(across).minus(along),
                middle.minus(across).minus(along),
                middle.minus(across).plus(along));
    }
}
