package plumeline.water;

/// Range checks of arguments: a breach is our own bug, so it throws.
final class Need {
    private Need() {}

    static double positive(double value, String name) {
        return check(value > 0 && value < Double.POSITIVE_INFINITY, value, name, "finite and greater than 0");
    }

    static double notNegative(double value, String name) {
        return check(value >= 0 && value < Double.POSITIVE_INFINITY, value, name, "finite and not negative");
    }

    static double atMost(double value, double most, String name) {
        return check(value <= most, value, name, "at most " + most);
    }

    private static double check(boolean allowed, double value, String name, String range) {
        if (!allowed) {
            throw new IllegalArgumentException(name + " is " + value + "; must be " + range);
        }
        return value;
    }
}
