package plumeline.trace.sums;

/// Configuration factors of outlines on plain numbers, as [plumeline.light.Seen] gives them.
///
/// **Source:** Lambert's formula for polygons (Photometria, 1760), from memory.
public final class Lambert {
    /// Below this the patch lies on an edge, (sine)².
    private static final double ON_AN_EDGE = 1e-18;

    private Lambert() {}

    /// Gives an angle over its sine, by its cosine: for cosines from 0 on a power series about 1/2, off by 6e-10 at
    /// most (own fit); below 0 by `π/√(1 − x²)` less that of the opposite angle.
    ///
    /// @param cosine −1 to 1
    /// @return 1 or more
    public static double turn(double cosine) {
        double x = 2 * Math.min(1, Math.abs(cosine)) - 1;
        double square = x * x;
        double fourth = square * square;
        double one = (1.2091995757907175 - x * 0.2636001411638357)
                + square * (0.06973321832499928 - x * 0.019837155366604905);
        double two = (0.005861324736361165 - x * 0.001772830682245203)
                + square * (0.0005460521782383914 - x * 0.00016972071365044724);
        double three = (5.068019710851854e-5 - x * 1.59800586969894e-5)
                + square * (7.311762334662064e-6 - x * 2.3352813138787367e-6);
        double sum = one + fourth * (two + fourth * three);
        return cosine >= 0 ? sum : Math.PI / Math.sqrt(Math.max(ON_AN_EDGE, 1 - cosine * cosine)) - sum;
    }

    /// Gives π times the factor of a rectangle for a patch before it, straight before its zero.
    ///
    /// @param z how far before it, m, > 0
    /// @param u the patch's facing along the width
    /// @param v along the height
    /// @param w out of it
    /// @param left its left edge along its width, m
    /// @param right its right edge
    /// @param low its lower edge along its height, m
    /// @param high its upper edge
    /// @return 0 where all of it is behind the patch; below 0 where some is, and it must be cut
    public static double rectangle(
            double z, double u, double v, double w, double left, double right, double low, double high) {
        double flat = -w * z;
        double a = flat + u * left + v * low;
        double b = flat + u * right + v * low;
        double c = flat + u * right + v * high;
        double d = flat + u * left + v * high;
        if (a <= 0 && b <= 0 && c <= 0 && d <= 0) {
            return 0;
        }
        if (a < 0 || b < 0 || c < 0 || d < 0) {
            return -1;
        }
        double square = z * z;
        double aa = left * left + low * low + square;
        double bb = right * right + low * low + square;
        double cc = right * right + high * high + square;
        double dd = left * left + high * high + square;
        double ra = Math.sqrt(aa);
        double rb = Math.sqrt(bb);
        double rc = Math.sqrt(cc);
        double rd = Math.sqrt(dd);
        double ac = 1 / (ra * rb * rc * rd);
        double ab = ac * rc * rd;
        double bc = ac * rd * ra;
        double cd = ac * ra * rb;
        double da = ac * rb * rc;
        double wide = right - left;
        double tall = high - low;
        double sum = wide * (-z * v - low * w) * ab * turn((left * right + low * low + square) * ab)
                + tall * (z * u + right * w) * bc * turn((right * right + low * high + square) * bc)
                + wide * (z * v + high * w) * cd * turn((left * right + high * high + square) * cd)
                + tall * (-z * u - left * w) * da * turn((left * left + low * high + square) * da);
        return Math.abs(sum) / 2;
    }

    /// Gives π times the factor of a disc that is wholly over the patch's plane.
    ///
    /// **Source:** Howell's catalogue of configuration factors, B-13 and B-14: what falls along the disc's axis and
    /// square to it, added as the parts of a vector.
    ///
    /// @param z the patch before the disc, m, > 0
    /// @param out aside of its axis, m, ≥ 0
    /// @param w the patch's facing toward the disc's plane
    /// @param inward the patch's facing toward the axis
    /// @param radius the disc's, m
    /// @return π times the factor
    public static double disc(double z, double out, double w, double inward, double radius) {
        double all = z * z + out * out + radius * radius;
        double root = Math.sqrt(Math.max(0, all * all - 4 * radius * radius * out * out));
        double along = (1 - (all - 2 * radius * radius) / root) / 2;
        double aside = out > 1e-9 * radius ? z / (2 * out) * (all / root - 1) : 0;
        return Math.PI * Math.max(0, w * along + inward * aside);
    }

    /// Gives π times the factor of corners, cut at the patch's plane.
    ///
    /// @param corners from the patch, in order, three numbers each; what is left of them after the cut is written
    /// behind them, so that there must be room for twice as many and one
    /// @param count how many there are
    /// @param u the patch's facing, in their axes
    /// @param v likewise
    /// @param w likewise
    /// @return π times the factor
    public static double corners(double[] corners, int count, double u, double v, double w) {
        int start = 3 * count;
        int end = start;
        int last = start - 3;
        double lastHeight = u * corners[last] + v * corners[last + 1] + w * corners[last + 2];
        for (int i = 0; i < start; i += 3) {
            double height = u * corners[i] + v * corners[i + 1] + w * corners[i + 2];
            if (height > 0 != lastHeight > 0) {
                double share = lastHeight / (lastHeight - height);
                for (int j = 0; j < 3; j++) {
                    corners[end++] = corners[last + j] + share * (corners[i + j] - corners[last + j]);
                }
            }
            if (height > 0) {
                for (int j = 0; j < 3; j++) {
                    corners[end++] = corners[i + j];
                }
            }
            last = i;
            lastHeight = height;
        }
        return start == end ? 0 : whole(corners, start, end, u, v, w);
    }

    private static double whole(double[] corners, int start, int end, double u, double v, double w) {
        double sum = 0;
        int last = end - 3;
        double lastSquare = square(corners, last);
        for (int i = start; i < end; i += 3) {
            double square = square(corners, i);
            double both = lastSquare * square;
            if (both > 0) {
                double over = 1 / Math.sqrt(both);
                double x = corners[last + 1] * corners[i + 2] - corners[last + 2] * corners[i + 1];
                double y = corners[last + 2] * corners[i] - corners[last] * corners[i + 2];
                double z = corners[last] * corners[i + 1] - corners[last + 1] * corners[i];
                double dot = corners[last] * corners[i]
                        + corners[last + 1] * corners[i + 1]
                        + corners[last + 2] * corners[i + 2];
                sum += (x * u + y * v + z * w) * over * turn(dot * over);
            }
            last = i;
            lastSquare = square;
        }
        return Math.abs(sum) / 2;
    }

    private static double square(double[] corners, int i) {
        return corners[i] * corners[i] + corners[i + 1] * corners[i + 1] + corners[i + 2] * corners[i + 2];
    }

    /// How far round a tube is seen, by its radius over the way to its axis: arc cosine, from far off by its series,
    /// off by 2e-7 at most (what lies past the horizon counts nothing, what is left out is that narrow).
    ///
    /// @param sine 0 to 1
    /// @return rad
    public static double horizon(double sine) {
        double square = sine * sine;
        return sine > 0.25
                ? Math.acos(sine)
                : Math.PI / 2 - sine * (1 + square * (1.0 / 6 + square * (3.0 / 40 + square * (15.0 / 336))));
    }
}
