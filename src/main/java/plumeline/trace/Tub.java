package plumeline.trace;

import plumeline.geom.Bounds;
import plumeline.geom.Vec;

/// A basin's surfaces: its panes from outside, from inside, and its water.
final class Tub {
    private final double[] outer;
    private final double[] inner;
    private final double level;
    private final boolean isWet;

    Tub(Basin basin) {
        outer = numbers(basin.outside());
        inner = numbers(basin.inside());
        level = basin.waterLineMetres();
        isWet = level > basin.inside().low().z();
    }

    private static double[] numbers(Bounds bounds) {
        Vec low = bounds.low();
        Vec high = bounds.high();
        return new double[] {low.x(), low.y(), low.z(), high.x(), high.y(), high.z()};
    }

    void meets(double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        if (!box(outer, Hit.What.OUTER, ox, oy, oz, dx, dy, dz, hit)) {
            return;
        }
        box(inner, Hit.What.INNER, ox, oy, oz, dx, dy, dz, hit);
        if (isWet && level < inner[5]) {
            double t = (level - oz) / dz;
            if (t > Meets.NEAR_METRES && t < hit.t && isOverInside(ox + t * dx, oy + t * dy)) {
                hit.t = t;
                hit.what = Hit.What.WATER;
                hit.face(0, 0, 1);
            }
        }
    }

    private boolean isOverInside(double x, double y) {
        return x > inner[0] && x < inner[3] && y > inner[1] && y < inner[4];
    }

    /// Tries a box whose top is open over the inside.
    ///
    /// @return whether the ray's line comes into it
    private boolean box(
            double[] box, Hit.What what, double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        double from = Double.NEGATIVE_INFINITY;
        double to = Double.POSITIVE_INFINITY;
        int in = 0;
        int out = 0;
        for (int i = 0; i < 3; i++) {
            double o = i == 0 ? ox : i == 1 ? oy : oz;
            double d = i == 0 ? dx : i == 1 ? dy : dz;
            double one = (box[i] - o) / d;
            double other = (box[i + 3] - o) / d;
            int low = d >= 0 ? i : i + 3;
            double first = Math.min(one, other);
            double second = Math.max(one, other);
            if (first > from) {
                from = first;
                in = low;
            }
            if (second < to) {
                to = second;
                out = low < 3 ? low + 3 : low - 3;
            }
        }
        if (from > to || to < 0) {
            return false;
        }
        if (!met(from, in, what, ox, oy, dx, dy, hit)) {
            met(to, out, what, ox, oy, dx, dy, hit);
        }
        return true;
    }

    private boolean met(
            double t, int face, Hit.What what, double ox, double oy, double dx, double dy, Hit hit) {
        if (!(t > Meets.NEAR_METRES)) {
            return false;
        }
        if (face == 5 && (what == Hit.What.INNER || isOverInside(ox + t * dx, oy + t * dy))) {
            return false;
        }
        if (t < hit.t) {
            hit.t = t;
            hit.what = what;
            double side = face < 3 ? -1 : 1;
            int axis = face % 3;
            hit.face(axis == 0 ? side : 0, axis == 1 ? side : 0, axis == 2 ? side : 0);
        }
        return true;
    }

    /// Whether what is inside is water at a height.
    boolean isWaterAt(double z) {
        return isWet && z < level;
    }

    boolean isInside(double x, double y, double z) {
        return isOverInside(x, y) && z > inner[2] && z < inner[5];
    }

    boolean isWithin(double x, double y, double z) {
        return x > outer[0] && x < outer[3] && y > outer[1] && y < outer[4] && z > outer[2] && z < outer[5];
    }
}
