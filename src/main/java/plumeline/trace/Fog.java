package plumeline.trace;

import plumeline.scenery.Cloud;

/// A cloud made ready: how much of it lies on a way, and the light within it.
///
/// Light is scattered once, alike into all directions. What comes to each place from each light is worked out on a
/// coarser grid beforehand, to the light's middle.
final class Fog {
    private static final int EACH_CELL = 2;
    private static final int MOST_LIT = 24;

    private final Cloud cloud;
    private final double[] low = new double[3];
    private final double[] high = new double[3];
    private final double lowX;
    private final double lowY;
    private final double lowZ;
    private final double highX;
    private final double highY;
    private final double highZ;
    private final int[] cells;
    private final int[] lit = new int[3];
    private final float[] light;
    private final double[] takes;
    private final double[] scatters;
    private final boolean[] isNearInk;

    Fog(Cloud cloud) {
        this.cloud = cloud;
        low[0] = cloud.box().low().x();
        low[1] = cloud.box().low().y();
        low[2] = cloud.box().low().z();
        high[0] = cloud.box().high().x();
        high[1] = cloud.box().high().y();
        high[2] = cloud.box().high().z();
        lowX = low[0];
        lowY = low[1];
        lowZ = low[2];
        highX = high[0];
        highY = high[1];
        highZ = high[2];
        cells = new int[] {cloud.across(), cloud.deep(), cloud.high()};
        for (int i = 0; i < 3; i++) {
            lit[i] = Math.clamp((cells[i] + 1) / 2, Math.min(2, cells[i]), MOST_LIT);
        }
        light = new float[3 * lit[0] * lit[1] * lit[2]];
        isNearInk = new boolean[litPlaces()];
        mark();
        takes = new double[] {
            cloud.extinction().red(),
            cloud.extinction().green(),
            cloud.extinction().blue()
        };
        scatters = new double[] {
            cloud.albedo().red(), cloud.albedo().green(), cloud.albedo().blue()
        };
    }

    /// Notes which places of the coarser grid light is asked of: those about a cell with ink, or beside one.
    private void mark() {
        float[] shares = cloud.shares();
        for (int z = 0; z < cells[2]; z++) {
            for (int y = 0; y < cells[1]; y++) {
                for (int x = 0; x < cells[0]; x++) {
                    if (shares[(z * cells[1] + y) * cells[0] + x] > 0) {
                        mark(x, y, z);
                    }
                }
            }
        }
    }

    private void mark(int x, int y, int z) {
        int lastZ = after(z, 2);
        int lastY = after(y, 1);
        int lastX = after(x, 0);
        for (int k = before(z, 2); k <= lastZ; k++) {
            for (int j = before(y, 1); j <= lastY; j++) {
                for (int i = before(x, 0); i <= lastX; i++) {
                    isNearInk[(k * lit[1] + j) * lit[0] + i] = true;
                }
            }
        }
    }

    /// Places of the coarser grid that light is taken from within a cell's width of a cell's middle, the first.
    private int before(int cell, int axis) {
        return Math.clamp((int) Math.floor((cell - 0.5) / cells[axis] * lit[axis] - 0.5), 0, lit[axis] - 1);
    }

    private int after(int cell, int axis) {
        return Math.clamp((int) Math.floor((cell + 1.5) / cells[axis] * lit[axis] + 0.5), 0, lit[axis] - 1);
    }

    boolean isOf(Cloud other) {
        return cloud == other;
    }

    /// Whether the light at such a place counts.
    boolean isNearInk(int index) {
        return isNearInk[index];
    }

    /// How many places its light is known at.
    int litPlaces() {
        return light.length / 3;
    }

    /// Gives such a place.
    void litPlace(int index, double[] at) {
        int x = index % lit[0];
        int y = index / lit[0] % lit[1];
        int z = index / lit[0] / lit[1];
        at[0] = low[0] + (x + 0.5) / lit[0] * (high[0] - low[0]);
        at[1] = low[1] + (y + 0.5) / lit[1] * (high[1] - low[1]);
        at[2] = low[2] + (z + 0.5) / lit[2] * (high[2] - low[2]);
    }

    /// Adds what comes to such a place from all round: luminance times solid angle.
    void shine(int index, int channel, double comes) {
        light[3 * index + channel] += (float) comes;
    }

    double takes(int channel) {
        return takes[channel];
    }

    /// What of a ray is in its box.
    ///
    /// @param span takes where it comes in and where it leaves, m
    /// @return whether any is
    boolean spans(double ox, double oy, double oz, double dx, double dy, double dz, double far, double[] span) {
        double over = 1 / dx;
        double one = (lowX - ox) * over;
        double other = (highX - ox) * over;
        double from = Math.max(0, Math.min(one, other));
        double to = Math.min(far, Math.max(one, other));
        if (from >= to) {
            return false;
        }
        over = 1 / dy;
        one = (lowY - oy) * over;
        other = (highY - oy) * over;
        from = Math.max(from, Math.min(one, other));
        to = Math.min(to, Math.max(one, other));
        if (from >= to) {
            return false;
        }
        over = 1 / dz;
        one = (lowZ - oz) * over;
        other = (highZ - oz) * over;
        from = Math.max(from, Math.min(one, other));
        to = Math.min(to, Math.max(one, other));
        span[0] = from;
        span[1] = to;
        return from < to;
    }

