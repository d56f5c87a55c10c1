package plumeline.light;

import java.util.TreeMap;

/// The half planes of a photometric file as they are stored, and what symmetry makes of them.
///
/// Angles here are in degrees, as written: mirrored ones then come out as they would be written too.
final class Planes {
    private static final double ANGLE_SLACK_DEGREES = 0.01;
    /// How far the planes of 0 and 360 degrees, which are one, may differ, as a share of the most intense direction.
    private static final double TWICE_SLACK = 0.01;

    /// About which planes the light is the same on both sides.
    enum Symmetry {
        NONE,
        AXIAL,
        ABOUT_C0,
        ABOUT_C90,
        ABOUT_BOTH
    }

    private Planes() {}

    static boolean isNear(double degrees, double wanted) {
        return Math.abs(degrees - wanted) <= ANGLE_SLACK_DEGREES;
    }

    /// Makes the full table. `text` is where the planes were read from, for what is refused.
    static IntensityTable unfold(
            FileText text, Symmetry symmetry, double[] planeDegrees, double[] gammaDegrees, double[][] rows)
            throws UnusableFile {
        var full = new TreeMap<Double, double[]>();
        for (int i = 0; i < planeDegrees.length; i++) {
            double c = snapped(planeDegrees[i]);
            double[] row = rows[i];
            double[] before = full.putIfAbsent(turned(c), row);
            if (symmetry == Symmetry.NONE && before != null) {
                checkSame(text, before, row);
            }
            if (symmetry == Symmetry.ABOUT_C0 || symmetry == Symmetry.ABOUT_BOTH) {
                full.putIfAbsent(turned(360 - c), row);
            }
            if (symmetry == Symmetry.ABOUT_C90 || symmetry == Symmetry.ABOUT_BOTH) {
                full.putIfAbsent(turned(180 - c), row);
            }
            if (symmetry == Symmetry.ABOUT_BOTH) {
                full.putIfAbsent(turned(180 + c), row);
            }
        }
        double[] planes = new double[full.size()];
        double[][] unfolded = new double[full.size()][];
        int next = 0;
        for (var plane : full.entrySet()) {
            planes[next] = Math.toRadians(plane.getKey());
            unfolded[next++] = plane.getValue();
        }
        IntensityTable table = IntensityTable.ofShared(planes, radians(gammaDegrees), unfolded);
        if (table.peakCandelas() == 0) {
            throw text.refuse("no intensity over 0", "at least one");
        }
        return table;
    }

    /// Refuses planes, given as growing angles of a whole turn, that leave a hole before the turn closes.
    static void checkCloses(FileText text, double[] degrees) throws UnusableFile {
        double widest = 0;
        for (int i = 1; i < degrees.length; i++) {
            widest = Math.max(widest, degrees[i] - degrees[i - 1]);
        }
        double left = degrees[0] + 360 - degrees[degrees.length - 1];
        if (left > widest + ANGLE_SLACK_DEGREES) {
            throw text.refuse(
                    "the last plane is at " + FileText.show(degrees[degrees.length - 1]) + " deg",
                    "planes all round, with no wider gap at the end than between them");
        }
    }

    private static void checkSame(FileText text, double[] first, double[] again) throws UnusableFile {
        double peak = 0;
        double apart = 0;
        for (int i = 0; i < first.length; i++) {
            peak = Math.max(peak, first[i]);
            apart = Math.max(apart, Math.abs(first[i] - again[i]));
        }
        if (apart > TWICE_SLACK * peak) {
            throw text.refuse(
                    "planes 0 and 360 deg differ by " + (float) apart + " cd", "one plane, the same within 1 %");
        }
    }

    /// An angle by which symmetry goes, where it is meant.
    private static double snapped(double degrees) {
        double quarter = 90.0 * Math.round(degrees / 90);
        return isNear(degrees, quarter) ? quarter : degrees;
    }

    /// The same plane, from 0 to less than 360 degrees.
    private static double turned(double degrees) {
        double turned = degrees >= 360 ? degrees - 360 : degrees;
        return turned < 0 ? turned + 360 : turned;
    }

    private static double[] radians(double[] degrees) {
        double[] radians = new double[degrees.length];
        for (int i = 0; i < degrees.length; i++) {
            radians[i] = Math.toRadians(degrees[i]);
        }
        return radians;
    }
}
