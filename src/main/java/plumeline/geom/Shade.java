package plumeline.geom;

import java.util.Arrays;

/// One convex part of an outline in the picture: the hull of one or two ellipses, or a convex polygon.
///
/// An ellipse with middle c and matrix S reaches `h(u) = u·c + √(uᵀ S u)` in direction u and touches there at
/// `c + S u / √(uᵀ S u)`; the hull's reach is the larger of both. A pinhole's picture of a disc is such an ellipse, and
/// both common tangents of a frustum's two ellipses pass through the picture of its cone's tip, so that their
/// directions are the roots of a quadratic. Hidden margins need thousands of reaches, each a few multiplications and a
/// root.
///
/// Not shared between threads: [#touch] leaves its answer in fields.
///
/// **Source:** own derivation from the dual conic of a disc, `c cᵀ − p pᵀ − q qᵀ` in the camera's frame.
final class Shade {
    /// Directions looked at evenly all round; a multiple of 8, so that the corners of the four sides are among them.
    static final int EVEN = 16;

    private static final int ROUND_ELLIPSE = 6;

    /// Half-axis that every disc has at least, so that one seen edge-on still encloses something; picture length.
    private static final double LEAST = 1e-9;

    /// One even or special direction: the unit vector, its angle, the reach, and where the outline is touched just
    /// before and just after it as angles rise.
    record Node(double angle, double ux, double uy, double reach, double lx, double ly, double rx, double ry) {}

    /// A stretch of the outline, anticlockwise: a straight side, or an arc of ellipse `of` between two of its own
    /// angles.
    record Run(int of, double from, double to, double ax, double ay, double bx, double by) {
        boolean isSide() {
            return of < 0;
        }
    }

    final int count;
    final double[] cx;
    final double[] cy;
    final double[] sxx;
    final double[] sxy;
    final double[] syy;
    /// All even and special directions by rising angle from −π.
    final Node[] nodes;
    /// The special ones alone: straight sides, and round an ellipse's short axis both ways.
    final Node[] special;

    final Run[] runs;
    /// Where the last [#touch] was.
    double tx;

    double ty;
    private int last;

    private Shade(
            double[] cx, double[] cy, double[] sxx, double[] sxy, double[] syy, double[] sideAngles, int[] sideFrom) {
        count = cx.length;
        this.cx = cx;
        this.cy = cy;
        this.sxx = sxx;
        this.sxy = sxy;
        this.syy = syy;
        special = special(sideAngles, sideFrom);
        nodes = withEven(special);
        runs = runs();
    }

    /// A disc's ellipse: middle x, y, and S's xx, xy, yy.
    static double[] ellipse(Disc d) {
        double a = d.cz() * d.cz() - d.pz() * d.pz() - d.qz() * d.qz();
        double bx = d.cz() * d.cx() - d.pz() * d.px() - d.qz() * d.qx();
        double by = d.cz() * d.cy() - d.pz() * d.py() - d.qz() * d.qy();
        double vx = d.cz() * d.px() - d.pz() * d.cx();
        double vy = d.cz() * d.py() - d.pz() * d.cy();
        double wx = d.cz() * d.qx() - d.qz() * d.cx();
        double wy = d.cz() * d.qy() - d.qz() * d.cy();
        double zx = d.qz() * d.px() - d.pz() * d.qx();
        double zy = d.qz() * d.py() - d.pz() * d.qy();
        double aa = a * a;
        return new double[] {
            bx / a,
            by / a,
            (vx * vx + wx * wx - zx * zx) / aa + LEAST * LEAST,
            (vx * vy + wx * wy - zx * zy) / aa,
            (vy * vy + wy * wy - zy * zy) / aa + LEAST * LEAST
        };
    }

    /// The hull of two ellipses whose common tangents pass through the picture point (tipX : tipY : tipW).
    static Shade hull(double[] one, double[] other, double tipX, double tipY, double tipW) {
        boolean swap = other[2] + other[4] > one[2] + one[4];
        double[] big = swap ? other : one;
        double[] small = swap ? one : other;
        double[] tangents = Tangents.through(big, tipX, tipY, tipW);
        if (tangents.length == 0) {
            return of(big);
        }
        return hull(big, small, tangents);
    }

    /// The hull of two ellipses whose common tangents are found by looking all round.
    static Shade hull(double[] one, double[] other) {
        double[] tangents = Tangents.common(one, other);
        if (tangents.length == 0) {
            return of(Tangents.difference(one, other, 0) > 0 ? one : other);
        }
        return hull(one, other, tangents);
    }

    static Shade of(double[] e) {
        return new Shade(
                new double[] {e[0]},
                new double[] {e[1]},
                new double[] {e[2]},
                new double[] {e[3]},
                new double[] {e[4]},
                new double[0],
                new int[0]);
    }

