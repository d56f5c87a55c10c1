package plumeline.trace;

/// Configuration factors of rectangles for many places at once: [Lambert#rectangle] in steps, each a loop that is short
/// enough for the compiler to work out several places together.
final class Rectangles {
    private double[] ab = new double[0];
    private double[] bc = new double[0];
    private double[] cd = new double[0];
    private double[] da = new double[0];
    private double[] overAb = new double[0];
    private double[] overBc = new double[0];
    private double[] overCd = new double[0];
    private double[] overDa = new double[0];

    void grow(int room) {
        ab = new double[room];
        bc = new double[room];
        cd = new double[room];
        da = new double[room];
        overAb = new double[room];
        overBc = new double[room];
        overCd = new double[room];
        overDa = new double[room];
    }

    /// Gives π times the factors. Where a corner lies behind the patch's plane `least` is below 0, where an edge is
    /// seen at more than a right angle `widest` is: there what is given doesn't count. Where all is behind, `most`
    /// is not over 0.
    ///
    /// @param scale multiplies what is given
    void factors(int count, Rows rows, double scale) {
        double[] z = rows.z;
        double[] left = rows.left;
        double[] right = rows.right;
        double[] low = rows.low;
        double[] high = rows.high;
        corner(count, left, low, z, ab);
        corner(count, right, low, z, bc);
        corner(count, right, high, z, cd);
        corner(count, left, high, z, da);
        product(count, ab, bc, overAb);
        product(count, bc, cd, overBc);
        product(count, cd, da, overCd);
        product(count, da, ab, overDa);
        cosines(count, z, left, right, low, overAb, ab);
        cosines(count, z, low, high, right, overBc, bc);
        cosines(count, z, left, right, high, overCd, cd);
        cosines(count, z, low, high, left, overDa, da);
        lower(count, ab, bc, rows.widest);
        lower(count, cd, rows.widest, rows.widest);
        lower(count, da, rows.widest, rows.widest);
        turn(count, ab, overAb);
        turn(count, bc, overBc);
        turn(count, cd, overCd);
        turn(count, da, overDa);
        begin(count, z, rows.v, rows.w, left, right, low, high, ab, cd, rows.all);
        end(count, scale / 2, z, rows.u, rows.w, low, high, left, right, bc, da, rows.all);
        sides(count, z, rows.u, rows.v, rows.w, left, right, low, high, rows.least, rows.most);
    }

    /// One over the way to a corner.
    private static void corner(int count, double[] x, double[] y, double[] z, double[] into) {
        for (int k = 0; k < count; k++) {
            into[k] = 1 / Math.sqrt(x[k] * x[k] + y[k] * y[k] + z[k] * z[k]);
        }
    }

    private static void product(int count, double[] one, double[] other, double[] into) {
        for (int k = 0; k < count; k++) {
            into[k] = one[k] * other[k];
        }
    }

    /// The cosine by which an edge is seen: it runs from `from` to `to`, off by `aside`.
    private static void cosines(
            int count, double[] z, double[] from, double[] to, double[] aside, double[] over, double[] into) {
        for (int k = 0; k < count; k++) {
            into[k] = (from[k] * to[k] + aside[k] * aside[k] + z[k] * z[k]) * over[k];
        }
    }

    private static void lower(int count, double[] one, double[] other, double[] into) {
        for (int k = 0; k < count; k++) {
            into[k] = Math.min(one[k], other[k]);
        }
    }

    /// As [Lambert#turn], for cosines from 0 to 1.
    private static void turn(int count, double[] cosines, double[] over) {
        for (int k = 0; k < count; k++) {
            double x = 2 * cosines[k] - 1;
            double square = x * x;
            double fourth = square * square;
            double one = (1.2091995757907175 - x * 0.2636001411638357)
                    + square * (0.06973321832499928 - x * 0.019837155366604905);
            double two = (0.005861324736361165 - x * 0.001772830682245203)
                    + square * (0.0005460521782383914 - x * 0.00016972071365044724);
            double three = (5.068019710851854e-5 - x * 1.59800586969894e-5)
                    + square * (7.311762334662064e-6 - x * 2.3352813138787367e-6);
            cosines[k] = (one + fourth * (two + fourth * three)) * over[k];
        }
    }

    private static void begin(
            int count,
            double[] z,
            double[] v,
            double[] w,
            double[] left,
            double[] right,
            double[] low,
            double[] high,
            double[] ab,
            double[] cd,
            double[] into) {
        for (int k = 0; k < count; k++) {
            double flat = z[k] * v[k];
            into[k] = (right[k] - left[k]) * ((flat + high[k] * w[k]) * cd[k] - (flat + low[k] * w[k]) * ab[k]);
        }
    }

    private static void end(
            int count,
            double scale,
            double[] z,
            double[] u,
            double[] w,
            double[] low,
            double[] high,
            double[] left,
            double[] right,
            double[] bc,
            double[] da,
            double[] into) {
        for (int k = 0; k < count; k++) {
            double flat = z[k] * u[k];
            double sum = (high[k] - low[k]) * ((flat + right[k] * w[k]) * bc[k] - (flat + left[k] * w[k]) * da[k]);
            into[k] = Math.abs(into[k] + sum) * scale;
        }
    }

    /// How far the corners lie before the patch's plane, the lowest and the highest.
    private static void sides(
            int count,
            double[] z,
            double[] u,
            double[] v,
            double[] w,
            double[] left,
            double[] right,
            double[] low,
            double[] high,
            double[] least,
            double[] most) {
        for (int k = 0; k < count; k++) {
            double middle = u[k] * (left[k] + right[k]) + v[k] * (low[k] + high[k]) - 2 * w[k] * z[k];
            double reach = Math.abs(u[k]) * (right[k] - left[k]) + Math.abs(v[k]) * (high[k] - low[k]);
            least[k] = middle - reach;
            most[k] = middle + reach;
        }
    }
}
