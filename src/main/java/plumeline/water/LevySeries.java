package plumeline.water;

/// A bent pane as the sum over odd m of `Y(y) sin(αx)/D` with `α = mπ/a`. Letters as in `docs/derivations/panes.md`: a
/// width, b height, h depth of the liquid, ν Poisson's ratio, D rigidity, c the load's share of a term over α⁴.
final class LevySeries {
    private final double nu;
    private final double b;
    private final double h;
    private final boolean liquid;
    private final double[] alpha;
    private final double[] c;
    private final double[][] coefficients;

    LevySeries(Pane pane, PaneLoad load, double nu, int terms) {
        this.nu = nu;
        b = pane.heightMetres();
        double slope = switch (load) {
            case PaneLoad.Even(double pascals) -> pascals;
            case PaneLoad.Liquid(double _, double weight) -> weight;
        };
        liquid = load instanceof PaneLoad.Liquid;
        h = load instanceof PaneLoad.Liquid(double depth, double _) ? Math.min(depth, b) : b;
        alpha = new double[terms];
        c = new double[terms];
        coefficients = new double[terms][];
        for (int i = 0; i < terms; i++) {
            int m = 2 * i + 1;
            alpha[i] = m * Math.PI / pane.widthMetres();
            c[i] = 4 * slope / (m * Math.PI) / Math.pow(alpha[i], 4);
            coefficients[i] = fit(i, pane.top());
        }
    }

    /// Four dying-out solutions without load are added so that the lower and upper edges are as they should be.
    private double[] fit(int term, Pane.Top top) {
        double[][] rows = new double[4][];
        rows[0] = row(term, 0, 0);
        rows[1] = row(term, 0, 2);
        switch (top) {
            case HELD -> {
                rows[2] = row(term, b, 0);
                rows[3] = row(term, b, 2);
            }
            case FREE -> {
                rows[2] = combined(row(term, b, 2), row(term, b, 0), nu);
                rows[3] = combined(row(term, b, 3), row(term, b, 1), 2 - nu);
            }
        }
        return solve(rows);
    }