    private static Shade hull(double[] a, double[] b, double[] tangents) {
        double middle = tangents[0] + (tangents[1] - tangents[0]) / 2;
        int firstFrom = Tangents.difference(a, b, middle) > 0 ? 1 : 0;
        return new Shade(
                new double[] {a[0], b[0]},
                new double[] {a[1], b[1]},
                new double[] {a[2], b[2]},
                new double[] {a[3], b[3]},
                new double[] {a[4], b[4]},
                tangents,
                new int[] {firstFrom, 1 - firstFrom});
    }

    /// A convex polygon, the hull of some points.
    static Shade polygon(double[] x, double[] y) {
        int[] order = Tangents.hull(x, y);
        int n = order.length;
        double[] hx = new double[n];
        double[] hy = new double[n];
        for (int i = 0; i < n; i++) {
            hx[i] = x[order[i]];
            hy[i] = y[order[i]];
        }
        double[] angles = new double[n];
        int first = 0;
        for (int i = 0; i < n; i++) {
            int j = i + 1 == n ? 0 : i + 1;
            angles[i] = Math.atan2(hx[i] - hx[j], hy[j] - hy[i]);
            first = angles[i] < angles[first] ? i : first;
        }
        double[] sorted = new double[n];
        int[] from = new int[n];
        for (int i = 0; i < n; i++) {
            from[i] = (first + i) % n;
            sorted[i] = angles[from[i]];
        }
        double[] none = new double[0];
        return new Shade(hx, hy, none, none, none, sorted, from);
    }

    boolean isPolygon() {
        return sxx.length == 0;
    }

    private Node[] special(double[] sideAngles, int[] sideFrom) {
        Node[] found = new Node[sideAngles.length + ROUND_ELLIPSE * sxx.length];
        int n = 0;
        for (int i = 0; i < sideAngles.length; i++) {
            found[n++] = side(sideAngles[i], sideFrom[i], sideFrom[i] + 1 == count ? 0 : sideFrom[i] + 1);
        }
        for (int i = 0; i < sxx.length; i++) {
            // Across the long axis, and halfway round from there to its ends: a flat ellipse turns fastest between
            // them.
            double across = (Math.atan2(2 * sxy[i], sxx[i] - syy[i]) + Math.PI) / 2;
            double half = (sxx[i] + syy[i]) / 2;
            double spread = Math.sqrt((sxx[i] - syy[i]) * (sxx[i] - syy[i]) / 4 + sxy[i] * sxy[i]);
            double off = Math.atan2(Math.sqrt(Math.max(0, half - spread)), Math.sqrt(half + spread));
            for (int k = 0; k < ROUND_ELLIPSE; k++) {
                double angle = across + (k % 3 - 1) * off + Math.floorDiv(k, 3) * Math.PI;
                found[n++] = node(Math.IEEEremainder(angle, 2 * Math.PI));
            }
        }
        if (!isPolygon()) {
            Arrays.sort(found, (a, b) -> Double.compare(a.angle, b.angle));
        }
        return found;
    }

    private Node[] withEven(Node[] others) {
        Node[] all = Arrays.copyOf(others, others.length + EVEN);
        for (int i = 0; i < EVEN; i++) {
            all[others.length + i] = node(-Math.PI + 2 * Math.PI * i / EVEN);
        }
        Arrays.sort(all, (a, b) -> Double.compare(a.angle, b.angle));
        return all;
    }

    private Node node(double angle) {
        double ux = Math.cos(angle);
        double uy = Math.sin(angle);
        double reach = touch(ux, uy);
        return new Node(angle, ux, uy, reach, tx, ty, tx, ty);
    }

    private Node side(double angle, int from, int to) {
        double ux = Math.cos(angle);
        double uy = Math.sin(angle);
        touchOn(from, ux, uy);
        double lx = tx;
        double ly = ty;
        touchOn(to, ux, uy);
        return new Node(angle, ux, uy, ux * lx + uy * ly, lx, ly, tx, ty);
    }

    private Run[] runs() {
        if (isPolygon()) {
            Run[] sides = new Run[count];
            for (int i = 0; i < count; i++) {
                int j = i + 1 == count ? 0 : i + 1;
                sides[i] = new Run(-1, 0, 1, cx[i], cy[i], cx[j], cy[j]);
            }
            return sides;
        }
        if (count == 1) {
            return new Run[] {new Run(0, -Math.PI, Math.PI, 0, 0, 0, 0)};
        }
        Node[] sides = new Node[2];
        int n = 0;
        for (Node node : special) {
            if (node.lx != node.rx || node.ly != node.ry) {
                sides[n++] = node;
            }
        }
        Run[] all = new Run[4];
        for (int i = 0; i < 2; i++) {
            Node side = sides[i];
            Node next = sides[1 - i];
            int on = onWhich(side);
            double from = ownAngle(on, side.ux, side.uy);
            double to = ownAngle(on, next.ux, next.uy);
            all[2 * i] = new Run(-1, 0, 1, side.lx, side.ly, side.rx, side.ry);
            all[2 * i + 1] = new Run(on, from, to < from ? to + 2 * Math.PI : to, 0, 0, 0, 0);
        }
        return all;
    }

