package plumeline.sight;

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
    private static final double[] NONE = {};

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
    final Nodes nodes;
    /// Straight sides, by rising angle of their outward directions.
    final Run[] sides;
    /// Where the last [#touch] was.
    double tx;

    double ty;
    /// How fast the touching point runs along the outline there as the direction turns: the outline's radius.
    double bend;
    /// Where the last [#touchBoth] was on the other side, and how far the part reaches either way.
    double ox;

    double oy;
    double farthest;
    double oppositeFarthest;
    /// Where in the nodes' order the last point was nearest; see [Contacts#distance].
    int nearest;

    private final int firstFrom;
    private int last;

    /// Side i runs from ellipse or corner `firstFrom + i` to the next.
    private Shade(
            double[] cx,
            double[] cy,
            double[] sxx,
            double[] sxy,
            double[] syy,
            double[] sideX,
            double[] sideY,
            int firstFrom) {
        count = cx.length;
        this.cx = cx;
        this.cy = cy;
        this.sxx = sxx;
        this.sxy = sxy;
        this.syy = syy;
        this.firstFrom = firstFrom;
        nodes = new Nodes(this, sideX, sideY, firstFrom);
        sides = new Run[sideX.length];
        for (int i = 0; i < sides.length; i++) {
            int at = Nodes.EVEN + i;
            sides[i] = new Run(-1, 0, 1, nodes.lx[at], nodes.ly[at], nodes.rx[at], nodes.ry[at]);
        }
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
            return of(Tangents.difference(one, other, 1, 0) > 0 ? one : other);
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
                NONE,
                NONE,
                0);
    }

    private static Shade hull(double[] a, double[] b, double[] tangents) {
        // Halfway round from the first to the second side.
        double middleX = tangents[3] - tangents[1];
        double middleY = tangents[0] - tangents[2];
        return new Shade(
                new double[] {a[0], b[0]},
                new double[] {a[1], b[1]},
                new double[] {a[2], b[2]},
                new double[] {a[3], b[3]},
                new double[] {a[4], b[4]},
                new double[] {tangents[0], tangents[2]},
                new double[] {tangents[1], tangents[3]},
                Tangents.difference(a, b, middleX, middleY) > 0 ? 1 : 0);
    }

    /// A convex polygon, the hull of some points.
    static Shade polygon(double[] x, double[] y) {
        int[] order = Tangents.hull(x, y);
        int n = order.length;
        double[] sideX = new double[n];
        double[] sideY = new double[n];
        int first = 0;
        for (int i = 0; i < n; i++) {
            int from = order[i];
            int to = order[i + 1 == n ? 0 : i + 1];
            double length = Math.hypot(x[to] - x[from], y[to] - y[from]);
            sideX[i] = length > 0 ? (y[to] - y[from]) / length : 1;
            sideY[i] = length > 0 ? (x[from] - x[to]) / length : 0;
            if (Nodes.key(sideX[i], sideY[i]) < Nodes.key(sideX[first], sideY[first])) {
                first = i;
            }
        }
        double[][] all = new double[4][n];
        for (int i = 0; i < n; i++) {
            int at = (first + i) % n;
            all[0][i] = x[order[at]];
            all[1][i] = y[order[at]];
            all[2][i] = sideX[at];
            all[3][i] = sideY[at];
        }
        return new Shade(all[0], all[1], NONE, NONE, NONE, all[2], all[3], 0);
    }

    boolean isPolygon() {
        return sxx.length == 0;
    }

    /// The whole outline, anticlockwise.
    Run[] runs() {
        if (isPolygon()) {
            return sides;
        }
        if (count == 1) {
            return new Run[] {new Run(0, -Math.PI, Math.PI, 0, 0, 0, 0)};
        }
        Run[] all = new Run[4];
        for (int i = 0; i < 2; i++) {
            int on = (firstFrom + i + 1) % 2;
            int side = Nodes.EVEN + i;
            int next = Nodes.EVEN + 1 - i;
            double from = ownAngle(on, nodes.ux[side], nodes.uy[side]);
            double to = ownAngle(on, nodes.ux[next], nodes.uy[next]);
            all[2 * i] = sides[i];
            all[2 * i + 1] = new Run(on, from, to < from ? to + 2 * Math.PI : to, 0, 0, 0, 0);
        }
        return all;
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

    /// Which way and how fast a run goes at a place: in `tx`, `ty`.
    void along(Run run, double where) {
        if (run.isSide()) {
            tx = run.bx - run.ax;
            ty = run.by - run.ay;
            return;
        }
        int i = run.of;
        double a = Math.sqrt(sxx[i]);
        double b = sxy[i] / a;
        double c = Math.sqrt(Math.max(0, syy[i] - b * b));
        double sin = Math.sin(where);
        tx = -a * sin;
        ty = c * Math.cos(where) - b * sin;
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
            bend = 0;
            return ux * tx + uy * ty;
        }
        int on = 0;
        double gx = sxx[0] * ux + sxy[0] * uy;
        double gy = sxy[0] * ux + syy[0] * uy;
        double root = Math.sqrt(ux * gx + uy * gy);
        double best = ux * cx[0] + uy * cy[0] + root;
        if (count == 2) {
            double hx = sxx[1] * ux + sxy[1] * uy;
            double hy = sxy[1] * ux + syy[1] * uy;
            double other = Math.sqrt(ux * hx + uy * hy);
            double reach = ux * cx[1] + uy * cy[1] + other;
            if (reach > best) {
                on = 1;
                best = reach;
                root = other;
                gx = hx;
                gy = hy;
            }
        }
        double inverse = 1 / root;
        tx = cx[on] + gx * inverse;
        ty = cy[on] + gy * inverse;
        bend = (sxx[on] * syy[on] - sxy[on] * sxy[on]) * (inverse * inverse * inverse) * (ux * ux + uy * uy);
        return best;
    }

    /// Where the part is touched just before a direction, in `tx`, `ty`, and just after it, in `ox`, `oy`.
    void touchRound(double ux, double uy) {
        touch(ux, uy);
        ox = tx;
        oy = ty;
        int n = sides.length;
        int first = isPolygon() ? (last == 0 ? n : last) - 1 : 0;
        for (int i = 0; i < 2 && i < n; i++) {
            int at = Nodes.EVEN + (first + i) % n;
            if (Nodes.isSame(nodes.ux[at], nodes.uy[at], ux, uy)) {
                tx = nodes.lx[at];
                ty = nodes.ly[at];
                ox = nodes.rx[at];
                oy = nodes.ry[at];
                return;
            }
        }
    }

    /// The reach in a direction and in the opposite one, and where.
    void touchBoth(double ux, double uy) {
        if (isPolygon()) {
            oppositeFarthest = touch(-ux, -uy);
            ox = tx;
            oy = ty;
            farthest = touch(ux, uy);
            return;
        }
        farthest = Double.NEGATIVE_INFINITY;
        oppositeFarthest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            double gx = sxx[i] * ux + sxy[i] * uy;
            double gy = sxy[i] * ux + syy[i] * uy;
            double root = Math.sqrt(ux * gx + uy * gy);
            double along = ux * cx[i] + uy * cy[i];
            if (along + root > farthest) {
                farthest = along + root;
                tx = cx[i] + gx / root;
                ty = cy[i] + gy / root;
            }
            if (root - along > oppositeFarthest) {
                oppositeFarthest = root - along;
                ox = cx[i] - gx / root;
                oy = cy[i] - gy / root;
            }
        }
    }

    /// Where one ellipse is touched, or a corner.
    void touchOn(int i, double ux, double uy) {
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
            for (int i = Nodes.EVEN; i < Nodes.EVEN + count; i++) {
                if (nodes.ux[i] * x + nodes.uy[i] * y > nodes.reach[i] - slack) {
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

    /// Whether a point lies between both sides, and between both chords that join their ends.
    private boolean isBetween(double x, double y, double slack) {
        if (sides.length == 0) {
            return false;
        }
        for (int i = 0; i < 2; i++) {
            Run side = sides[i];
            Run next = sides[1 - i];
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
        double turn = ex * (y - ay) - ey * (x - ax);
        return turn > 0 && (slack == 0 || turn > slack * Math.sqrt(ex * ex + ey * ey));
    }
}