    private static double[] combined(double[] first, double[] second, double factor) {
        double[] sum = new double[first.length];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = first[i] - factor * second[i];
        }
        return sum;
    }

    /// The four solutions' derivative at a place over αᵈ, and minus that of the load's own solution.
    private double[] row(int term, double y, int derivative) {
        double al = alpha[term];
        double below = Math.exp(-al * y);
        double above = Math.exp(-al * (b - y));
        double sign = derivative % 2 == 0 ? 1 : -1;
        return new double[] {
            sign * below,
            sign * (al * y - derivative) * below,
            above,
            (al * (b - y) - derivative) * above,
            -loaded(term, y, derivative)
        };
    }

    /// The load's own solution, smooth to its third derivative at the surface; its derivative over αᵈ.
    private double loaded(int term, double y, int derivative) {
        if (!liquid) {
            return derivative == 0 ? c[term] : 0;
        }
        double al = alpha[term];
        boolean wet = y < h;
        double s = al * Math.abs(y - h);
        double kink = c[term] / (4 * al) * (3 + s - derivative) * Math.exp(-s);
        double sign = derivative % 2 == 0 || wet ? 1 : -1;
        double straight = !wet ? 0 : derivative == 0 ? c[term] * (h - y) : derivative == 1 ? -c[term] / al : 0;
        return sign * kink + straight;
    }

    private static double[] solve(double[][] rows) {
        for (int i = 0; i < 4; i++) {
            int best = i;
            for (int r = i + 1; r < 4; r++) {
                best = Math.abs(rows[r][i]) > Math.abs(rows[best][i]) ? r : best;
            }
            double[] pivot = rows[best];
            rows[best] = rows[i];
            rows[i] = pivot;
            for (int r = i + 1; r < 4; r++) {
                double factor = rows[r][i] / pivot[i];
                for (int k = i; k < 5; k++) {
                    rows[r][k] -= factor * pivot[k];
                }
            }
        }
        double[] found = new double[4];
        for (int i = 3; i >= 0; i--) {
            double rest = rows[i][4];
            for (int k = i + 1; k < 4; k++) {
                rest -= rows[i][k] * found[k];
            }
            found[i] = rest / rows[i][i];
        }
        return found;
    }

    int countTerms() {
        return alpha.length;
    }

    /// Looks at every crossing of these places for the largest principal moment and the largest deflection, by so many
    /// of the first terms.
    Plates.Peak peak(double[] xs, double[] ys, int terms) {
        double[][] sine = new double[xs.length][terms];
        double[][] cosine = new double[xs.length][terms];
        for (int x = 0; x < xs.length; x++) {
            takeAcross(sine[x], cosine[x], xs[x]);
        }
        double most = -1;
        double mostX = 0;
        double mostY = 0;
        double deflection = 0;
        double[][] along = new double[4][terms];
        for (double y : ys) {
            takeAlong(along, y, terms);
            for (int x = 0; x < xs.length; x++) {
                double w = 0;
                double mx = 0;
                double my = 0;
                double mxy = 0;
                // The small far terms first: they would be lost in the large ones.
                for (int i = terms - 1; i >= 0; i--) {
                    double wave = sine[x][i];
                    w += along[0][i] * wave;
                    mx += along[1][i] * wave;
                    my += along[2][i] * wave;
                    mxy += along[3][i] * cosine[x][i];
                }
                double half = (mx - my) / 2;
                double moment = Math.abs(mx + my) / 2 + Math.sqrt(half * half + mxy * mxy);
                deflection = Math.max(deflection, Math.abs(w));
                if (moment > most) {
                    most = moment;
                    mostX = xs[x];
                    mostY = y;
                }
            }
        }
        return new Plates.Peak(most, mostX, mostY, deflection);
    }

    /// Every term's sine and cosine at a place across, each from the one before: their angles grow by the same step.
    private void takeAcross(double[] sine, double[] cosine, double x) {
        double stepSine = Math.sin(2 * alpha[0] * x);
        double stepCosine = Math.cos(2 * alpha[0] * x);
        sine[0] = Math.sin(alpha[0] * x);
        cosine[0] = Math.cos(alpha[0] * x);
        for (int i = 1; i < sine.length; i++) {
            sine[i] = sine[i - 1] * stepCosine + cosine[i - 1] * stepSine;
            cosine[i] = cosine[i - 1] * stepCosine - sine[i - 1] * stepSine;
        }
    }

    /// Every term's deflection, Mx, My and Mxy at a height, but for its sine or cosine. What dies out from term to term
    /// does so by the same factor.
    private void takeAlong(double[][] along, double y, int terms) {
        boolean wet = liquid && y < h;
        double below = Math.exp(-alpha[0] * y);
        double belowStep = below * below;
        double above = Math.exp(-alpha[0] * (b - y));
        double aboveStep = above * above;
        double beyond = Math.exp(-alpha[0] * Math.abs(y - h));
        double beyondStep = beyond * beyond;
        for (int i = 0; i < terms; i++) {
            double al = alpha[i];
            double[] k = coefficients[i];
            double u = al * y;
            double v = al * (b - y);
            // Y and its first two derivatives, each over α to that power.
            double whole = (k[0] + k[1] * u) * below + (k[2] + k[3] * v) * above;
            double slope = -(k[0] + k[1] * (u - 1)) * below + (k[2] + k[3] * (v - 1)) * above;
            double curve = (k[0] + k[1] * (u - 2)) * below + (k[2] + k[3] * (v - 2)) * above;
            if (liquid) {
                double s = al * Math.abs(y - h);
                double kink = c[i] / (4 * al) * beyond;
                whole += kink * (3 + s) + (wet ? c[i] * (h - y) : 0);
                slope += kink * (2 + s) * (wet ? 1 : -1) - (wet ? c[i] / al : 0);
                curve += kink * (1 + s);
            } else {
                whole += c[i];
            }
            along[0][i] = whole;
            along[1][i] = al * al * (whole - nu * curve);
            along[2][i] = al * al * (nu * whole - curve);
            along[3][i] = -(1 - nu) * al * al * slope;
            below *= belowStep;
            above *= aboveStep;
            beyond *= beyondStep;
        }
    }
}
