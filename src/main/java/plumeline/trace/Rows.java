package plumeline.trace;

import java.util.Arrays;

/// Numbers of many places, a row for each kind. Loops over them hold neither calls nor choices, so that the compiler
/// works out several places at once.
final class Rows {
    /// A way ends so far before the place of a light, m.
    static final double BEFORE_METRES = 2e-6;

    /// Where the places are, m.
    double[] px = new double[0];

    double[] py = new double[0];
    double[] pz = new double[0];

    /// What they face.
    double[] nx = new double[0];

    double[] ny = new double[0];
    double[] nz = new double[0];

    /// What their light counts.
    double[] red = new double[0];

    double[] green = new double[0];
    double[] blue = new double[0];

    /// Their light, lx.
    double[] sumRed = new double[0];

    double[] sumGreen = new double[0];
    double[] sumBlue = new double[0];

    /// What falls of one light with nothing between.
    double[] all = new double[0];

    /// By how much the mean of the places that were tried is over it, where one was chosen of several.
    double[] over = new double[0];

    /// The way to a place of it; before it is aimed at, that place.
    double[] dx = new double[0];

    double[] dy = new double[0];
    double[] dz = new double[0];
    double[] far = new double[0];

    /// Likewise to the middle of what is seen of the light, where another place is picked.
    double[] middleX = new double[0];

    double[] middleY = new double[0];
    double[] middleZ = new double[0];
    double[] middleFar = new double[0];

    /// Over 0 where nothing opaque can lie on that.
    double[] free = new double[0];

    /// How it leaves the place, its length in it.
    double[] here = new double[0];

    /// Over 0 where nothing opaque can lie on it.
    double[] near = new double[0];

    /// Over 0 where nothing clear can.
    double[] cross = new double[0];

    /// A light's rectangle as seen: how far before it, and how the place faces.
    double[] z = new double[0];

    double[] u = new double[0];
    double[] v = new double[0];
    double[] w = new double[0];
    double[] left = new double[0];
    double[] right = new double[0];
    double[] low = new double[0];
    double[] high = new double[0];

    final Picks picks = new Picks();
    final Rectangles rectangles = new Rectangles();

    /// Where a way comes into a box, and where it leaves it, m.
    double[] from = new double[0];

    double[] to = new double[0];

    /// Below 0 where the patch's plane cuts the rectangle.
    double[] least = new double[0];

    /// Below 0 where an edge of it is seen at more than a right angle.
    double[] widest = new double[0];

    /// Below 0 where it is wholly behind.
    double[] most = new double[0];

    void grow(int room) {
        px = Arrays.copyOf(px, room);
        py = Arrays.copyOf(py, room);
        pz = Arrays.copyOf(pz, room);
        nx = Arrays.copyOf(nx, room);
        ny = Arrays.copyOf(ny, room);
        nz = Arrays.copyOf(nz, room);
        red = Arrays.copyOf(red, room);
        green = Arrays.copyOf(green, room);
        blue = Arrays.copyOf(blue, room);
        sumRed = new double[room];
        sumGreen = new double[room];
        sumBlue = new double[room];
        all = new double[room];
        over = new double[room];
        dx = new double[room];
        dy = new double[room];
        dz = new double[room];
        far = new double[room];
        middleX = new double[room];
        middleY = new double[room];
        middleZ = new double[room];
        middleFar = new double[room];
        free = new double[room];
        here = new double[room];
        near = new double[room];
        cross = new double[room];
        z = new double[room];
        u = new double[room];
        v = new double[room];
        w = new double[room];
        left = new double[room];
        right = new double[room];
        low = new double[room];
        high = new double[room];
        picks.grow(room);
        rectangles.grow(room);
        from = new double[room];
        to = new double[room];
        least = new double[room];
        widest = new double[room];
        most = new double[room];
    }

    /// Adds all that falls of a light of a colour.
    void addAll(int count, double colour, double[] sums) {
        addAll(count, colour, all, sums);
    }

    private static void addAll(int count, double colour, double[] all, double[] sums) {
        for (int k = 0; k < count; k++) {
            sums[k] += colour * all[k];
        }
    }

    /// Makes ways of the places aimed at.
    void aim(int count) {
        aim(count, px, py, pz, dx, dy, dz, far);
        leave(count, nx, ny, nz, dx, dy, dz, here);
    }

    /// Notes the middles that are aimed at.
    void keepMiddle(int count) {
        System.arraycopy(dx, 0, middleX, 0, count);
        System.arraycopy(dy, 0, middleY, 0, count);
        System.arraycopy(dz, 0, middleZ, 0, count);
    }

    /// Makes ways of the noted middles.
    void aimMiddle(int count) {
        aim(count, px, py, pz, middleX, middleY, middleZ, middleFar);
    }

    /// Ways to middles and to picked places change places.
    void swap() {
        double[] x = dx;
        double[] y = dy;
        double[] z = dz;
        double[] away = far;
        dx = middleX;
        dy = middleY;
        dz = middleZ;
        far = middleFar;
        middleX = x;
        middleY = y;
        middleZ = z;
        middleFar = away;
    }

    private static void aim(
            int count, double[] px, double[] py, double[] pz, double[] dx, double[] dy, double[] dz, double[] far) {
        for (int k = 0; k < count; k++) {
            double x = dx[k] - px[k];
            double y = dy[k] - py[k];
            double z = dz[k] - pz[k];
            double way = Math.sqrt(x * x + y * y + z * z);
            double over = 1 / way;
            dx[k] = x * over;
            dy[k] = y * over;
            dz[k] = z * over;
            far[k] = way - BEFORE_METRES;
        }
    }

    private static void leave(
            int count, double[] nx, double[] ny, double[] nz, double[] dx, double[] dy, double[] dz, double[] here) {
        for (int k = 0; k < count; k++) {
            here[k] = nx[k] * dx[k] + ny[k] * dy[k] + nz[k] * dz[k];
        }
    }

    /// Aims one of them.
    void aim(int k, double[] at) {
        double x = at[0] - px[k];
        double y = at[1] - py[k];
        double z = at[2] - pz[k];
        double way = Math.sqrt(x * x + y * y + z * z);
        double over = 1 / way;
        dx[k] = x * over;
        dy[k] = y * over;
        dz[k] = z * over;
        far[k] = way - BEFORE_METRES;
    }
}
