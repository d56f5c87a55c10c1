package plumeline.geom;

import java.util.ArrayList;
import java.util.List;

/// The shortest way between two convex parts, by walking the difference of both towards the origin on simplexes.
///
/// **Source:** E. G. Gilbert, D. W. Johnson and S. S. Keerthi, "A fast procedure for computing the distance between
/// complex objects in three-dimensional space", IEEE Journal of Robotics and Automation 4 (1988), 193–203. From memory;
/// written anew.
final class Closest {
    /// Parts nearer than this count as touching.
    static final double TOUCHING_METRES = 1e-9;

    private static final int MOST_STEPS = 64;
    private static final double RELATIVE = 1e-12;

    private Closest() {}

    /// When the walk may end.
    private enum Until {
        /// The shortest way is found.
        SHORTEST,
        /// A plane is found that parts them.
        PARTED
    }

    /// The shortest way from the other to the one; zero where they touch or overlap.
    static Vec apart(Lump one, Lump other) {
        return walk(one, other, Until.SHORTEST);
    }

    /// Whether they touch or overlap.
    static boolean meet(Lump one, Lump other) {
        return walk(one, other, Until.PARTED).equals(Vec.ZERO);
    }

    private static Vec walk(Lump one, Lump other, Until until) {
        Vec way = one.middle().minus(other.middle());
        if (way.lengthMetres() < TOUCHING_METRES) {
            return Vec.ZERO;
        }
        List<Vec> simplex = new ArrayList<>(4);
        for (int step = 0; step < MOST_STEPS; step++) {
            Vec back = way.times(-1);
            Vec next = one.farthest(back).minus(other.farthest(way));
            if (until == Until.PARTED && way.dot(next) > TOUCHING_METRES * way.lengthMetres()) {
                return way;
            }
            double square = way.dot(way);
            if (step > 0 && square - way.dot(next) <= RELATIVE * square) {
                return way;
            }
            simplex.add(next);
            Vec nearest = nearest(simplex);
            if (nearest.lengthMetres() < TOUCHING_METRES) {
                return Vec.ZERO;
            }
            if (step > 0 && nearest.dot(nearest) >= square) {
                return way;
            }
            way = nearest;
        }
        return way;
    }

    /// The point of a simplex nearest to the origin; the simplex is cut down to the corners that carry it.
    private static Vec nearest(List<Vec> simplex) {
        List<Vec> best = List.of();
        Vec nearest = Vec.ZERO;
        double least = Double.POSITIVE_INFINITY;
        int count = simplex.size();
        for (int mask = 1; mask < 1 << count; mask++) {
            List<Vec> corners = new ArrayList<>(4);
            for (int i = 0; i < count; i++) {
                if ((mask & (1 << i)) != 0) {
                    corners.add(simplex.get(i));
                }
            }
            double[] weights = weights(corners);
            if (weights.length == 0) {
                continue;
            }
            Vec point = Vec.ZERO;
            for (int i = 0; i < weights.length; i++) {
                point = point.plus(corners.get(i).times(weights[i]));
            }
            double square = point.dot(point);
            if (square < least) {
                least = square;
                nearest = point;
                best = corners;
            }
        }
        List<Vec> kept = List.copyOf(best);
        simplex.clear();
        simplex.addAll(kept);
        return nearest;
    }

    /// Weights of the point nearest to the origin on the flat through the corners; empty where it lies outside of them.
    private static double[] weights(List<Vec> corners) {
        Vec a = corners.getFirst();
        int n = corners.size() - 1;
        double[][] matrix = new double[n][n + 1];
        for (int i = 0; i < n; i++) {
            Vec ei = corners.get(i + 1).minus(a);
            for (int j = 0; j < n; j++) {
                matrix[i][j] = ei.dot(corners.get(j + 1).minus(a));
            }
            matrix[i][n] = -ei.dot(a);
        }
        if (!Equations.solve(matrix)) {
            return new double[0];
        }
        double[] weights = new double[n + 1];
        weights[0] = 1;
        for (int i = 0; i < n; i++) {
            weights[i + 1] = matrix[i][n];
            weights[0] -= matrix[i][n];
        }
        for (double weight : weights) {
            if (weight < 0) {
                return new double[0];
            }
        }
        return weights;
    }
}
