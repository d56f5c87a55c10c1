package plumeline.render;

import plumeline.colour.Srgb;
import plumeline.trace.Plate;

/// How noisy a picture still is: the mean standard error of its pixels as a screen shows them, black ones apart.
public final class Noise {
    /// The screen's scale is followed over so little, share of white.
    private static final double STEP = 1e-4;

    private Noise() {}

    /// Gives it.
    ///
    /// @param plate the exposed plate
    /// @param developing how the camera develops
    /// @return share of the screen's whole scale; endless where a pixel has fewer than two rays
    public static double of(Plate plate, Developing developing) {
        double scale = developing.sharePerLuminance();
        double sum = 0;
        long count = 0;
        for (int y = 0; y < plate.height(); y++) {
            for (int x = 0; x < plate.width(); x++) {
                double mean = (plate.light(x, y, 0) + plate.light(x, y, 1) + plate.light(x, y, 2)) / 3;
                if (mean > 0 || plate.count(x, y) < 2) {
                    sum += shown(scale * mean, scale * plate.error(x, y));
                    count++;
                }
            }
        }
        return count == 0 ? 0 : sum / count;
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
