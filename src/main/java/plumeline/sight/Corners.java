package plumeline.sight;

import java.util.Arrays;

/// The inward corners of a union of convex parts: where outlines of two parts cross and no third one covers the place,
/// with both outward directions.
final class Corners {
    private static final double ON = 1e-11;
    private static final int LOOKS = 24;
    private static final double[] COSINES = new double[LOOKS];

    static {
        Arrays.setAll(COSINES, n -> Math.cos(2 * Math.PI * n / LOOKS));
    }

    int count;
    double[] x = new double[16];
    double[] y = new double[16];
    double[] ux = new double[16];
    double[] uy = new double[16];
    double[] vx = new double[16];
    double[] vy = new double[16];
    /// Which two parts cross, a bit for each; parts past the 64th share bits.
    long[] crossing = new long[16];

    private final Shade[] parts;

    Corners(Shade[] parts) {
        this.parts = parts;
        for (int i = 0; i < parts.length; i++) {
            for (int j = i + 1; j < parts.length; j++) {
                if (meet(parts[i], parts[j])) {
                    pair(i, j);
                }
            }
        }
    }

    /// Whether no even direction parts both.
    private static boolean meet(Shade a, Shade b) {
        for (int i = 0; i < Nodes.EVEN; i++) {
            if (a.nodes.reach[i] + b.nodes.reach[(i + Nodes.EVEN / 2) % Nodes.EVEN] < 0) {
                return false;
            }
        }
        return true;
    }

    private void pair(int i, int j) {
        Shade a = parts[i];
        Shade b = parts[j];
        for (Shade.Run side : a.sides) {
            sides(i, j, side, b);
            ellipses(i, j, side, b, false);
        }
        for (Shade.Run side : b.sides) {
            ellipses(i, j, side, a, true);
        }
        for (int k = 0; k < a.sxx.length; k++) {
            for (int l = 0; l < b.sxx.length; l++) {
                arcs(i, j, k, l);
            }
        }
    }

    private void sides(int i, int j, Shade.Run one, Shade b) {
        double ex = one.bx() - one.ax();
        double ey = one.by() - one.ay();
        for (Shade.Run other : b.sides) {
            double fx = other.bx() - other.ax();
            double fy = other.by() - other.ay();
            double det = ex * fy - ey * fx;
            double wx = other.ax() - one.ax();
            double wy = other.ay() - one.ay();
            double s = (wx * fy - wy * fx) / det;
            double t = (wx * ey - wy * ex) / det;
            if (s >= -1e-9 && s <= 1 + 1e-9 && t >= -1e-9 && t <= 1 + 1e-9) {
                add(i, j, one.ax() + s * ex, one.ay() + s * ey, ey, -ex, fy, -fx);
            }
        }
    }

    /// Where a side meets the ellipses of a part; `swap` where the side is the second part's.
    private void ellipses(int i, int j, Shade.Run side, Shade on, boolean swap) {
        double ex = side.bx() - side.ax();
        double ey = side.by() - side.ay();
        for (int k = 0; k < on.sxx.length; k++) {
            double qx = side.ax() - on.cx[k];
            double qy = side.ay() - on.cy[k];
            double gx = on.syy[k] * ex - on.sxy[k] * ey;
            double gy = on.sxx[k] * ey - on.sxy[k] * ex;
            double a = ex * gx + ey * gy;
            double b = qx * gx + qy * gy;
            double c = on.syy[k] * qx * qx
                    - 2 * on.sxy[k] * qx * qy
                    + on.sxx[k] * qy * qy
                    - (on.sxx[k] * on.syy[k] - on.sxy[k] * on.sxy[k]);
            double rest = b * b - a * c;
            if (!(rest >= 0) || a == 0) {
                continue;
            }
            double q = -(b + Math.copySign(Math.sqrt(rest), b));
            for (int root = 0; root < 2; root++) {
                double share = root == 0 ? q / a : c / q;
                if (share >= -1e-9 && share <= 1 + 1e-9) {
                    double px = side.ax() + share * ex;
                    double py = side.ay() + share * ey;
                    double nx = normalX(on, k, px, py);
                    double ny = normalY(on, k, px, py);
                    if (swap) {
                        add(i, j, px, py, nx, ny, ey, -ex);
                    } else {
                        add(i, j, px, py, ey, -ex, nx, ny);
                    }
                }
            }
        }
    }

    private static double normalX(Shade part, int k, double px, double py) {
        return part.syy[k] * (px - part.cx[k]) - part.sxy[k] * (py - part.cy[k]);
    }

    private static double normalY(Shade part, int k, double px, double py) {
        return part.sxx[k] * (py - part.cy[k]) - part.sxy[k] * (px - part.cx[k]);
    }

