package plumeline.trace;

/// Which place of a flat light stands for it, for many patches at once: of four in its quarters one by chance, each as
/// likely as what it gives. Loops are short and without choices, so that the compiler works out several together.
final class Picks {
    /// Where in its quarter each of the four lies, shares of one; then where the picked one lies in the whole.
    double[] across = new double[0];

    double[] up = new double[0];

    /// Which of them is picked, a share of all that they give.
    double[] chance = new double[0];

    /// What the light gives by those four, lx by a luminance of 1.
    double[] gives = new double[0];

    private double[] first = new double[0];
    private double[] second = new double[0];
    private double[] third = new double[0];
    private double[] fourth = new double[0];

    void grow(int room) {
        across = new double[room];
        up = new double[room];
        chance = new double[room];
        gives = new double[room];
        first = new double[room];
        second = new double[room];
        third = new double[room];
        fourth = new double[room];
    }

    /// Picks.
    ///
    /// @param even how bright it is
    /// @param rows the light's rectangle as patches see it
    void pick(int count, double even, Rows rows) {
        weigh(count, 0, 0, rows, first);
        weigh(count, 0.5, 0, rows, second);
        weigh(count, 0, 0.5, rows, third);
        weigh(count, 0.5, 0.5, rows, fourth);
        take(count, first, second, third, fourth, chance, across, up, gives);
        scale(count, even / 4, rows.left, rows.right, rows.low, rows.high, gives);
    }

    private void weigh(int count, double right, double high, Rows rows, double[] into) {
        weigh(
                count,
                right,
                high,
                across,
                up,
                rows.left,
                rows.right,
                rows.low,
                rows.high,
                rows.z,
                rows.u,
                rows.v,
                rows.w,
                into);
    }

    /// What a place gives: cosines on both sides over the square of the way.
    private static void weigh(
            int count,
            double shareX,
            double shareY,
            double[] across,
            double[] up,
            double[] left,
            double[] right,
            double[] low,
            double[] high,
            double[] zs,
            double[] u,
            double[] v,
            double[] w,
            double[] into) {
        for (int k = 0; k < count; k++) {
            double x = left[k] + (across[k] / 2 + shareX) * (right[k] - left[k]);
            double y = low[k] + (up[k] / 2 + shareY) * (high[k] - low[k]);
            double z = zs[k];
            double square = x * x + y * y + z * z;
            into[k] = Math.max(0, z * (u[k] * x + v[k] * y - w[k] * z) / (square * square));
        }
    }

    private static void take(
            int count,
            double[] first,
            double[] second,
            double[] third,
            double[] fourth,
            double[] chance,
            double[] across,
            double[] up,
            double[] gives) {
        for (int k = 0; k < count; k++) {
            double two = first[k] + second[k];
            double three = two + third[k];
            double all = three + fourth[k];
            double at = chance[k] * all;
            double past = step(at - first[k]);
            double pastTwo = step(at - two);
            double pastThree = step(at - three);
            across[k] = (across[k] + past - pastTwo + pastThree) / 2;
            up[k] = (up[k] + pastTwo) / 2;
            gives[k] = all;
        }
    }

    private static void scale(
            int count, double by, double[] left, double[] right, double[] low, double[] high, double[] gives) {
        for (int k = 0; k < count; k++) {
            gives[k] *= by * (right[k] - left[k]) * (high[k] - low[k]);
        }
    }

    private static double step(double of) {
        return 0.5 + Math.copySign(0.5, of);
    }
}
