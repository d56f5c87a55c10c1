package plumeline.water;

/// A plate bent by another method, for tests: polynomials that keep to the held edges, their factors such that the
/// energy is least (Ritz). Shares no formula with the series under test. Width 1, rigidity 1, the load's slope or
/// pressure 1.
final class RitzPlate {
    private static final int POINTS = 24;

    private final double height;
    private final double nu;
    private final int terms;
    private final double[][] across;
    private final double[][] up;
    private final double[] factors;

    RitzPlate(double height, boolean heldTop, double wetHeight, boolean even, double nu, int terms) {
        this.height = height;
        this.nu = nu;
        this.terms = terms;
        across = new double[terms][];
        up = new double[terms][];
        for (int i = 0; i < terms; i++) {
            double[] wave = chebyshev(i);
            across[i] = times(wave, new double[] {0, 1, -1});
            up[i] = times(wave, heldTop ? new double[] {0, 1, -1} : new double[] {0, 1});
        }
        factors = solve(stiffness(), load(wetHeight, even));
    }

    /// Largest deflection and largest principal moment over a fine grid.
    double[] peak(int steps) {
        double deflection = 0;
        double moment = 0;
        for (int i = 0; i <= steps; i++) {
            for (int j = 0; j <= steps; j++) {
                double x = 0.5 * i / steps;
                double y = (double) j / steps;
                double wxx = sum(x, y, 2, 0);
                double wyy = sum(x, y, 0, 2) / (height * height);
                double mx = wxx + nu * wyy;
                double my = wyy + nu * wxx;
                double mxy = (1 - nu) * sum(x, y, 1, 1) / height;
                deflection = Math.max(deflection, Math.abs(sum(x, y, 0, 0)));
                moment = Math.max(moment, Math.abs(mx + my) / 2 + Math.hypot((mx - my) / 2, mxy));
            }
        }
        return new double[] {deflection, moment};
    }

    private double sum(double x, double y, int dx, int dy) {
        double[] ups = new double[terms];
        for (int j = 0; j < terms; j++) {
            ups[j] = at(up[j], y, dy);
        }
        double sum = 0;
        for (int i = 0; i < terms; i++) {
            double wave = at(across[i], x, dx);
            for (int j = 0; j < terms; j++) {
                sum += factors[i * terms + j] * wave * ups[j];
            }
        }
        return sum;
    }

    private double[][] stiffness() {
        double[][][] xs = {
            products(across, 0, 0), products(across, 1, 1), products(across, 2, 2), products(across, 2, 0)
        };
        double[][][] ys = {products(up, 0, 0), products(up, 1, 1), products(up, 2, 2), products(up, 2, 0)};
        double h2 = height * height;
        double[][] k = new double[terms * terms][terms * terms];
        for (int i = 0; i < terms; i++) {
            for (int j = 0; j < terms; j++) {
                for (int p = 0; p < terms; p++) {
                    for (int q = 0; q < terms; q++) {
                        double mixed = xs[3][i][p] * ys[3][q][j] + xs[3][p][i] * ys[3][j][q];
                        k[i * terms + j][p * terms + q] = height
                                * (xs[2][i][p] * ys[0][j][q]
                                        + xs[0][i][p] * ys[2][j][q] / (h2 * h2)
                                        + nu * mixed / h2
                                        + 2 * (1 - nu) * xs[1][i][p] * ys[1][j][q] / h2);
                    }
                }
            }
        }
        return k;
    }

    private double[] load(double wetHeight, boolean even) {
        double wet = even ? 1 : wetHeight / height;
        double[] right = new double[terms * terms];
        for (int i = 0; i < terms; i++) {
            for (int j = 0; j < terms; j++) {
                double x = 0;
                double y = 0;
                for (int g = 0; g < POINTS; g++) {
                    x += weight(g) * at(across[i], node(g), 0);
                    double eta = wet * node(g);
                    double pressure = even ? 1 : wetHeight - eta * height;
                    y += wet * height * weight(g) * pressure * at(up[j], eta, 0);
                }
                right[i * terms + j] = x * y;
            }
        }
        return right;
    }

    private double[][] products(double[][] basis, int first, int second) {
        double[][] all = new double[terms][terms];
        for (int i = 0; i < terms; i++) {
            for (int j = 0; j < terms; j++) {
                for (int g = 0; g < POINTS; g++) {
                    all[i][j] += weight(g) * at(basis[i], node(g), first) * at(basis[j], node(g), second);
                }
            }
        }
        return all;
    }

    /// Gauss's nodes on 0 to 1, found by Newton's steps on Legendre's polynomial.
    private static double node(int place) {
        return (1 - gauss(place)[0]) / 2;
    }

    private static double weight(int place) {
        return gauss(place)[1] / 2;
    }

    private static double[] gauss(int place) {
        double z = Math.cos(Math.PI * (place + 0.75) / (POINTS + 0.5));
        double slope = 1;
        for (int step = 0; step < 8; step++) {
            double before = 1;
            double now = z;
            for (int n = 2; n <= POINTS; n++) {
                double next = ((2 * n - 1) * z * now - (n - 1) * before) / n;
                before = now;
                now = next;
            }
            slope = POINTS * (z * now - before) / (z * z - 1);
            z -= now / slope;
        }
        return new double[] {z, 2 / ((1 - z * z) * slope * slope)};
    }

    /// Chebyshev's polynomial of 2x − 1, as factors of powers of x.
    private static double[] chebyshev(int degree) {
        double[] before = {1};
        double[] now = {-1, 2};
        if (degree == 0) {
            return before;
        }
        for (int n = 2; n <= degree; n++) {
            double[] next = times(now, new double[] {-2, 4});
            for (int i = 0; i < before.length; i++) {
                next[i] -= before[i];
            }
            before = now;
            now = next;
        }
        return now;
    }

    private static double[] times(double[] one, double[] other) {
        double[] product = new double[one.length + other.length - 1];
        for (int i = 0; i < one.length; i++) {
            for (int j = 0; j < other.length; j++) {
                product[i + j] += one[i] * other[j];
            }
        }
        return product;
    }

    private static double at(double[] powers, double x, int derivative) {
        double sum = 0;
        for (int i = powers.length - 1; i >= derivative; i--) {
            double factor = powers[i];
            for (int d = 0; d < derivative; d++) {
                factor *= i - d;
            }
            sum = sum * x + factor;
        }
        return sum;
    }

    private static double[] solve(double[][] k, double[] right) {
        int n = right.length;
        for (int i = 0; i < n; i++) {
            for (int r = i + 1; r < n; r++) {
                double factor = k[r][i] / k[i][i];
                for (int c = i; c < n; c++) {
                    k[r][c] -= factor * k[i][c];
                }
                right[r] -= factor * right[i];
            }
        }
        for (int i = n - 1; i >= 0; i--) {
            for (int c = i + 1; c < n; c++) {
                right[i] -= k[i][c] * right[c];
            }
            right[i] /= k[i][i];
        }
        return right;
    }
}
