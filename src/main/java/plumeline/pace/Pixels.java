package plumeline.pace;

import plumeline.quantity.Print;

/// Pixels and exposures in words.
final class Pixels {
    /// Of more pixels than this nobody counts the tenths.
    private static final double COARSE = 20;

    private Pixels() {}

    static String text(double pixels) {
        return pixels > 0 && pixels < 0.05 ? "under 0.1 px" : Print.number(pixels, pixels < COARSE ? 1 : 0) + " px";
    }

    static String exposure(Capture capture) {
        return "1/" + Print.number(1 / capture.exposureSeconds(), 0) + " s";
    }
}
