package plumeline.answer;

/// One named value of an answer.
///
/// @param name the answer's name, as in the contract: `distance`
/// @param value its value
/// @param rounding which way text for people may round it
/// @param law what the law behind it may be off by, whatever the inputs
public record Item(String name, Value value, Rounding rounding, Law law) {
    /// What a law may be off by.
    public sealed interface Law {
        /// Nothing that matters.
        record Exact() implements Law {}

        /// Its own interval, which what the inputs' ± do is added to.
        ///
        /// @param low low end of its 80 % interval, in the value's unit, > 0
        /// @param high high end, > 0
        record Within(double low, double high) implements Law {}
    }

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
        this(name, value, Rounding.NEAREST, new Law.Exact());
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
        return new Item(name, new Value.Number(value, unit), Rounding.ROUGH, new Law.Within(low, high));
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
        return new Item(name, value, way, law);
    }

    Item with(Value other) {
        return new Item(name, other, rounding, law);
    }
}
