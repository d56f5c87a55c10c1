package plumeline.geom;

import java.util.Arrays;
import java.util.Comparator;

/// Common tangents of two ellipses, each given as middle x, y and matrix xx, xy, yy; and the hull of points.
final class Tangents {
    private static final int LOOKS = 32;
    private static final int MOST_STEPS = 80;
    /// A tip as far away as this is a direction: the tangents are then told apart by how they were made.
    private static final double SIDEWAYS = 1e-11;

    private Tangents() {}

    /// Angles, rising from −π, of the outward directions of both tangents of an ellipse through (x : y : w); none where
    /// that point is inside.
    ///
    /// With `p = (x, y) − w c` a tangent's direction u has `u·p = w √(uᵀ S u)`, so `uᵀ (p pᵀ − w² S) u = 0`.
    static double[] through(double[] e, double x, double y, double w) {
        double size = Math.sqrt(x * x + y * y + w * w);
        double px = x / size - w / size * e[0];
        double py = y / size - w / size * e[1];
        double ww = (w / size) * (w / size);
        double mxx = px * px - ww * e[2];
        double mxy = px * py - ww * e[3];
        double myy = py * py - ww * e[4];
        double across = py * py * e[2] - 2 * px * py * e[3] + px * px * e[4];
        double minusDet = ww * (across - ww * (e[2] * e[4] - e[3] * e[3]));
        if (!(minusDet >= 0) || px * px + py * py == 0) {
            return new double[0];
        }
        double half = (mxx + myy) / 2;
        double spread = Math.sqrt((mxx - myy) * (mxx - myy) / 4 + mxy * mxy);
        double high = half >= 0 ? half + spread : minusDet / (spread - half);
        double low = half >= 0 ? minusDet / (half + spread) : spread - half;
        double turn = Math.atan2(2 * mxy, mxx - myy) / 2;
        double vx = Math.cos(turn);
        double vy = Math.sin(turn);
        double a = Math.sqrt(low);
        double b = Math.sqrt(Math.max(0, high));
        double sign = (vx * px + vy * py) * w < 0 ? -1 : 1;
        double one =
                outward(e, x / size, y / size, w / size, Math.atan2(sign * a * vy + b * vx, sign * a * vx - b * vy));
        double other =
                outward(e, x / size, y / size, w / size, Math.atan2(sign * a * vy - b * vx, sign * a * vx + b * vy));
        return one < other ? new double[] {one, other} : new double[] {other, one};
    }

    /// The one of both opposite directions whose tangent line passes through the point.
    private static double outward(double[] e, double x, double y, double w, double angle) {
        double ux = Math.cos(angle);
        double uy = Math.sin(angle);
        double off = ux * (x - w * e[0]) + uy * (y - w * e[1]);
        double root = w * Math.sqrt(ux * ux * e[2] + 2 * ux * uy * e[3] + uy * uy * e[4]);
        if (Math.abs(root) < SIDEWAYS || Math.abs(off - root) <= Math.abs(off + root)) {
            return angle;
        }
        return angle > 0 ? angle - Math.PI : angle + Math.PI;
    }

    /// Angles at which both ellipses reach equally far, found by looking all round; none where one holds the other.
    static double[] common(double[] one, double[] other) {
        double[] found = new double[2];
        int n = 0;
        double before = difference(one, other, -Math.PI);
        for (int i = 1; i <= LOOKS && n < 2; i++) {
            double from = -Math.PI + 2 * Math.PI * (i - 1) / LOOKS;
            double to = -Math.PI + 2 * Math.PI * i / LOOKS;
            double after = difference(one, other, to);
            if (before < 0 != after < 0) {
                found[n++] = root(one, other, from, to, before < 0);
            }
            before = after;
        }
        return n < 2 ? new double[0] : found;
    }

    private static double root(double[] one, double[] other, double from, double to, boolean rises) {
        double low = from;
        double high = to;
        for (int i = 0; i < MOST_STEPS && high - low > 1e-15; i++) {
            double middle = (low + high) / 2;
            if (difference(one, other, middle) < 0 == rises) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /// By how much the one reaches farther than the other.
    static double difference(double[] one, double[] other, double angle) {
        return reach(one, Math.cos(angle), Math.sin(angle)) - reach(other, Math.cos(angle), Math.sin(angle));
    }

    private static double reach(double[] e, double ux, double uy) {
        return ux * e[0] + uy * e[1] + Math.sqrt(ux * ux * e[2] + 2 * ux * uy * e[3] + uy * uy * e[4]);
    }

    /// Corners of the hull of points, anticlockwise, without those on a straight line between others.
    ///
    /// **Source:** A. M. Andrew, "Another efficient algorithm for convex hulls in two dimensions", Information
    /// Processing Letters 9 (1979), 216–219. From memory; written anew.
    static int[] hull(double[] x, double[] y) {
        Integer[] order = new Integer[x.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble((Integer i) -> x[i]).thenComparingDouble(i -> y[i]));
        int[] chain = new int[2 * x.length];
        int n = 0;
        for (int i = 0; i < order.length; i++) {
            n = push(chain, n, 0, order[i], x, y);
        }
        int lower = n - 1;
        for (int i = order.length - 2; i >= 0; i--) {
            n = push(chain, n, lower, order[i], x, y);
        }
        return Arrays.copyOf(chain, n - 1);
    }

    private static int push(int[] chain, int size, int floor, int next, double[] x, double[] y) {
        int n = size;
        while (n >= floor + 2) {
            int a = chain[n - 2];
            int b = chain[n - 1];
            double turn = (x[b] - x[a]) * (y[next] - y[a]) - (y[b] - y[a]) * (x[next] - x[a]);
            if (turn > 1e-18) {
                break;
            }
            n--;
        }
        chain[n] = next;
        return n + 1;
    }
}
