package plumeline.colour;

/// Three equations in three unknowns, by Cramer's rule.
final class Matrix {
    private final double[][] rows;

    private Matrix(double[][] rows) {
        this.rows = rows;
    }

    static Matrix of(double[][] rows) {
        return new Matrix(rows);
    }

    double[] times(double[] of) {
        double[] products = new double[3];
        for (int i = 0; i < 3; i++) {
            products[i] = rows[i][0] * of[0] + rows[i][1] * of[1] + rows[i][2] * of[2];
        }
        return products;
    }

    double[] solve(double[] right) {
        double all = determinant(rows);
        double[] found = new double[3];
        for (int k = 0; k < 3; k++) {
            double[][] with = {rows[0].clone(), rows[1].clone(), rows[2].clone()};
            for (int i = 0; i < 3; i++) {
                with[i][k] = right[i];
            }
            found[k] = determinant(with) / all;
        }
        return found;
    }

    private static double determinant(double[][] m) {
        return m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1])
                - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0])
                + m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
    }
}
