package plumeline.flicker;

/// Whether a change between two colours involves a saturated red.
///
/// **Source:** WCAG 2.2, note to "general flash and red flash thresholds", after ISO 9241-391: either state has
/// `R/(R + G + B)` of 0.8 or more, and both are more than 0.2 apart in the CIE 1976 chromaticity diagram. Primaries of
/// sRGB by IEC 61966-2-1, from memory.
public final class SaturatedRed {
    private static final double LEAST_SHARE = 0.8;
    private static final double LEAST_DISTANCE = 0.2;

    private SaturatedRed() {}

    /// A colour in linear light of the sRGB primaries.
    ///
    /// @param red 0 to 1
    /// @param green 0 to 1
    /// @param blue 0 to 1
    public record Linear(double red, double green, double blue) {
        private boolean isRed() {
            double sum = red + green + blue;
            return sum > 0 && red / sum >= LEAST_SHARE - 1e-12;
        }

        /// CIE 1976 u′ and v′; those of white for black, which has none.
        private double[] chromaticity() {
            double x = 0.4124 * red + 0.3576 * green + 0.1805 * blue;
            double y = 0.2126 * red + 0.7152 * green + 0.0722 * blue;
            double z = 0.0193 * red + 0.1192 * green + 0.9505 * blue;
            double sum = x + 15 * y + 3 * z;
            return sum > 0 ? new double[] {4 * x / sum, 9 * y / sum} : new Linear(1, 1, 1).chromaticity();
        }
    }

    /// Tells whether a change from one colour to the other, or back, is half a red flash.
    ///
    /// @param one a look's colour
    /// @param other the other look's
    /// @return true where it counts
    public static boolean counts(Linear one, Linear other) {
        double[] a = one.chromaticity();
        double[] b = other.chromaticity();
        return (one.isRed() || other.isRed()) && Math.hypot(a[0] - b[0], a[1] - b[1]) > LEAST_DISTANCE;
    }
}
