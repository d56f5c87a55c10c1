package plumeline.ink;

/// Range checks of arguments: a breach is our own bug, so it throws.
final class Checks {
    private Checks() {}

    static void positive(double value, String name) {
        check(value > 0, name, value, "greater than 0");
    }

    static void notNegative(double value, String name) {
        check(value >= 0, name, value, "0 or more");
    }

    private static void check(boolean allowed, String name, double value, String range) {
        if (!(allowed && Double.isFinite(value))) {
            throw new IllegalArgumentException(name + " is " + value + "; must be finite and " + range);
        }
    }
}
