package plumeline.light;

import java.util.Arrays;
import java.util.OptionalDouble;
import plumeline.ranges.Ranges;

/// A lamp's intensity as it was measured: half planes round the axis (type C photometry), each with the same angles
/// from the axis. Between them it is linear in both angles; round the axis it closes from the last plane to the first;
/// before the first and past the last angle from the axis it is 0. One plane alone is the same all round.
public final class IntensityTable implements Intensity {
    private final double[] planes;
    private final double[] gammas;
    private final double[][] rows;
    private final double peak;
    private final double flux;

    private IntensityTable(double[] planes, double[] gammas, double[][] rows) {
        this.planes = planes;
        this.gammas = gammas;
        this.rows = rows;
        peak = peak(rows);
        flux = flux(planes, gammas, rows);
    }

    /// Makes a table. What is given is copied.
    ///
    /// @param planeRadians the half planes' angles C, radians, growing, 0 to less than 2π, at least one
    /// @param gammaRadians angles from the axis, radians, growing, 0 to π, at least two
    /// @param candelas for each plane the intensities by gamma, candelas, ≥ 0
    /// @return the table
    /// @throws IllegalArgumentException outside these ranges, or where the counts don't agree
    public static IntensityTable of(double[] planeRadians, double[] gammaRadians, double[][] candelas) {
        double[][] rows = new double[candelas.length][];
        for (int i = 0; i < rows.length; i++) {
            rows[i] = candelas[i].clone();
        }
        return ofShared(planeRadians.clone(), gammaRadians.clone(), rows);
    }

    /// Makes a table that keeps the arrays; planes may share their row.
    static IntensityTable ofShared(double[] planes, double[] gammas, double[][] rows) {
        checkGrow(planes, 1, Math.nextDown(2 * Math.PI), "C");
        checkGrow(gammas, 2, Math.PI, "gamma");
        Ranges.check(rows.length == planes.length, "number of rows", rows.length, "that of the planes");
        for (double[] row : rows) {
            Ranges.check(row.length == gammas.length, "length of a row", row.length, "the number of gammas");
            for (double candelas : row) {
                Ranges.checkNotNegative(candelas, "intensity");
            }
        }
        return new IntensityTable(planes, gammas, rows);
    }

    @Override
    public double candelas(double cRadians, double gammaRadians) {
        LampAngles.check(cRadians, gammaRadians);
        int last = gammas.length - 1;
        if (gammaRadians < gammas[0] || gammaRadians > gammas[last]) {
            return 0;
        }
        int cell = Math.min(atOrBefore(gammas, gammaRadians), last - 1);
        double along = (gammaRadians - gammas[cell]) / (gammas[cell + 1] - gammas[cell]);
        Between between = between(cRadians);
        double near = mix(between, cell);
        return near + (mix(between, cell + 1) - near) * along;
    }

    @Override
    public double peakCandelas() {
        return peak;
    }

    /// Gives all light that leaves, exactly for the table as it is interpolated: in each plane the integral of a
    /// piecewise linear curve with sin γ in closed form, each plane counted for the half steps to its neighbours.
    ///
    /// **Source:** own derivation, `docs/derivations/light.md`.
    ///
    /// @return luminous flux, lumens, ≥ 0
    @Override
    public double fluxLumens() {
        return flux;
    }

    @Override
    public OptionalDouble findWidthRadians(double cRadians, double share) {
        LampAngles.checkShare(cRadians, share);
        double[] ahead = curve(cRadians);
        double[] behind = curve(cRadians + Math.PI);
        double most = Math.max(
                Arrays.stream(ahead).max().orElse(0),
                Arrays.stream(behind).max().orElse(0));
        int last = gammas.length - 1;
        boolean closed = gammas[last] == Math.PI && Math.max(ahead[last], behind[last]) >= share * most;
        if (most == 0 || closed) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(edge(ahead, behind, share * most) + edge(behind, ahead, share * most));
    }

