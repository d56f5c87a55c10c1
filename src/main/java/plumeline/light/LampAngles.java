package plumeline.light;

import plumeline.ranges.Ranges;

/// Checks of angles in a lamp's frame.
final class LampAngles {
    private LampAngles() {}

    static void check(double cRadians, double gammaRadians) {
        Ranges.checkFinite(cRadians, "C");
        if (!(gammaRadians >= 0 && gammaRadians <= Math.PI)) {
            Ranges.check(false, "gamma", gammaRadians, "0 to pi");
        }
    }

    static void checkShare(double cRadians, double share) {
        Ranges.checkFinite(cRadians, "C");
        Ranges.check(share > 0 && share <= 1, "share", share, "over 0, at most 1");
    }
}
