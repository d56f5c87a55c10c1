package plumeline.quantity;

import java.util.List;

/// Reads quantities: `value unit [at D] [± spread] [origin]`.
///
/// The value is a decimal number, a fraction (`1/48`) or a whole number with a fraction (`2 5/8`); the minus sign may
/// be U+2212; spaces before the unit may be left out; `+-` and `+/-` read as `±`. Numbers beyond ±10¹⁵ or longer than
/// 40 characters are refused.
public final class Quantities {
    private Quantities() {}

    /// Reads a quantity of any kind; a bare number is of kind [Kind#NUMBER].
    ///
    /// @param text as written
    /// @return what it says, or why it says nothing
    public static Reading read(String text) {
        return new QuantityReader(text, List.of()).read();
    }

    /// Reads a quantity that must be of one of these kinds.
    ///
    /// @param text as written
    /// @param accepted the kinds, at least one; the first is named first in messages
    /// @return what it says, or why that is not accepted
    public static Reading read(String text, Kind... accepted) {
        return read(text, List.of(accepted));
    }

    /// Reads a quantity that must be of one of these kinds.
    ///
    /// @param text as written
    /// @param accepted the kinds; any where the list is empty
    /// @return what it says, or why that is not accepted
    public static Reading read(String text, List<Kind> accepted) {
        return new QuantityReader(text, accepted).read();
    }

    /// Gets a quantity from text that is known to be good, as in our own tables.
    ///
    /// @param text as written
    /// @return the quantity
    /// @throws IllegalArgumentException where the text is none
    public static Quantity get(String text) {
        return switch (read(text)) {
            case Reading.Read(Quantity quantity) -> quantity;
            case Reading.Refused refused ->
                throw new IllegalArgumentException(text + " is " + refused.given() + "; must be " + refused.allowed());
        };
    }
}
