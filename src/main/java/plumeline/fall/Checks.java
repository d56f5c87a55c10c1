package plumeline.fall;

/// Range checks of arguments: a breach is our own bug, so it throws.
final class Checks {
    private Checks() {}

    static void positive(double value, String name) {
        if (!(value > 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException(name + " is " + value + "; must be finite and greater than 0");
        }
    }

    static void notNegative(double value, String name) {
        if (!(value >= 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException(name + " is " + value + "; must be finite and 0 or more");
        }
    }
}
