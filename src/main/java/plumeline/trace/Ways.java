package plumeline.trace;

/// Which of many ways may come near a shape: a number over 0 where one can't. Loops without choices, so that the
/// compiler works out several ways at once.
final class Ways {
    /// No origin.
    static final double[] NONE = new double[3];

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
