package plumeline.trace;

/// How light goes across layers of air, glass and a third substance that lie face to face: Snell's law for a way
/// between two places on either side. It is used again and again.
///
/// **Source:** Snell's law; the flux tube's width by its derivative (any text on radiometry); own derivation.
final class Layers {
    private static final int MOST_STEPS = 30;

    /// A way that much nearer to the wanted one, as a share, has no more to gain.
    private static final double STILL = 1e-8;

    private final double glass;
    private double middle;

    /// How far aside light goes for each metre across a layer.
    double airSlope;

    double glassSlope;
    double middleSlope;

    /// Sine of the angle in the air.
    double sine;

    double airCosine;
    double glassCosine;
    double middleCosine;

    /// How wide a flux tube has grown: area across the layers by the square of the sine in the air, m².
    double spread;

    /// Takes the glass's index.
    Layers(double glass) {
        this.glass = glass;
    }

    /// Finds the way. Its sum of all that it goes aside is concave in its slope in the air, so that Newton's steps from
    /// the straight way's slope, which is too small, come to it from below.
    ///
    /// @param air how thick all air is, m, > 0
    /// @param panes how thick all glass is, m, ≥ 0
    /// @param rest how thick the third is, m, ≥ 0
    /// @param index of the third, ≥ 1
    /// @param aside how far aside the other place is, m, ≥ 0
    void find(double air, double panes, double rest, double index, double aside) {
        middle = index;
        double slope = aside / (air + panes + rest);
        for (int i = 0; i < MOST_STEPS; i++) {
            set(slope);
            double off = aside - air * airSlope - panes * glassSlope - rest * middleSlope;
            if (off <= STILL * aside) {
                break;
            }
            double more = airCosine * airCosine * airCosine;
            slope += off
                    / (air
                            + more
                                    * (panes / (glass * glassCosine * glassCosine * glassCosine)
                                            + rest / (middle * middleCosine * middleCosine * middleCosine)));
        }
        double over = air / airCosine + panes / (glass * glassCosine) + rest / (middle * middleCosine);
        double along = air / (airCosine * airCosine * airCosine)
                + panes / (glass * glassCosine * glassCosine * glassCosine)
                + rest / (middle * middleCosine * middleCosine * middleCosine);
        spread = over * along;
    }

    private void set(double slope) {
        airSlope = slope;
        airCosine = 1 / Math.sqrt(1 + slope * slope);
        sine = slope * airCosine;
        double inGlass = sine / glass;
        glassCosine = Math.sqrt(1 - inGlass * inGlass);
        glassSlope = inGlass / glassCosine;
        double inMiddle = sine / middle;
        middleCosine = Math.sqrt(1 - inMiddle * inMiddle);
        middleSlope = inMiddle / middleCosine;
    }

    /// What passes a pane between air and the third, unpolarised, with all that goes to and fro in it: so many such
    /// panes one after another, in the same plane.
    double passesPane(int panes) {
        double s = both(mirrored(airCosine, glass * glassCosine), mirrored(glass * glassCosine, middle * middleCosine));
        double p = both(mirrored(glass * airCosine, glassCosine), mirrored(middle * glassCosine, glass * middleCosine));
        return panes == 1 ? (s + p) / 2 : (s * s + p * p) / 2;
    }

    /// What passes the third's surface to the air.
    double passesSurface() {
        double s = mirrored(airCosine, middle * middleCosine);
        double p = mirrored(middle * airCosine, middleCosine);
        return 1 - (s + p) / 2;
    }

    private static double both(double one, double other) {
        return (1 - one) * (1 - other) / (1 - one * other);
    }

    private static double mirrored(double one, double other) {
        double amplitude = (one - other) / (one + other);
        return amplitude * amplitude;
    }
}
