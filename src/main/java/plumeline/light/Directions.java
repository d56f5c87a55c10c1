package plumeline.light;

import plumeline.geom.Vec;

/// Checks and makes directions.
final class Directions {
    private static final double NEAR = 1e-9;

    private Directions() {}

    static void check(Vec one) {
        if (!(Math.abs(one.lengthMetres() - 1) < NEAR)) {
            throw new IllegalArgumentException("a direction has length 1, given " + one);
        }
    }

    static void check(Vec one, Vec square) {
        check(one);
        check(square);
        if (!(Math.abs(one.dot(square)) < NEAR)) {
            throw new IllegalArgumentException("directions must be square to each other, given " + one + ", " + square);
        }
    }

    /// Some direction square to another.
    static Vec squareTo(Vec one) {
        Vec other = Math.abs(one.z()) < 0.9 ? Vec.UP : new Vec(1, 0, 0);
        return one.cross(other).unit();
    }
}
