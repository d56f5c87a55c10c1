package plumeline.ranges;

/// Range checks of arguments: a breach is our own bug, so it throws. Each says what was given and what must be.
public final class Ranges {
    private Ranges() {}

    /// Checks that a value is finite and greater than 0.
    ///
    /// @param value the value
    /// @param name what it is
    /// @return the value
    /// @throws IllegalArgumentException where it isn't
    public static double checkPositive(double value, String name) {
        check(value > 0 && value < Double.POSITIVE_INFINITY, name, value, "finite and greater than 0");
        return value;
    }

    /// Checks that a value is finite and not negative.
    ///
    /// @param value the value
    /// @param name what it is
    /// @return the value
    /// @throws IllegalArgumentException where it isn't
    public static double checkNotNegative(double value, String name) {
        check(value >= 0 && value < Double.POSITIVE_INFINITY, name, value, "finite and not negative");
        return value;
    }

    /// Checks that a value is finite.
    ///
    /// @param value the value
    /// @param name what it is
    /// @return the value
    /// @throws IllegalArgumentException where it isn't
    public static double checkFinite(double value, String name) {
        check(Double.isFinite(value), name, value, "finite");
        return value;
    }

    /// Checks that a value is finite and greater than a limit.
    ///
    /// @param value the value
    /// @param limit what it must be over
    /// @param name what it is
    /// @return the value
    /// @throws IllegalArgumentException where it isn't
    public static double checkAbove(double value, double limit, String name) {
        if (!(value > limit && value < Double.POSITIVE_INFINITY)) {
            check(false, name, value, "finite and greater than " + limit);
        }
        return value;
    }

    /// Checks that a value is no more than a limit.
    ///
    /// @param value the value
    /// @param most the limit
    /// @param name what it is
    /// @return the value
    /// @throws IllegalArgumentException where it is more
    public static double checkAtMost(double value, double most, String name) {
        if (!(value <= most)) {
            check(false, name, value, "at most " + most);
        }
        return value;
    }

    /// Checks a condition.
    ///
    /// @param allowed whether the value is allowed
    /// @param name what it is
    /// @param value the value
    /// @param range what it must be, in words
    /// @throws IllegalArgumentException where it isn't allowed
    public static void check(boolean allowed, String name, double value, String range) {
        if (!allowed) {
            throw new IllegalArgumentException(name + " is " + value + "; must be " + range);
        }
    }
}
