package plumeline.resect;

import java.util.Optional;
import java.util.function.Function;

/// Readings fitted by unknowns that are themselves believed to be near 0: the likeliest values where readings and
/// beliefs scatter normally, and how sure they then are.
///
/// The unknowns are θ = L u with u scattering by 1 each, so that `L Lᵀ` is what is believed of them. Sought is the
/// least `Σ((y − f(L u)) / σ)² + |u|²`, by steps that are damped until the sum falls.
///
/// **Source:** D. W. Marquardt, "An algorithm for least-squares estimation of nonlinear parameters", J. SIAM 11 (1963),
/// 431–441. From memory; written anew.
final class Fit {
    private static final int MOST_STEPS = 100;
    private static final double SETTLED = 1e-9;
    private static final double STIFFEST = 1e12;

    private final double[] off;
    private final double[] residual;
    private final double[][] slopes;
    private final double[][] covariance;
    private final double sum;

    /// @param off the unknowns' values, SI
    /// @param residual readings less what the values give
    /// @param slopes by how much each reading's figure changes with each unknown there
    /// @param covariance how the values scatter about the truth
    /// @param sum squares that are left, of readings and of what is believed
    Fit(double[] off, double[] residual, double[][] slopes, double[][] covariance, double sum) {
        this.off = off;
        this.residual = residual;
        this.slopes = slopes;
        this.covariance = covariance;
        this.sum = sum;
    }

    double[] off() {
        return off;
    }

    double[] residual() {
        return residual;
    }

    double[][] slopes() {
        return slopes;
    }

    double[][] covariance() {
        return covariance;
    }

    double sum() {
        return sum;
    }

    /// What is fitted.
    static final class Task {
        private final double[] readings;
        private final double[] sigmas;
        private final Function<double[], Optional<double[]>> figures;
        private final double[] steps;

        /// @param readings y
        /// @param sigmas σ, one a reading; infinite where it says nothing
        /// @param figures f: what values of the unknowns give; empty where they give nothing
        /// @param steps by how much each unknown is moved to find slopes, SI
        Task(double[] readings, double[] sigmas, Function<double[], Optional<double[]>> figures, double[] steps) {
            this.readings = readings;
            this.sigmas = sigmas;
            this.figures = figures;
            this.steps = steps;
        }

        double[] readings() {
            return readings;
        }

        double[] sigmas() {
            return sigmas;
        }

        Function<double[], Optional<double[]>> figures() {
            return figures;
        }

        double[] steps() {
            return steps;
        }
    }

    /// Fits; empty where the unknowns' start gives nothing.
    static Optional<Fit> of(Task task, double[][] belief) {
        int count = belief.length == 0 ? 0 : belief[0].length;
        double[] u = new double[count];
        Optional<double[]> start = task.figures().apply(Matrix.times(belief, u));
        if (start.isEmpty()) {
            return Optional.empty();
        }
        double[] residual = less(task.readings(), start.get());
        double sum = sum(task, residual, u);
        double damping = 1e-6;
        double[][] slopes = slopes(task, Matrix.times(belief, u));
        for (int i = 0; i < MOST_STEPS; i++) {
            double[][] scaled = Matrix.times(slopes, belief);
            double[] way = way(task, scaled, residual, u, damping);
            double[] next = plus(u, way);
            Optional<double[]> there = task.figures().apply(Matrix.times(belief, next));
            double[] left = there.map(figures -> less(task.readings(), figures)).orElse(residual);
            double after = there.isPresent() ? sum(task, left, next) : Double.POSITIVE_INFINITY;
            if (after <= sum) {
                u = next;
                residual = left;
                sum = after;
                damping = Math.max(damping / 10, 1e-12);
                slopes = slopes(task, Matrix.times(belief, u));
                if (longest(way) < SETTLED) {
                    break;
                }
            } else {
                damping *= 10;
                if (longest(way) < SETTLED || damping > STIFFEST) {
                    break;
                }
            }
        }
        double[][] sure = Matrix.inverse(normal(task, Matrix.times(slopes, belief), 0));
        double[][] covariance = Matrix.times(Matrix.times(belief, sure), Matrix.transposed(belief));
        return Optional.of(new Fit(Matrix.times(belief, u), residual, slopes, covariance, sum));
    }

    private static double[] way(Task task, double[][] scaled, double[] residual, double[] u, double damping) {
        double[] pull = new double[u.length];
        for (int j = 0; j < u.length; j++) {
            pull[j] = -u[j];
            for (int i = 0; i < residual.length; i++) {
                pull[j] += scaled[i][j] * residual[i] / (task.sigmas()[i] * task.sigmas()[i]);
            }
        }
        return Matrix.times(Matrix.inverse(normal(task, scaled, damping)), pull);
    }

    private static double[][] normal(Task task, double[][] scaled, double damping) {
        int count = scaled[0].length;
        double[][] normal = new double[count][count];
        for (int i = 0; i < scaled.length; i++) {
            double weight = 1 / (task.sigmas()[i] * task.sigmas()[i]);
            for (int j = 0; j < count; j++) {
                for (int k = 0; k < count; k++) {
                    normal[j][k] += weight * scaled[i][j] * scaled[i][k];
                }
            }
        }
        for (int j = 0; j < count; j++) {
            normal[j][j] = (normal[j][j] + 1) * (1 + damping);
        }
        return normal;
    }

    private static double sum(Task task, double[] residual, double[] u) {
        double sum = Matrix.dot(u, u);
        for (int i = 0; i < residual.length; i++) {
            double by = residual[i] / task.sigmas()[i];
            sum += by * by;
        }
        return sum;
    }

    /// Slopes by central differences, to one side where the other gives nothing, 0 where both don't.
    private static double[][] slopes(Task task, double[] off) {
        double[][] slopes = new double[task.readings().length][off.length];
        for (int j = 0; j < off.length; j++) {
            double[] low = off.clone();
            double[] high = off.clone();
            low[j] -= task.steps()[j];
            high[j] += task.steps()[j];
            Optional<double[]> before = task.figures().apply(low);
            Optional<double[]> after = task.figures().apply(high);
            double step = before.isPresent() && after.isPresent() ? 2 * task.steps()[j] : task.steps()[j];
            Optional<double[]> here = before.isPresent() && after.isPresent()
                    ? before
                    : task.figures().apply(off);
            Optional<double[]> from = before.isPresent() ? before : here;
            Optional<double[]> to = after.isPresent() ? after : here;
            for (int i = 0; i < slopes.length && from.isPresent() && to.isPresent(); i++) {
                slopes[i][j] = (to.get()[i] - from.get()[i]) / step;
            }
        }
        return slopes;
    }

    private static double[] less(double[] a, double[] b) {
        double[] less = a.clone();
        for (int i = 0; i < a.length; i++) {
            less[i] -= b[i];
        }
        return less;
    }

    private static double[] plus(double[] a, double[] b) {
        double[] sum = a.clone();
        for (int i = 0; i < a.length; i++) {
            sum[i] += b[i];
        }
        return sum;
    }

    private static double longest(double[] way) {
        double longest = 0;
        for (double part : way) {
            longest = Math.max(longest, Math.abs(part));
        }
        return longest;
    }
}
