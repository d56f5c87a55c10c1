package plumeline.sight;

import java.util.List;
import plumeline.geom.Vec;

/// A round cone about an outline as seen from a place.
///
/// @param from the place, m
/// @param axis where its middle is, of length 1
/// @param radians how wide it opens from there, rad
public record Cone(Vec from, Vec axis, double radians) {
    /// Makes the cone about an outline's corners.
    ///
    /// @param from the place, m, elsewhere than the corners
    /// @param outline the corners, m, one at least
    /// @return the cone
    public static Cone of(Vec from, List<Vec> outline) {
        Vec sum = Vec.ZERO;
        for (Vec corner : outline) {
            sum = sum.plus(corner.minus(from).unit());
        }
        Vec axis = sum.unit();
        double widest = 0;
        for (Vec corner : outline) {
            widest = Math.max(
                    widest, Math.acos(Math.clamp(axis.dot(corner.minus(from).unit()), -1, 1)));
        }
        return new Cone(from, axis, widest);
    }

    /// Tells whether anything of a ball may be in it.
    ///
    /// @param middle the ball's middle, m
    /// @param ballMetres its radius, m
    /// @return false where nothing of it is
    public boolean mayMeet(Vec middle, double ballMetres) {
        Vec way = middle.minus(from);
        double far = way.lengthMetres();
        return far <= ballMetres
                || Math.acos(Math.clamp(axis.dot(way) / far, -1, 1)) < radians + Math.asin(ballMetres / far);
    }
}
