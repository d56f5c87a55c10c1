package plumeline.trace;

import java.util.Arrays;

/// What falls of an even panel or a slim tube on many patches, with nothing between. Loops are short and without
/// choices, so that the compiler works out several patches at once.
final class Strips {
    private final double[] numbers;
    private final int n;
    private final Rows rows;
    private final int count;
    private final boolean isTube;

    /// @param isTube whether it is a tube
    /// @param numbers emitters as [Lamps] has them
    /// @param n where this one begins
    /// @param rows the patches; takes what falls, and where they see its middle
    /// @param count how many there are
    Strips(boolean isTube, double[] numbers, int n, Rows rows, int count) {
        this.isTube = isTube;
        this.numbers = numbers;
        this.n = n;
        this.rows = rows;
        this.count = count;
    }

    /// Works out what falls.
    void fall(double even) {
        if (isTube) {
            tube(even);
        } else {
            panel(even);
        }
    }

    private void panel(double even) {
        see();
        panels(count, numbers[n + 12], numbers[n + 13], rows.left, rows.right, rows.low, rows.high);
        Arrays.fill(rows.dx, 0, count, numbers[n]);
        Arrays.fill(rows.dy, 0, count, numbers[n + 1]);
        Arrays.fill(rows.dz, 0, count, numbers[n + 2]);
        rows.rectangles.factors(count, rows, even);
    }

    private void tube(double even) {
        see();
        strip();
        front();
        rows.rectangles.factors(count, rows, even);
        reach(count, rows.here, rows.least, rows.most);
    }

    /// Notes where patches are as a light has it (right, up and out: left, low and z), and how they face.
    private void see() {
        double x = numbers[n];
        double y = numbers[n + 1];
        double z = numbers[n + 2];
        for (int axis = 0; axis < 3; axis++) {
            double a = numbers[n + 3 + 3 * axis];
            double b = numbers[n + 4 + 3 * axis];
            double c = numbers[n + 5 + 3 * axis];
            double off = a * x + b * y + c * z;
            double[] place = axis == 0 ? rows.z : axis == 1 ? rows.left : rows.low;
            double[] facing = axis == 0 ? rows.w : axis == 1 ? rows.u : rows.v;
            turn(count, a, b, c, off, rows.px, rows.py, rows.pz, place);
            turn(count, a, b, c, 0, rows.nx, rows.ny, rows.nz, facing);
        }
    }

    private static void turn(
            int count, double a, double b, double c, double off, double[] x, double[] y, double[] z, double[] into) {
        for (int k = 0; k < count; k++) {
            into[k] = x[k] * a + y[k] * b + z[k] * c - off;
        }
    }

    private static void panels(
            int count, double halfX, double halfY, double[] left, double[] right, double[] low, double[] high) {
        for (int k = 0; k < count; k++) {
            double x = left[k];
            double y = low[k];
            left[k] = -halfX - x;
            right[k] = halfX - x;
            low[k] = -halfY - y;
            high[k] = halfY - y;
        }
    }

    /// As [Lamps] has it for one patch. Where sight touches the tube's front is noted by its turn in `near` and
    /// `cross`, and in `here` whether the tube is far enough.
    private void strip() {
        double half = numbers[n + 12];
        double radius = numbers[n + 14];
        front(count, radius, rows.left, rows.low, rows.near, rows.cross, rows.here);
        face(count, 1 / radius, rows.near, rows.cross, rows.u, rows.v, rows.w);
        strip(count, half, radius, rows.here, rows.z, rows.left, rows.right);
        before(count, radius, rows.here, rows.z, rows.low, rows.high);
    }

    private static void front(
            int count, double radius, double[] xs, double[] ys, double[] towards, double[] asides, double[] away) {
        for (int k = 0; k < count; k++) {
            double x = xs[k];
            double y = ys[k];
            double far = Math.sqrt(x * x + y * y);
            double over = radius / far;
            towards[k] = x * over;
            asides[k] = y * over;
            away[k] = far;
        }
    }

