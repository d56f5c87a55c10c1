package plumeline.trace;

/// Ways from many places to places of a light: what they may meet. It is set again and again.
///
/// All lie within the hull of two balls, one round the places, one round where they go.
final class Beam {
    /// A place this much behind a plane still lies on it, m.
    private static final double ON_METRES = 1e-12;

    /// A way that ends so far before a plane has left it before it can meet it, m.
    private static final double OFF_METRES = 1e-4;

    private final double[] low = new double[6];
    private final double[] high = new double[6];
    private final double[] middle = new double[6];
    private final double[] radius = new double[2];
    private double length;
    private double grows;

    /// Sets whence its ways go.
    void from(Rows rows, int count) {
        hold(0, rows.px, count);
        hold(1, rows.py, count);
        hold(2, rows.pz, count);
    }

    /// Sets where they go: to places of a light, and to the middle of what is seen of it.
    void over(Rows rows, int count, Lamps lamps, int light) {
        hold(3, rows.px, rows.dx, rows, count);
        hold(4, rows.py, rows.dy, rows, count);
        hold(5, rows.pz, rows.dz, rows, count);
        double thick = lamps.tubeMetres(light);
        for (int i = 0; i < 3; i++) {
            low[i + 3] = Math.min(low[i + 3], lamps.middle(light, i) - thick);
            high[i + 3] = Math.max(high[i + 3], lamps.middle(light, i) + thick);
        }
        double square = 0;
        for (int end = 0; end < 2; end++) {
            double wide = 0;
            for (int i = 3 * end; i < 3 * end + 3; i++) {
                middle[i] = (low[i] + high[i]) / 2;
                wide += (high[i] - low[i]) * (high[i] - low[i]);
            }
            radius[end] = Math.sqrt(wide) / 2;
        }
        for (int i = 0; i < 3; i++) {
            square += (middle[i + 3] - middle[i]) * (middle[i + 3] - middle[i]);
        }
        length = Math.sqrt(square);
        grows = (radius[1] - radius[0]) / length;
    }

    private void hold(int axis, double[] p, double[] d, Rows rows, int count) {
        end(count, p, d, rows.far, rows.to);
        hold(axis, rows.to, count);
    }

    private static void end(int count, double[] p, double[] d, double[] far, double[] into) {
        for (int k = 0; k < count; k++) {
            into[k] = p[k] + far[k] * d[k];
        }
    }

    private void hold(int axis, double[] at, int count) {
        low[axis] = least(count, at);
        high[axis] = most(count, at);
    }

    /// What is no number is left out: no way that counts ends there.
    private static double least(int count, double[] at) {
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < count; k++) {
            if (at[k] < least) {
                least = at[k];
            }
        }
        return least;
    }

    private static double most(int count, double[] at) {
        double most = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < count; k++) {
            if (at[k] > most) {
                most = at[k];
            }
        }
        return most;
    }

    /// Whether all ways pass beside a ball.
    boolean missesBall(double x, double y, double z, double reach) {
        if (!(Math.abs(grows) < 1)) {
            return false;
        }
        double px = x - middle[0];
        double py = y - middle[1];
        double pz = z - middle[2];
        double along =
                (px * (middle[3] - middle[0]) + py * (middle[4] - middle[1]) + pz * (middle[5] - middle[2])) / length;
        double square = Math.max(0, px * px + py * py + pz * pz - along * along);
        // Where the hull comes nearest to the middle of the ball.
        double nearest = along + Math.sqrt(square) * grows / Math.sqrt(1 - grows * grows);
        double at = Math.clamp(nearest, 0, length);
        return Math.sqrt(square + (at - along) * (at - along)) > reach + radius[0] + grows * at + ON_METRES;
    }

    /// Whether all ways stay on one side of a plane, before or behind.
    boolean missesPlane(double nx, double ny, double nz, double far) {
        return isOver(1, nx, ny, nz, far) || isOver(-1, nx, ny, nz, far);
    }

    /// Whether all ways stay before a plane.
    boolean isOver(int side, double nx, double ny, double nz, double far) {
        return side * (toward(0, nx, ny, nz) - far) - reach(0, nx, ny, nz) >= -ON_METRES
                && side * (toward(3, nx, ny, nz) - far) - reach(3, nx, ny, nz) >= OFF_METRES;
    }

    private double toward(int from, double nx, double ny, double nz) {
        return middle[from] * nx + middle[from + 1] * ny + middle[from + 2] * nz;
    }

    private double reach(int from, double nx, double ny, double nz) {
        return ((high[from] - low[from]) * Math.abs(nx)
                        + (high[from + 1] - low[from + 1]) * Math.abs(ny)
                        + (high[from + 2] - low[from + 2]) * Math.abs(nz))
                / 2;
    }
}
