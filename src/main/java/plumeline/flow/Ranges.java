package plumeline.flow;

/// Range checks of arguments: a breach is our own bug, so it throws.
final class Ranges {
    private Ranges() {}

    static void checkPositive(double value, String name) {
        check(value > 0 && value < Double.POSITIVE_INFINITY, name, value, "finite and greater than 0");
    }

    static void checkNotNegative(double value, String name) {
        check(value >= 0 && value < Double.POSITIVE_INFINITY, name, value, "finite and not negative");
    }

    static void checkFinite(double value, String name) {
        check(Double.isFinite(value), name, value, "finite");
    }

    static void checkShare(double value, String name) {
        check(value >= 0 && value <= 1, name, value, "0 to 1");
    }

    static void check(boolean allowed, String name, double value, String range) {
        if (!allowed) {
            throw new IllegalArgumentException(name + " is " + value + "; must be " + range);
        }
    }
}