    private int onWhich(Node side) {
        touchOn(0, side.ux, side.uy);
        return Math.abs(tx - side.rx) + Math.abs(ty - side.ry) < Math.abs(tx - side.lx) + Math.abs(ty - side.ly)
                ? 0
                : 1;
    }

    /// The angle a of the ellipse's own frame at which it is touched in a direction; see [#at].
    private double ownAngle(int i, double ux, double uy) {
        double a = Math.sqrt(sxx[i]);
        double b = sxy[i] / a;
        double c = Math.sqrt(Math.max(0, syy[i] - b * b));
        return Math.atan2(c * uy, a * ux + b * uy);
    }

    /// Goes to a place of a run: a share of a side, or an ellipse's own angle.
    void at(Run run, double where) {
        if (run.isSide()) {
            tx = run.ax + where * (run.bx - run.ax);
            ty = run.ay + where * (run.by - run.ay);
            return;
        }
        int i = run.of;
        double a = Math.sqrt(sxx[i]);
        double b = sxy[i] / a;
        double c = Math.sqrt(Math.max(0, syy[i] - b * b));
        double cos = Math.cos(where);
        tx = cx[i] + a * cos;
        ty = cy[i] + b * cos + c * Math.sin(where);
    }

    /// How far the part reaches in a direction; grows with the direction's length.
    double reach(double ux, double uy) {
        if (isPolygon()) {
            climb(ux, uy);
            return ux * cx[last] + uy * cy[last];
        }
        double best = reachOf(0, ux, uy);
        return count == 1 ? best : Math.max(best, reachOf(1, ux, uy));
    }

    private double reachOf(int i, double ux, double uy) {
        return ux * cx[i] + uy * cy[i] + Math.sqrt(ux * ux * sxx[i] + 2 * ux * uy * sxy[i] + uy * uy * syy[i]);
    }

    /// The reach, and its touching point in `tx`, `ty`.
    double touch(double ux, double uy) {
        if (isPolygon()) {
            climb(ux, uy);
            tx = cx[last];
            ty = cy[last];
            return ux * tx + uy * ty;
        }
        double best = reachOf(0, ux, uy);
        int on = 0;
        if (count == 2) {
            double other = reachOf(1, ux, uy);
            if (other > best) {
                best = other;
                on = 1;
            }
        }
        touchOn(on, ux, uy);
        return best;
    }

    private void touchOn(int i, double ux, double uy) {
        tx = cx[i];
        ty = cy[i];
        if (isPolygon()) {
            return;
        }
        double gx = sxx[i] * ux + sxy[i] * uy;
        double gy = sxy[i] * ux + syy[i] * uy;
        double root = Math.sqrt(ux * gx + uy * gy);
        tx += gx / root;
        ty += gy / root;
    }

    /// Walks to the farthest corner from the last one: the reach has one top round a convex polygon.
    private void climb(double ux, double uy) {
        int n = count;
        double here = ux * cx[last] + uy * cy[last];
        boolean up = true;
        for (int steps = 0; steps < 2 * n; steps++) {
            int to = up ? (last + 1 == n ? 0 : last + 1) : (last == 0 ? n - 1 : last - 1);
            double there = ux * cx[to] + uy * cy[to];
            if (there > here) {
                last = to;
                here = there;
            } else if (up && steps == 0) {
                up = false;
            } else {
                return;
            }
        }
    }

    /// Whether a point lies inside by more than a slack.
    boolean holds(double x, double y, double slack) {
        if (isPolygon()) {
            for (Node side : special) {
                if (side.ux * x + side.uy * y > side.reach - slack) {
                    return false;
                }
            }
            return true;
        }
        if (isInEllipse(0, x, y, slack)) {
            return true;
        }
        return count == 2 && (isInEllipse(1, x, y, slack) || isBetween(x, y, slack));
    }

    private boolean isInEllipse(int i, double x, double y, double slack) {
        double qx = x - cx[i];
        double qy = y - cy[i];
        double gx = syy[i] * qx - sxy[i] * qy;
        double gy = sxx[i] * qy - sxy[i] * qx;
        double beyond = qx * gx + qy * gy - (sxx[i] * syy[i] - sxy[i] * sxy[i]);
        return beyond < 0 && beyond < -2 * slack * Math.sqrt(gx * gx + gy * gy);
    }

    private boolean isBetween(double x, double y, double slack) {
        for (int i = 0; i < 4; i += 2) {
            Run side = runs[i];
            Run next = runs[2 - i];
            if (!isLeft(side.ax, side.ay, side.bx, side.by, x, y, slack)
                    || !isLeft(side.bx, side.by, next.ax, next.ay, x, y, 0)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isLeft(double ax, double ay, double bx, double by, double x, double y, double slack) {
        double ex = bx - ax;
        double ey = by - ay;
        return ex * (y - ay) - ey * (x - ax) > slack * Math.sqrt(ex * ex + ey * ey);
    }
}
