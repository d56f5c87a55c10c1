package plumeline.render;

import java.util.Arrays;
import plumeline.colour.Srgb;
import plumeline.trace.Plate;

/// How noisy a picture still is: the standard error, as a screen shows it, that 19 of 20 of its pixels stay under,
/// black ones apart. A mean would call a picture clean whose small glossy thing is all grain before an even wall.
public final class Noise {
    /// The screen's scale is followed over so little, share of white.
    private static final double STEP = 1e-4;

    /// The share of pixels that must be cleaner.
    private static final double MOST = 0.95;

    private Noise() {}

    /// Gives it.
    ///
    /// @param plate the exposed plate
    /// @param developing how the camera develops
    /// @return share of the screen's whole scale; endless where a pixel has fewer than two rays
    public static double of(Plate plate, Developing developing) {
        double scale = developing.sharePerLuminance();
        double[] errors = new double[plate.width() * plate.height()];
        int count = 0;
        for (int y = 0; y < plate.height(); y++) {
            for (int x = 0; x < plate.width(); x++) {
                double mean = (plate.light(x, y, 0) + plate.light(x, y, 1) + plate.light(x, y, 2)) / 3;
                if (mean > 0 || plate.count(x, y) < 2) {
                    errors[count++] = shown(scale * mean, scale * plate.error(x, y));
                }
            }
        }
        Arrays.sort(errors, 0, count);
        return count == 0 ? 0 : errors[(int) (MOST * (count - 1))];
    }

    /// A standard error as it is shown; none of it where the picture is white all the same.
    private static double shown(double share, double error) {
        if (Double.isInfinite(error)) {
            return error;
        }
        double low = Math.clamp(share - Math.max(error, STEP) / 2, 0, 1);
        double high = Math.clamp(share + Math.max(error, STEP) / 2, 0, 1);
        return (Srgb.coded(high) - Srgb.coded(low)) * error / Math.max(error, STEP);
    }
}
