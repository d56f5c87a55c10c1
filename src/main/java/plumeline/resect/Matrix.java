package plumeline.resect;

/// Small dense matrices, row by row, as the fit needs them.
final class Matrix {
    private Matrix() {}

    static double[][] times(double[][] a, double[][] b) {
        double[][] product = new double[a.length][b.length == 0 ? 0 : b[0].length];
        for (int i = 0; i < a.length; i++) {
            for (int k = 0; k < b.length; k++) {
                double factor = a[i][k];
                for (int j = 0; factor != 0 && j < product[i].length; j++) {
                    product[i][j] += factor * b[k][j];
                }
            }
        }
        return product;
    }

    static double[][] transposed(double[][] a) {
        double[][] turned = new double[a.length == 0 ? 0 : a[0].length][a.length];
        for (int i = 0; i < a.length; i++) {
            for (int j = 0; j < a[i].length; j++) {
                turned[j][i] = a[i][j];
            }
        }
        return turned;
    }

    static double[] times(double[][] a, double[] x) {
        double[] product = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            for (int j = 0; j < x.length; j++) {
                product[i] += a[i][j] * x[j];
            }
        }
        return product;
    }

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /// The inverse of a symmetric matrix that is positive definite, by Cholesky's factors.
    static double[][] inverse(double[][] a) {
        int n = a.length;
        double[][] l = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = a[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= l[i][k] * l[j][k];
                }
                if (i == j && !(sum > 0)) {
                    throw new IllegalArgumentException("a matrix isn't positive definite in row " + i);
                }
                l[i][j] = i == j ? Math.sqrt(sum) : sum / l[j][j];
            }
        }
        double[][] below = new double[n][n];
        for (int c = 0; c < n; c++) {
            for (int i = c; i < n; i++) {
                double sum = i == c ? 1 : 0;
                for (int k = c; k < i; k++) {
                    sum -= l[i][k] * below[k][c];
                }
                below[i][c] = sum / l[i][i];
            }
        }
        return times(transposed(below), below);
    }
}