    /// In how many steps a part of a ray is cut: two a cell, by the axis along which it crosses most cells. Between
    /// middles of cells shares run straight: what a thread holds comes out within a hundredth.
    private int steps(double dx, double dy, double dz, double metres) {
        double x = Math.abs(dx) * cells[0] / (high[0] - low[0]);
        double y = Math.abs(dy) * cells[1] / (high[1] - low[1]);
        double z = Math.abs(dz) * cells[2] / (high[2] - low[2]);
        return (int) Math.ceil(metres * EACH_CELL * Math.max(x, Math.max(y, z)));
    }

    /// How much of it lies on a part of a ray: share times way, m.
    double thickness(double ox, double oy, double oz, double dx, double dy, double dz, double far, double[] span) {
        if (!spans(ox, oy, oz, dx, dy, dz, far, span)) {
            return 0;
        }
        int steps = steps(dx, dy, dz, span[1] - span[0]);
        double way = (span[1] - span[0]) / steps;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double t = span[0] + (i + 0.5) * way;
            sum += share(ox + t * dx, oy + t * dy, oz + t * dz);
        }
        return sum * way;
    }

    /// Follows a ray through it.
    ///
    /// @param phase where in each step it is asked, 0 to 1: drawn anew for each ray, so that no rings are left
    /// @param weight what each channel counts; takes what is left of it
    /// @param sum takes what is scattered to whence the ray comes
    void follow(
            double ox,
            double oy,
            double oz,
            double dx,
            double dy,
            double dz,
            double far,
            double phase,
            double[] span,
            double[] weight,
            double[] sum) {
        if (!spans(ox, oy, oz, dx, dy, dz, far, span)) {
            return;
        }
        double from = span[0];
        int steps = steps(dx, dy, dz, span[1] - from);
        double way = (span[1] - from) / steps;
        for (int i = 0; i < steps; i++) {
            double t = from + (i + phase) * way;
            double x = ox + t * dx;
            double y = oy + t * dy;
            double z = oz + t * dz;
            double thick = share(x, y, z) * way;
            if (thick <= 0) {
                continue;
            }
            scatter(x, y, z, thick, weight, sum);
        }
    }

    private void scatter(double x, double y, double z, double thick, double[] weight, double[] sum) {
        double u = (x - low[0]) / (high[0] - low[0]) * lit[0] - 0.5;
        double v = (y - low[1]) / (high[1] - low[1]) * lit[1] - 0.5;
        double w = (z - low[2]) / (high[2] - low[2]) * lit[2] - 0.5;
        int i = whole(u, lit[0]);
        int j = whole(v, lit[1]);
        int k = whole(w, lit[2]);
        double s = Math.clamp(u - i, 0, 1);
        double t = Math.clamp(v - j, 0, 1);
        double r = Math.clamp(w - k, 0, 1);
        int right = lit[0] > 1 ? 3 : 0;
        int back = lit[1] > 1 ? 3 * lit[0] : 0;
        int up = lit[2] > 1 ? 3 * lit[0] * lit[1] : 0;
        int at = 3 * ((k * lit[1] + j) * lit[0] + i);
        for (int channel = 0; channel < 3; channel++) {
            double left = Math.exp(-takes[channel] * thick);
            double comes = (1 - r) * plane(light, at + channel, right, back, s, t)
                    + r * plane(light, at + up + channel, right, back, s, t);
            sum[channel] += weight[channel] * (1 - left) * scatters[channel] * comes / (4 * Math.PI);
            weight[channel] *= left;
        }
    }

    /// Its share at a place, straight between the cells' middles.
    double share(double x, double y, double z) {
        double u = (x - low[0]) / (high[0] - low[0]) * cells[0] - 0.5;
        double v = (y - low[1]) / (high[1] - low[1]) * cells[1] - 0.5;
        double w = (z - low[2]) / (high[2] - low[2]) * cells[2] - 0.5;
        int i = whole(u, cells[0]);
        int j = whole(v, cells[1]);
        int k = whole(w, cells[2]);
        double s = Math.clamp(u - i, 0, 1);
        double t = Math.clamp(v - j, 0, 1);
        double r = Math.clamp(w - k, 0, 1);
        float[] shares = cloud.shares();
        int right = cells[0] > 1 ? 1 : 0;
        int back = cells[1] > 1 ? cells[0] : 0;
        int up = cells[2] > 1 ? cells[0] * cells[1] : 0;
        int at = (k * cells[1] + j) * cells[0] + i;
        double lower = plane(shares, at, right, back, s, t);
        return r == 0 ? lower : (1 - r) * lower + r * plane(shares, at + up, right, back, s, t);
    }

    private static double plane(float[] of, int at, int right, int back, double s, double t) {
        return (1 - t) * ((1 - s) * of[at] + s * of[at + right])
                + t * ((1 - s) * of[at + back] + s * of[at + back + right]);
    }

    private static int whole(double at, int cells) {
        return Math.clamp((int) Math.floor(at), 0, Math.max(0, cells - 2));
    }
}
