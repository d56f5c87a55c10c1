package plumeline.mirror;

import java.util.Optional;
import plumeline.geom.Vec;
import plumeline.ranges.Ranges;

/// A flat rectangle that mirrors to its front: a pane, a label, a side of a carton.
///
/// @param middle its middle, m
/// @param facing where its front faces, of length 1
/// @param right along its width, of length 1, square to where it faces
/// @param widthMetres along that, m, > 0
/// @param heightMetres square to both, m, > 0
public record FlatMirror(Vec middle, Vec facing, Vec right, double widthMetres, double heightMetres) {
    private static final double NEAR = 1e-9;

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public FlatMirror {
        Ranges.checkPositive(widthMetres, "width");
        Ranges.checkPositive(heightMetres, "height");
        Ranges.check(Math.abs(facing.lengthMetres() - 1) < NEAR, "length of a direction", facing.lengthMetres(), "1");
        Ranges.check(Math.abs(right.lengthMetres() - 1) < NEAR, "length of a direction", right.lengthMetres(), "1");
        Ranges.check(Math.abs(facing.dot(right)) < NEAR, "share along another direction", facing.dot(right), "0");
    }

    /// Gives what points up along its height.
    ///
    /// @return of length 1
    public Vec up() {
        return facing.cross(right);
    }

    /// Finds where a place is seen in it.
    ///
    /// **Source:** law of reflection: the place's image lies as far behind the plane.
    ///
    /// @param camera who looks, m
    /// @param place what is seen, m
    /// @return the spot; empty where one of them isn't before it, or the way passes beside it
    public Optional<Spot> findSpot(Vec camera, Vec place) {
        return findSpot(camera, place, 0);
    }

    Optional<Spot> findSpot(Vec camera, Vec place, int piece) {
        return meet(camera, place, middle, facing).filter(this::holds).map(at -> Spot.of(at, facing, camera, piece));
    }

    private boolean holds(Vec at) {
        Vec from = at.minus(middle);
        return Math.abs(from.dot(right)) <= widthMetres / 2 && Math.abs(from.dot(up())) <= heightMetres / 2;
    }

    /// Where an endless plane mirrors one place to another.
    static Optional<Vec> meet(Vec camera, Vec place, Vec through, Vec facing) {
        double one = camera.minus(through).dot(facing);
        double other = place.minus(through).dot(facing);
        if (!(one > 0 && other > 0)) {
            return Optional.empty();
        }
        Vec image = place.minus(facing.times(2 * other));
        return Optional.of(camera.plus(image.minus(camera).times(one / (one + other))));
    }
}
