package plumeline.light;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Vec;

/// Pieces of circles as corners.
///
/// @param middle its middle, m
/// @param one a direction in its plane, of length 1
/// @param other another in its plane, square to that
/// @param radiusMetres m
record Circle(Vec middle, Vec one, Vec other, double radiusMetres) {
    /// Corners from one angle to another, both counted from the first direction to the second.
    List<Vec> corners(double fromRadians, double toRadians, int pieces) {
        double step = (toRadians - fromRadians) / pieces;
        double outside = Math.sqrt(Math.abs(step) / Math.sin(Math.abs(step)));
        List<Vec> corners = new ArrayList<>(pieces + 1);
        for (int i = 0; i <= pieces; i++) {
            boolean isEnd = i == 0 || i == pieces;
            corners.add(at(fromRadians + i * step, isEnd ? radiusMetres : radiusMetres * outside));
        }
        return corners;
    }

    /// Corners all round.
    List<Vec> corners(int pieces) {
        double step = 2 * Math.PI / pieces;
        double outside = Math.sqrt(step / Math.sin(step));
        List<Vec> corners = new ArrayList<>(pieces);
        for (int i = 0; i < pieces; i++) {
            corners.add(at(i * step, radiusMetres * outside));
        }
        return corners;
    }

    private Vec at(double radians, double radius) {
        return middle.plus(one.times(radius * Math.cos(radians))).plus(other.times(radius * Math.sin(radians)));
    }
}
