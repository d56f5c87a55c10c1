package plumeline.ink;

/// Unknown numbers that are normal together, narrowed by one reading after another: combined by precision.
final class Normal {
    private final double[][] precision;
    private final double[] pull;

    /// Independent normal numbers about zero: the first of some precision, the rest of one.
    Normal(int count, int first, double firstPrecision) {
        precision = new double[count][count];
        pull = new double[count];
        for (int i = 0; i < count; i++) {
            precision[i][i] = i < first ? firstPrecision : 1;
        }
    }

    /// A sum of the unknowns, each times its slope, was read.
    void read(double[] slopes, double value, double variance) {
        for (int i = 0; i < slopes.length; i++) {
            if (slopes[i] == 0) {
                continue;
            }
            pull[i] += slopes[i] * value / variance;
            for (int j = 0; j < slopes.length; j++) {
                precision[i][j] += slopes[i] * slopes[j] / variance;
            }
        }
    }

    /// Their covariance.
    double[][] covariance() {
        int count = pull.length;
        double[][] lower = cholesky(precision);
        double[][] covariance = new double[count][];
        for (int i = 0; i < count; i++) {
            double[] unit = new double[count];
            unit[i] = 1;
            covariance[i] = solve(lower, unit);
        }
        return covariance;
    }

    /// Their means.
    double[] means() {
        return solve(cholesky(precision), pull);
    }

    private static double[][] cholesky(double[][] matrix) {
        int count = matrix.length;
        double[][] lower = new double[count][count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j <= i; j++) {
                double rest = matrix[i][j];
                for (int k = 0; k < j; k++) {
                    rest -= lower[i][k] * lower[j][k];
                }
                lower[i][j] = i == j ? Math.sqrt(rest) : rest / lower[j][j];
            }
        }
        return lower;
    }

    private static double[] solve(double[][] lower, double[] right) {
        int count = right.length;
        double[] x = right.clone();
        for (int i = 0; i < count; i++) {
            for (int k = 0; k < i; k++) {
                x[i] -= lower[i][k] * x[k];
            }
            x[i] /= lower[i][i];
        }
        for (int i = count - 1; i >= 0; i--) {
            for (int k = i + 1; k < count; k++) {
                x[i] -= lower[k][i] * x[k];
            }
            x[i] /= lower[i][i];
        }
        return x;
    }
}
