package plumeline.sight;

import java.util.Arrays;
import java.util.Comparator;

/// Common tangents of two ellipses, each given as middle x, y and matrix xx, xy, yy; and the hull of points.
final class Tangents {
    private static final int LOOKS = 32;
    private static final int MOST_STEPS = 80;
    /// A tip as far away as this is a direction: the tangents are then told apart by how they were made.
    private static final double SIDEWAYS = 1e-11;

    private static final double STRAIGHT = 1e-14;
    private static final double[] NONE = {};

    private Tangents() {}

    /// Outward directions of both tangents of an ellipse through (x : y : w), as x and y of the first and of the second
    /// by rising angle from −π; none where that point is inside.
    ///
    /// With `p = (x, y) − w c` a tangent's direction u has `u·p = w √(uᵀ S u)`, so `uᵀ (p pᵀ − w² S) u = 0`.
    static double[] through(double[] e, double x, double y, double w) {
        double size = Math.sqrt(x * x + y * y + w * w);
        double tx = x / size;
        double ty = y / size;
        double tw = w / size;
        double px = tx - tw * e[0];
        double py = ty - tw * e[1];
        double ww = tw * tw;
        double mxx = px * px - ww * e[2];
        double mxy = px * py - ww * e[3];
        double myy = py * py - ww * e[4];
        double across = py * py * e[2] - 2 * px * py * e[3] + px * px * e[4];
        double minusDet = ww * (across - ww * (e[2] * e[4] - e[3] * e[3]));
        if (!(minusDet >= 0) || px * px + py * py == 0) {
            return NONE;
        }
        double half = (mxx + myy) / 2;
        double lean = (mxx - myy) / 2;
        double spread = Math.sqrt(lean * lean + mxy * mxy);
        double high = half >= 0 ? half + spread : minusDet / (spread - half);
        double low = half >= 0 ? minusDet / (half + spread) : spread - half;
        double vx = halfCosine(lean, mxy, spread);
        double vy = halfSine(lean, mxy, spread);
        double b = Math.sqrt(Math.max(0, high));
        double a = (vx * px + vy * py) * w < 0 ? -Math.sqrt(low) : Math.sqrt(low);
        double scale = 1 / Math.sqrt(a * a + b * b);
        double oneX = scale * (a * vx - b * vy);
        double oneY = scale * (a * vy + b * vx);
        double otherX = scale * (a * vx + b * vy);
        double otherY = scale * (a * vy - b * vx);
        double one = outward(e, tx, ty, tw, oneX, oneY);
        double other = outward(e, tx, ty, tw, otherX, otherY);
        return rising(one * oneX, one * oneY, other * otherX, other * otherY);
    }

    /// Two directions by rising angle from −π.
    private static double[] rising(double ax, double ay, double bx, double by) {
        return Nodes.key(ax, ay) < Nodes.key(bx, by) ? new double[] {ax, ay, bx, by} : new double[] {bx, by, ax, ay};
    }

    /// The cosine, 0 or more, of half the angle of (lean, rise), `size` long; 1 where that has no length.
    static double halfCosine(double lean, double rise, double size) {
        if (lean >= 0) {
            return size > 0 ? Math.sqrt((1 + lean / size) / 2) : 1;
        }
        return Math.abs(rise) / (2 * size) / Math.sqrt((1 - lean / size) / 2);
    }

    /// The sine of half that angle.
    static double halfSine(double lean, double rise, double size) {
        if (lean >= 0) {
            return size > 0 ? rise / (2 * size) / Math.sqrt((1 + lean / size) / 2) : 0;
        }
        return Math.copySign(Math.sqrt((1 - lean / size) / 2), rise);
    }

    /// 1 or −1, times which a direction or its opposite is the one whose tangent line passes through the point.
    private static double outward(double[] e, double x, double y, double w, double ux, double uy) {
        double off = ux * (x - w * e[0]) + uy * (y - w * e[1]);
        double root = w * Math.sqrt(ux * ux * e[2] + 2 * ux * uy * e[3] + uy * uy * e[4]);
        return Math.abs(root) < SIDEWAYS || Math.abs(off - root) <= Math.abs(off + root) ? 1 : -1;
    }

    /// Directions in which both ellipses reach equally far, as [#through] gives them, found by looking all round; none
    /// where one holds the other.
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
        return n < 2 ? NONE : rising(Math.cos(found[0]), Math.sin(found[0]), Math.cos(found[1]), Math.sin(found[1]));
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

    private static double difference(double[] one, double[] other, double angle) {
        return difference(one, other, Math.cos(angle), Math.sin(angle));
    }

    /// By how much the one reaches farther than the other in a direction.
    static double difference(double[] one, double[] other, double ux, double uy) {
        return reach(one, ux, uy) - reach(other, ux, uy);
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
            double fx = x[next] - x[a];
            double fy = y[next] - y[a];
            // A corner that stands out no more than rounding does is none.
            if ((x[b] - x[a]) * fy - (y[b] - y[a]) * fx > STRAIGHT * Math.sqrt(fx * fx + fy * fy)) {
                break;
            }
            n--;
        }
        chain[n] = next;
        return n + 1;
    }
}