    /// Where ellipse k of one part crosses ellipse l of another: by looking round the first, and closer where it nearly
    /// touches.
    private void arcs(int i, int j, int k, int l) {
        Shade a = parts[i];
        Shade b = parts[j];
        if (isSame(a, k, b, l)
                || Math.abs(a.cx[k] - b.cx[l]) > Math.sqrt(a.sxx[k]) + Math.sqrt(b.sxx[l])
                || Math.abs(a.cy[k] - b.cy[l]) > Math.sqrt(a.syy[k]) + Math.sqrt(b.syy[l])) {
            return;
        }
        double step = 2 * Math.PI / LOOKS;
        Shade.Run round = new Shade.Run(k, 0, 2 * Math.PI, 0, 0, 0, 0);
        double[] looks = looks(a, k, b, l);
        double two = looks[LOOKS - 2];
        double one = looks[LOOKS - 1];
        for (int n = 0; n < LOOKS; n++) {
            double here = looks[n];
            if (one < 0 != here < 0) {
                cross(i, j, k, l, round, (n - 1) * step, n * step);
            }
            double bend = two - 2 * one + here;
            boolean isTurn = (two - one) * (here - one) > 0;
            if (isTurn && bend * one > 0 && (one < 0) == (here < 0) && (one < 0) == (two < 0)) {
                double at = (n - 1) * step + step * (two - here) / (2 * bend);
                if (beyond(a, round, at, b, l) < 0 != one < 0) {
                    cross(i, j, k, l, round, (n - 2) * step, at);
                    cross(i, j, k, l, round, at, n * step);
                }
            }
            two = one;
            one = here;
        }
    }

    /// How far beyond ellipse l evenly many places of ellipse k are; see [#beyond].
    private static double[] looks(Shade a, int k, Shade b, int l) {
        double wide = Math.sqrt(a.sxx[k]);
        double lean = a.sxy[k] / wide;
        double high = Math.sqrt(Math.max(0, a.syy[k] - lean * lean));
        double det = b.sxx[l] * b.syy[l] - b.sxy[l] * b.sxy[l];
        double[] looks = new double[LOOKS];
        for (int n = 0; n < LOOKS; n++) {
            double qx = a.cx[k] - b.cx[l] + wide * COSINES[n];
            double qy = a.cy[k] - b.cy[l] + lean * COSINES[n] + high * COSINES[(n + 3 * LOOKS / 4) % LOOKS];
            looks[n] = b.syy[l] * qx * qx - 2 * b.sxy[l] * qx * qy + b.sxx[l] * qy * qy - det;
        }
        return looks;
    }

    private static boolean isSame(Shade a, int k, Shade b, int l) {
        return Math.abs(a.cx[k] - b.cx[l]) + Math.abs(a.cy[k] - b.cy[l]) < 1e-13
                && Math.abs(a.sxx[k] - b.sxx[l]) + Math.abs(a.syy[k] - b.syy[l]) < 1e-15;
    }

    private static double beyond(Shade a, Shade.Run round, double where, Shade b, int l) {
        a.at(round, where);
        double qx = a.tx - b.cx[l];
        double qy = a.ty - b.cy[l];
        return b.syy[l] * qx * qx
                - 2 * b.sxy[l] * qx * qy
                + b.sxx[l] * qy * qy
                - (b.sxx[l] * b.syy[l] - b.sxy[l] * b.sxy[l]);
    }

    private void cross(int i, int j, int k, int l, Shade.Run round, double from, double to) {
        Shade a = parts[i];
        Shade b = parts[j];
        double low = from;
        double high = to;
        boolean rises = beyond(a, round, low, b, l) < 0;
        for (int n = 0; n < 60 && high - low > 1e-15; n++) {
            double middle = (low + high) / 2;
            if (beyond(a, round, middle, b, l) < 0 == rises) {
                low = middle;
            } else {
                high = middle;
            }
        }
        a.at(round, (low + high) / 2);
        double px = a.tx;
        double py = a.ty;
        add(i, j, px, py, normalX(a, k, px, py), normalY(a, k, px, py), normalX(b, l, px, py), normalY(b, l, px, py));
    }

    private void add(int i, int j, double px, double py, double ax, double ay, double bx, double by) {
        double one = Math.sqrt(ax * ax + ay * ay);
        double other = Math.sqrt(bx * bx + by * by);
        if (!(one > 0 && other > 0)
                || parts[i].reach(ax, ay) - ax * px - ay * py > ON * one
                || parts[j].reach(bx, by) - bx * px - by * py > ON * other) {
            return;
        }
        for (int k = 0; k < parts.length; k++) {
            if (k != i && k != j && parts[k].holds(px, py, ON)) {
                return;
            }
        }
        if (count == x.length) {
            grow();
        }
        x[count] = px;
        y[count] = py;
        ux[count] = ax / one;
        uy[count] = ay / one;
        vx[count] = bx / other;
        vy[count] = by / other;
        crossing[count] = 1L << i | 1L << j;
        count++;
    }

    private void grow() {
        x = Arrays.copyOf(x, 2 * count);
        y = Arrays.copyOf(y, 2 * count);
        ux = Arrays.copyOf(ux, 2 * count);
        uy = Arrays.copyOf(uy, 2 * count);
        vx = Arrays.copyOf(vx, 2 * count);
        vy = Arrays.copyOf(vy, 2 * count);
        crossing = Arrays.copyOf(crossing, 2 * count);
    }
}