    /// The outermost angle on a side at which the intensity still is a wanted one; where it is nowhere on that side,
    /// the innermost one on the other side, as a negative angle.
    private double edge(double[] side, double[] other, double wanted) {
        int last = gammas.length - 1;
        if (side[last] >= wanted) {
            return gammas[last];
        }
        for (int i = last - 1; i >= 0; i--) {
            if (side[i] >= wanted) {
                return crossing(side, i, i + 1, wanted);
            }
        }
        int first = 0;
        while (other[first] < wanted) {
            first++;
        }
        return first == 0 ? -gammas[0] : -crossing(other, first, first - 1, wanted);
    }

    /// Where a curve comes down to a wanted value between an angle at which it has it and its neighbour.
    private double crossing(double[] curve, int has, int lacks, double wanted) {
        double share = (curve[has] - wanted) / (curve[has] - curve[lacks]);
        return gammas[has] + (gammas[lacks] - gammas[has]) * share;
    }

    private double[] curve(double cRadians) {
        Between between = between(cRadians);
        double[] curve = new double[gammas.length];
        for (int i = 0; i < curve.length; i++) {
            curve[i] = mix(between, i);
        }
        return curve;
    }

    private double mix(Between between, int gamma) {
        double before = rows[between.before][gamma];
        return before + (rows[between.after][gamma] - before) * between.share;
    }

    /// Two neighbouring planes, and how far it is from the one to the other.
    private record Between(int before, int after, double share) {}

    private Between between(double cRadians) {
        double turn = cRadians - 2 * Math.PI * Math.floor(cRadians / (2 * Math.PI));
        int found = atOrBefore(planes, turn);
        int before = found < 0 ? planes.length - 1 : found;
        int after = (before + 1) % planes.length;
        double past = turn - planes[before];
        return new Between(before, after, (past < 0 ? past + 2 * Math.PI : past) / step(planes, before));
    }

    /// The place of the last value that isn't over a wanted one; -1 where all are.
    private static int atOrBefore(double[] growing, double wanted) {
        int found = Arrays.binarySearch(growing, wanted);
        return found >= 0 ? found : -found - 2;
    }

    /// How far it is from a plane to the next, radians, over 0, round the axis.
    private static double step(double[] planes, int plane) {
        boolean wraps = plane == planes.length - 1;
        return wraps ? planes[0] + 2 * Math.PI - planes[plane] : planes[plane + 1] - planes[plane];
    }

    private static double peak(double[][] rows) {
        double peak = 0;
        for (double[] row : rows) {
            for (double candelas : row) {
                peak = Math.max(peak, candelas);
            }
        }
        return peak;
    }

    private static double flux(double[] planes, double[] gammas, double[][] rows) {
        double[] weights = weights(gammas);
        double flux = 0;
        for (int plane = 0; plane < planes.length; plane++) {
            int previous = (plane + planes.length - 1) % planes.length;
            double radians = (step(planes, previous) + step(planes, plane)) / 2;
            double inPlane = 0;
            for (int i = 0; i < weights.length; i++) {
                inPlane += weights[i] * rows[plane][i];
            }
            flux += radians * inPlane;
        }
        return flux;
    }

    /// What each intensity of a plane counts for: between angles a and b, `∫ (b − γ)/(b − a) sin γ dγ = cos a − s` at a
    /// and `s − cos b` at b, with `s = (sin b − sin a)/(b − a)`.
    private static double[] weights(double[] gammas) {
        double[] weights = new double[gammas.length];
        for (int i = 0; i + 1 < gammas.length; i++) {
            double a = gammas[i];
            double b = gammas[i + 1];
            double s = (Math.sin(b) - Math.sin(a)) / (b - a);
            weights[i] += Math.max(0, Math.cos(a) - s);
            weights[i + 1] += Math.max(0, s - Math.cos(b));
        }
        return weights;
    }

    private static void checkGrow(double[] radians, int least, double most, String name) {
        Ranges.check(radians.length >= least, "number of " + name, radians.length, "at least " + least);
        for (int i = 0; i < radians.length; i++) {
            boolean grows = i == 0 ? radians[i] >= 0 : radians[i] > radians[i - 1];
            Ranges.check(grows && radians[i] <= most, name, radians[i], "growing, from 0 to " + most);
        }
    }
}
