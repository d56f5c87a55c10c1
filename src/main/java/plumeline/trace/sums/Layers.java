package plumeline.trace.sums;

/// How light goes across layers of air, glass and a third substance that lie face to face: Snell's law for a way
/// between two places on either side. It is used again and again.
///
/// **Source:** Snell's law; the flux tube's width by its derivative (any text on radiometry); own derivation.
public final class Layers {
    private static final int MOST_STEPS = 30;

    /// A way that much nearer to the wanted one, as a share, has no more to gain.
    private static final double STILL = 1e-8;

    private final double glass;
    private double middle;

    /// How far aside light goes for each metre across a layer.
    private double airSlope;

    private double glassSlope;
    private double middleSlope;

    /// Sine of the angle in the air.
    private double sine;

    private double airCosine;
    private double glassCosine;
    private double middleCosine;

    private double overGlass;
    private double overMiddle;

    /// How wide a flux tube has grown: area across the layers by the square of the sine in the air, m².
    private double spread;

    /// Takes the glass's index.
    ///
    /// @param glass its index, > 1
    public Layers(double glass) {
        this.glass = glass;
    }

    /// Finds the way. Its sum of all that it goes aside is concave in its slope in the air, so that Newton's steps from
    /// the slope by small angles, which is too small, come to it from below.
    ///
    /// @param air how thick all air is, m, > 0
    /// @param panes how thick all glass is, m, ≥ 0
    /// @param rest how thick the third is, m, ≥ 0
    /// @param index of the third, ≥ 1
    /// @param aside how far aside the other place is, m, ≥ 0
    public void find(double air, double panes, double rest, double index, double aside) {
        middle = index;
        double slope = aside / (air + panes / glass + rest / middle);
        for (int i = 0; i < MOST_STEPS; i++) {
            set(slope);
            double off = aside - air * airSlope - panes * glassSlope - rest * middleSlope;
            if (off <= STILL * aside) {
                break;
            }
            double more = airCosine * airCosine * airCosine;
            slope += off / (air + more * (panes * grows(glass, overGlass) + rest * grows(middle, overMiddle)));
        }
        glassCosine = 1 / (glass * overGlass);
        middleCosine = 1 / (middle * overMiddle);
        double over = air / airCosine + panes * overGlass + rest * overMiddle;
        double along = air / (airCosine * airCosine * airCosine)
                + panes * grows(glass, overGlass)
                + rest * grows(middle, overMiddle);
        spread = over * along;
    }

    /// How fast the slope in a substance grows with the sine in the air.
    private static double grows(double index, double over) {
        return index * index * over * over * over;
    }

    private void set(double slope) {
        double square = 1 / (1 + slope * slope);
        airSlope = slope;
        airCosine = Math.sqrt(square);
        sine = slope * airCosine;
        // Each is 1 over index times cosine there: the way in it for each metre across, by its index.
        overGlass = 1 / Math.sqrt(glass * glass - 1 + square);
        overMiddle = 1 / Math.sqrt(middle * middle - 1 + square);
        glassSlope = sine * overGlass;
        middleSlope = sine * overMiddle;
    }

    /// What passes a pane between air and the third, unpolarised, with all that goes to and fro in it: so many such
    /// panes one after another, in the same plane.
    ///
    /// @param panes one, or two
    /// @return share of one
    public double passesPane(int panes) {
        double s = both(mirrored(airCosine, glass * glassCosine), mirrored(glass * glassCosine, middle * middleCosine));
        double p = both(mirrored(glass * airCosine, glassCosine), mirrored(middle * glassCosine, glass * middleCosine));
        return panes == 1 ? (s + p) / 2 : (s * s + p * p) / 2;
    }

    /// What passes the third's surface to the air.
    ///
    /// @return share of one
    public double passesSurface() {
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

    /// How far aside light goes in the air for each metre across it.
    ///
    /// @return it
    public double airSlope() {
        return airSlope;
    }

    /// Likewise in the glass.
    ///
    /// @return it
    public double glassSlope() {
        return glassSlope;
    }

    /// Likewise in the third substance.
    ///
    /// @return it
    public double middleSlope() {
        return middleSlope;
    }

    /// The sine of its angle in the air.
    ///
    /// @return it
    public double sine() {
        return sine;
    }

    /// The cosine of its angle in the air.
    ///
    /// @return it
    public double airCosine() {
        return airCosine;
    }

    /// The cosine of its angle in the third substance.
    ///
    /// @return it
    public double middleCosine() {
        return middleCosine;
    }

    /// How wide a flux tube has grown: area across the layers by the square of the sine in the air, m².
    ///
    /// @return it
    public double spread() {
        return spread;
    }
}