    private static void face(
            int count, double over, double[] towards, double[] asides, double[] us, double[] vs, double[] ws) {
        for (int k = 0; k < count; k++) {
            double u = us[k];
            double v = vs[k];
            double toward = towards[k] * over;
            double aside = asides[k] * over;
            us[k] = ws[k];
            ws[k] = u * toward + v * aside;
            vs[k] = v * toward - u * aside;
        }
    }

    private static void strip(
            int count, double half, double radius, double[] away, double[] along, double[] left, double[] right) {
        double bulges = Math.PI / 4 * radius;
        double square = radius * radius;
        for (int k = 0; k < count; k++) {
            double over = 1 / away[k];
            double before = away[k] - square * over;
            double longer = before / (before - bulges + bulges * radius * over);
            left[k] = longer * (-half - along[k]);
            right[k] = longer * (half - along[k]);
        }
    }

    private static void before(int count, double radius, double[] away, double[] before, double[] low, double[] high) {
        for (int k = 0; k < count; k++) {
            double over = 1 / away[k];
            double sees = away[k] - radius * radius * over;
            double wide = radius * Math.sqrt(sees * over);
            before[k] = sees;
            low[k] = -wide;
            high[k] = wide;
            away[k] -= 4 * radius;
        }
    }

    private void front() {
        front(count, numbers[n], numbers[n + 6], numbers[n + 9], rows.near, rows.cross, rows.dx);
        front(count, numbers[n + 1], numbers[n + 7], numbers[n + 10], rows.near, rows.cross, rows.dy);
        front(count, numbers[n + 2], numbers[n + 8], numbers[n + 11], rows.near, rows.cross, rows.dz);
    }

    private static void front(
            int count, double middle, double x, double y, double[] toward, double[] aside, double[] into) {
        for (int k = 0; k < count; k++) {
            into[k] = middle + x * toward[k] + y * aside[k];
        }
    }

    /// Moves from where patches see the middle to the picked places.
    void move(Picks picks) {
        if (isTube) {
            double over = 1 / numbers[n + 14];
            for (int axis = 0; axis < 3; axis++) {
                double[] into = axis == 0 ? rows.dx : axis == 1 ? rows.dy : rows.dz;
                aside(
                        count,
                        numbers[n + 12] * numbers[n + 3 + axis],
                        over * numbers[n + 6 + axis],
                        over * numbers[n + 9 + axis],
                        numbers[n + 14],
                        picks,
                        rows,
                        into);
            }
        } else {
            for (int axis = 0; axis < 3; axis++) {
                double[] into = axis == 0 ? rows.dx : axis == 1 ? rows.dy : rows.dz;
                move(
                        count,
                        numbers[n + 12] * numbers[n + 6 + axis],
                        numbers[n + 13] * numbers[n + 9 + axis],
                        picks.across,
                        picks.up,
                        into);
            }
        }
    }

    private static void move(int count, double right, double up, double[] across, double[] ups, double[] into) {
        for (int k = 0; k < count; k++) {
            into[k] += (2 * across[k] - 1) * right + (2 * ups[k] - 1) * up;
        }
    }

    private static void aside(
            int count, double along, double x, double y, double radius, Picks picks, Rows rows, double[] into) {
        aside(count, along, x, y, radius, picks.across, picks.up, rows.near, rows.cross, rows.high, into);
    }

    /// Along the tube, and round it to either side of where it is seen from.
    private static void aside(
            int count,
            double along,
            double x,
            double y,
            double radius,
            double[] across,
            double[] ups,
            double[] toward,
            double[] aside,
            double[] wide,
            double[] into) {
        for (int k = 0; k < count; k++) {
            double out = (2 * ups[k] - 1) * wide[k];
            double back = radius - Math.sqrt(Math.max(0, radius * radius - out * out));
            into[k] += (2 * across[k] - 1) * along
                    + out * (toward[k] * y - aside[k] * x)
                    - back * (toward[k] * x + aside[k] * y);
        }
    }

    private static void reach(int count, double[] reach, double[] least, double[] most) {
        for (int k = 0; k < count; k++) {
            least[k] = Math.min(least[k], reach[k]);
            most[k] = Math.max(most[k], -reach[k]);
        }
    }
}
