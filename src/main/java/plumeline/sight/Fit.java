package plumeline.sight;

import plumeline.geom.Equations;

/// The ellipse through a ring of picture points, and how far the points are off it.
///
/// Least squares on the conic `A x² + B x y + C y² + D x + E y = 1` after moving and stretching the points so that they
/// lie about a unit circle. Exact for a disc's ring in a pinhole picture; near it where rays bend a little.
final class Fit {
    private static final double FLAT = 1e-10;

    /// Middle x, y, and matrix xx, xy, yy; see [Shade].
    final double[] ellipse;
    /// The most by which a point is off, picture length; infinite where no ellipse fits.
    final double off;

    private Fit(double[] ellipse, double off) {
        this.ellipse = ellipse;
        this.off = off;
    }

    static Fit of(double[] x, double[] y) {
        int n = x.length;
        double mx = 0;
        double my = 0;
        for (int i = 0; i < n; i++) {
            mx += x[i] / n;
            my += y[i] / n;
        }
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (int i = 0; i < n; i++) {
            xx += 2 * (x[i] - mx) * (x[i] - mx) / n;
            xy += 2 * (x[i] - mx) * (y[i] - my) / n;
            yy += 2 * (y[i] - my) * (y[i] - my) / n;
        }
        double a = Math.sqrt(xx);
        double b = xy / a;
        double c = Math.sqrt(yy - b * b);
        if (!(a > FLAT && c > FLAT)) {
            return new Fit(new double[0], Double.POSITIVE_INFINITY);
        }
        double[] u = new double[n];
        double[] v = new double[n];
        for (int i = 0; i < n; i++) {
            u[i] = (x[i] - mx) / a;
            v[i] = (y[i] - my - b * u[i]) / c;
        }
        double[] round = conic(u, v);
        if (round.length == 0) {
            return new Fit(round, Double.POSITIVE_INFINITY);
        }
        double off = off(round, u, v) * Math.sqrt(xx + yy);
        // Back through x = mx + a u, y = my + b u + c v.
        double sxx = a * a * round[2];
        double sxy = a * (b * round[2] + c * round[3]);
        double syy = b * b * round[2] + 2 * b * c * round[3] + c * c * round[4];
        double[] ellipse = {mx + a * round[0], my + b * round[0] + c * round[1], sxx, sxy, syy};
        return new Fit(ellipse, off);
    }

    /// Middle and matrix of the fitted ellipse; empty where it isn't one.
    private static double[] conic(double[] u, double[] v) {
        double[][] normal = new double[5][6];
        for (int i = 0; i < u.length; i++) {
            double[] row = {u[i] * u[i], u[i] * v[i], v[i] * v[i], u[i], v[i], 1};
            for (int r = 0; r < 5; r++) {
                for (int c = 0; c < 6; c++) {
                    normal[r][c] += row[r] * row[c];
                }
            }
        }
        if (!Equations.solve(normal)) {
            return new double[0];
        }
        double a = normal[0][5];
        double b = normal[1][5] / 2;
        double c = normal[2][5];
        double det = a * c - b * b;
        if (!(a > 0 && det > 0)) {
            return new double[0];
        }
        double d = normal[3][5];
        double e = normal[4][5];
        double x = (b * e - c * d) / (2 * det);
        double y = (b * d - a * e) / (2 * det);
        double size = 1 + a * x * x + 2 * b * x * y + c * y * y;
        return new double[] {x, y, size * c / det, -size * b / det, size * a / det};
    }

    private static double off(double[] e, double[] u, double[] v) {
        double det = e[2] * e[4] - e[3] * e[3];
        double most = 0;
        for (int i = 0; i < u.length; i++) {
            double x = u[i] - e[0];
            double y = v[i] - e[1];
            double square = (e[4] * x * x - 2 * e[3] * x * y + e[2] * y * y) / det;
            most = Math.max(most, Math.abs(Math.sqrt(square) - 1));
        }
        return most;
    }
}
