package plumeline.answer;

/// One named value of an answer.
///
/// @param name the answer's name, as in the contract: `distance`
/// @param value its value
/// @param rounding which way text for people may round it
/// @param course how it follows its inputs
public record Item(String name, Value value, Rounding rounding, Course course) {
    private static final Course STRAIGHT = new Course.Straight();

    /// Which way text for people may round a value; JSON has it in full.
    public enum Rounding {
        /// To the nearest figure that a hand can set.
        NEAREST,
        /// Never to more: how far something may be off, how high a camera may stand.
        DOWN,
        /// Never to less: how low a camera may stand, what travel is needed.
        UP,
        /// To two digits that count, lengths as ever: what a law only knows roughly.
        ROUGH,
        /// Never to less, in hundredths of a millimetre: how thick a line must be.
        HUNDREDTHS_UP
    }

    /// Makes a value that is rounded to the nearest.
    ///
    /// @param name the answer's name
    /// @param value its value
    public Item(String name, Value value) {
        this(name, value, Rounding.NEAREST, STRAIGHT);
    }

    /// Makes a length.
    ///
    /// @param name the answer's name
    /// @param metres the length, metres
    /// @return the value in mm
    public static Item millimetres(String name, double metres) {
        return of(name, metres * 1e3, "mm");
    }

    /// Makes a number.
    ///
    /// @param name the answer's name
    /// @param value the number, in the unit
    /// @param unit the contract's unit; `1` for a bare number
    /// @return the value
    public static Item of(String name, double value, String unit) {
        return new Item(name, new Value.Number(value, unit));
    }

    /// Makes a number > 0 of a law that has an interval of its own.
    ///
    /// @param name the answer's name
    /// @param value the number, in the unit, > 0
    /// @param unit the contract's unit; `1` for a bare number
    /// @param low low end of the law's 80 % interval, in the unit, > 0
    /// @param high high end, in the unit
    /// @return the value
    public static Item within(String name, double value, String unit, double low, double high) {
        return new Item(name, new Value.Number(value, unit), Rounding.ROUGH, new Course.OfLaw(low, high));
    }

    /// Makes a flag or a name.
    ///
    /// @param name the answer's name
    /// @param text the word
    /// @return the value
    public static Item word(String name, String text) {
        return new Item(name, new Value.Word(text));
    }

    /// Says which way it is rounded.
    ///
    /// @param way the way
    /// @return the value, rounded so
    public Item rounded(Rounding way) {
        return new Item(name, value, way, course);
    }

    /// Says how it follows its inputs.
    ///
    /// @param how the course
    /// @return the value, following so
    public Item following(Course how) {
        return new Item(name, value, rounding, how);
    }

    /// Says that it can't be less.
    ///
    /// @param least the least that can be, in its unit
    /// @return the value, with its interval no less
    public Item atLeast(double least) {
        return following(new Course.Bent(least, 0, 1));
    }

    /// Says that it can't be more.
    ///
    /// @param most the most that can be, in its unit
    /// @return the value, with its interval no more
    public Item atMost(double most) {
        return following(new Course.Bent(most, 1, 0));
    }

    Item with(Value other) {
        return new Item(name, other, rounding, course);
    }
}
