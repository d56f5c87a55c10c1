package plumeline.trace;

/// The rays of a block of pixels: all that go from a round pupil through a rectangle of the focal plane.
///
/// At a distance z before the lens they reach from the rectangle's edges, as seen from the middle of the pupil, by
/// `pupil × |1 − z / focus|` outward. What lies beyond an edge by more than that is a convex region, so that a shape
/// whose corners all do lies beyond it wholly.
final class Frustum {
    /// What is nearer than this isn't beside, m.
    private static final double SLACK_METRES = 1e-9;

    private final double[] eye;
    private final double pupil;
    private final double focus;
    private double left;
    private double right;
    private double low;
    private double high;

    /// Takes a camera.
    ///
    /// @param eye middle of its pupil, then its right, up and forward
    /// @param pupilMetres radius of its pupil, m
    /// @param focusMetres how far the focal plane is, m
    Frustum(double[] eye, double pupilMetres, double focusMetres) {
        this.eye = eye;
        pupil = pupilMetres;
        focus = focusMetres;
    }

    /// Sets the block's edges, tangents.
    void over(double left, double right, double low, double high) {
        this.left = left;
        this.right = right;
        this.low = low;
        this.high = high;
    }

    /// Whether a shape lies wholly beside all rays.
    ///
    /// @param corners of a box round it, three numbers each
    /// @param from where the first of its eight is
    boolean misses(double[] corners, int from) {
        double mostLeft = Double.POSITIVE_INFINITY;
        double mostRight = Double.POSITIVE_INFINITY;
        double mostLow = Double.POSITIVE_INFINITY;
        double mostHigh = Double.POSITIVE_INFINITY;
        double farthest = Double.NEGATIVE_INFINITY;
        for (int i = from; i < from + Shapes.CORNERS; i += 3) {
            double dx = corners[i] - eye[0];
            double dy = corners[i + 1] - eye[1];
            double dz = corners[i + 2] - eye[2];
            double x = dx * eye[3] + dy * eye[4] + dz * eye[5];
            double y = dx * eye[6] + dy * eye[7] + dz * eye[8];
            double z = dx * eye[9] + dy * eye[10] + dz * eye[11];
            double spread = pupil > 0 ? pupil * Math.abs(1 - z / focus) : 0;
            mostLeft = Math.min(mostLeft, left * z - x - spread);
            mostRight = Math.min(mostRight, x - right * z - spread);
            mostLow = Math.min(mostLow, low * z - y - spread);
            mostHigh = Math.min(mostHigh, y - high * z - spread);
            farthest = Math.max(farthest, z);
        }
        return Math.max(Math.max(mostLeft, mostRight), Math.max(mostLow, mostHigh)) > SLACK_METRES
                || farthest < -SLACK_METRES;
    }
}
