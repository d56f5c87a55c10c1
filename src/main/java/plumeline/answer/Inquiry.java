package plumeline.answer;

import plumeline.quantity.PaperUnit;
import plumeline.text.Shape;

/// How a question is asked in text: what a new question has to write beside its typed class.
///
/// @param <I> the question's inputs as plain numbers
public interface Inquiry<I> {
    /// Gives its name.
    ///
    /// @return such as `framing`
    String name();

    /// Says what it asks.
    ///
    /// @return one line without a full stop
    String asks();

    /// Gives the files that its example names, so that this runs wherever it is put; a file of the asker's own under
    /// the same name goes before them.
    ///
    /// @return the files
    default Beside files() {
        return Beside.NOTHING;
    }

    /// Gives its grammar.
    ///
    /// @return the shape of its input
    Shape shape();

    /// Gives an input with comments that runs as it is.
    ///
    /// @return YAML, with a line end behind it
    String example();

    /// Reads a checked input. What doesn't make sense together is refused through `given`.
    ///
    /// @param given the input
    /// @return the inputs as plain numbers
    I read(Given given);

    /// Chooses what the question leaves to be chosen, such as places; it stays when an input is moved for intervals.
    /// On whole steps of a tape in that unit.
    ///
    /// @param inputs the inputs
    /// @param unit the unit of lengths
    /// @return what was chosen; empty where there is nothing to choose
    default double[] settle(I inputs, PaperUnit unit) {
        return new double[0];
    }

    /// Tells whether its answer can be listed row by row too.
    ///
    /// @return true where [#table] does it
    default boolean hasTable() {
        return false;
    }

    /// Lists its answer row by row: a line of heads, then a line a row, columns parted by spaces.
    ///
    /// @param inputs the inputs
    /// @param settled what was chosen
    /// @return text, with a line end behind it
    default String table(I inputs, double[] settled) {
        throw new UnsupportedOperationException(name() + " has no table");
    }

    /// Answers.
    ///
    /// @param inputs the inputs
    /// @param settled what was chosen
    /// @param words how sentences say values
    /// @return the answer
    Draft answer(I inputs, double[] settled, Words words);

    /// Answers again with an input moved, for intervals; without sentences.
    ///
    /// @param moved the inputs, one of them moved
    /// @param settled what was chosen
    /// @return the answer
    Draft vary(I moved, double[] settled);
}
