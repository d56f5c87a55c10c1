package plumeline.geom;

/// A few linear equations with as many unknowns, by elimination with pivots; without unit.
public final class Equations {
    private Equations() {}

    /// Solves the equations in place.
    ///
    /// @param matrix one row an equation: its factors, then its right side, which the answer replaces
    /// @return whether they have a single answer; where not, the matrix is left half done
    public static boolean solve(double[][] matrix) {
        int n = matrix.length;
        for (int i = 0; i < n; i++) {
            int pivot = i;
            for (int r = i + 1; r < n; r++) {
                if (Math.abs(matrix[r][i]) > Math.abs(matrix[pivot][i])) {
                    pivot = r;
                }
            }
            double[] row = matrix[pivot];
            matrix[pivot] = matrix[i];
            matrix[i] = row;
            if (Math.abs(row[i]) < 1e-30) {
                return false;
            }
            for (int r = 0; r < n; r++) {
                if (r != i) {
                    double factor = matrix[r][i] / row[i];
                    for (int c = i; c <= n; c++) {
                        matrix[r][c] -= factor * row[c];
                    }
                }
            }
        }
        for (int i = 0; i < n; i++) {
            matrix[i][n] /= matrix[i][i];
        }
        return true;
    }
}
