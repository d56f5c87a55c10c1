package plumeline.trace;

/// Which of many ways may come near a shape: a number over 0 where one can't. Loops without choices, so that the
/// compiler works out several ways at once.
final class Ways {
    /// No origin.
    static final double[] NONE = new double[3];

    /// A way nearer than this may be met.
    private static final double SLACK_METRES = 1e-9;

    private Ways() {}

    /// Gives a coordinate of places in a frame.
    static void turn(
            int count,
            double[] frame,
            int axis,
            double[] origins,
            int origin,
            double[] x,
            double[] y,
            double[] z,
            double[] into) {
        double a = frame[axis];
        double b = frame[axis + 1];
        double c = frame[axis + 2];
        double off = a * origins[origin] + b * origins[origin + 1] + c * origins[origin + 2];
        for (int k = 0; k < count; k++) {
            into[k] = x[k] * a + y[k] * b + z[k] * c - off;
        }
    }

    static void besideBall(
            int count,
            double[] balls,
            int at,
            double[] px,
            double[] py,
            double[] pz,
            double[] dx,
            double[] dy,
            double[] dz,
            double[] far,
            double[] near) {
        double x = balls[at];
        double y = balls[at + 1];
        double z = balls[at + 2];
        double radius = balls[at + 3];
        double square = radius * radius;
        for (int k = 0; k < count; k++) {
            double bx = x - px[k];
            double by = y - py[k];
            double bz = z - pz[k];
            double on = bx * dx[k] + by * dy[k] + bz * dz[k];
            double beside = bx * bx + by * by + bz * bz - on * on - square;
            double past = Math.max(-on, on - far[k]) - radius;
            near[k] = Math.min(near[k], Math.max(beside, past));
        }
    }

    static void besideSheet(
            int count,
            double halfX,
            double halfY,
            double[] x,
            double[] y,
            double[] z,
            double[] u,
            double[] v,
            double[] w,
            double[] far,
            double[] near) {
        for (int k = 0; k < count; k++) {
            double t = -z[k] / w[k];
            double past = Math.max(Meets.NEAR_METRES - t, t - far[k]);
            double beside = Math.max(Math.abs(x[k] + t * u[k]) - halfX, Math.abs(y[k] + t * v[k]) - halfY);
            near[k] = Math.min(near[k], Math.max(past, beside) + Meets.NEAR_METRES / 2);
        }
    }

    /// Gives where ways cross a cylinder round an axis.
    ///
    /// @param square of its radius
    /// @param first takes where each comes in, m
    /// @param second takes where it leaves, m
    /// @param past takes a number over 0 where it doesn't come in
    static void across(
            int count,
            double square,
            double[] x,
            double[] y,
            double[] u,
            double[] v,
            double[] first,
            double[] second,
            double[] past) {
        for (int k = 0; k < count; k++) {
            double a = u[k] * u[k] + v[k] * v[k];
            double b = x[k] * u[k] + y[k] * v[k];
            double root = b * b - a * (x[k] * x[k] + y[k] * y[k] - square);
            double over = 1 / a;
            double half = Math.sqrt(Math.max(0, root)) * over;
            first[k] = -b * over - half;
            second[k] = half - b * over;
            past[k] = -root;
        }
    }

    /// Notes which ways don't meet a quarter of a cylinder where they cross the whole.
    static void besideBend(int count, double halfZ, double[] t, Rows rows, double[] past, double[] near) {
        besideBend(count, halfZ, t, rows.left, rows.low, rows.z, rows.u, rows.v, rows.w, rows.far, past, near);
    }

    private static void besideBend(
            int count,
            double halfZ,
            double[] t,
            double[] x,
            double[] y,
            double[] z,
            double[] u,
            double[] v,
            double[] w,
            double[] far,
            double[] past,
            double[] near) {
        for (int k = 0; k < count; k++) {
            double early = Math.max(Meets.NEAR_METRES - t[k], t[k] - far[k]);
            double aside = Math.max(-x[k] - t[k] * u[k], -y[k] - t[k] * v[k]);
            double along = Math.abs(z[k] + t[k] * w[k]) - halfZ;
            double beside = Math.max(Math.max(early, past[k]), Math.max(aside, along));
            near[k] = Math.min(near[k], beside - SLACK_METRES);
        }
    }

    /// Cuts ways by the two planes of a box across an axis.
    static void slab(int count, double low, double high, double[] p, double[] d, double[] from, double[] to) {
        for (int k = 0; k < count; k++) {
            double over = 1 / d[k];
            double one = (low - p[k]) * over;
            double other = (high - p[k]) * over;
            from[k] = Math.max(from[k], Math.min(one, other));
            to[k] = Math.min(to[k], Math.max(one, other));
        }
    }

    /// Notes which ways nothing of is left between two ends.
    static void beside(int count, double slack, double[] from, double[] to, double[] near) {
        for (int k = 0; k < count; k++) {
            near[k] = Math.min(near[k], from[k] - to[k] - slack);
        }
    }
}
