package plumeline.water;

/// Range checks of arguments: a breach is our own bug, so it throws.
final class Ranges {
    private Ranges() {}

    static double checkPositive(double value, String name) {
        check(value > 0 && value < Double.POSITIVE_INFINITY, name, value, "finite and greater than 0");
        return value;
    }

    static double checkNotNegative(double value, String name) {
        check(value >= 0 && value < Double.POSITIVE_INFINITY, name, value, "finite and not negative");
        return value;
    }

    static double checkAtMost(double value, double most, String name) {
        check(value <= most, name, value, "at most " + most);
        return value;
    }

    static void check(boolean allowed, String name, double value, String range) {
        if (!allowed) {
            throw new IllegalArgumentException(name + " is " + value + "; must be " + range);
        }
    }
}
