package plumeline.ask;

import plumeline.quantity.PaperUnit;
import plumeline.text.Shape;

/// How a question is asked in text: what a new question has to write beside its typed class.
///
/// @param <I> the question's inputs as plain numbers
interface Inquiry<I> {
    /// Its name: `framing`.
    String name();

    /// What it asks, in a line.
    String asks();

    /// Its grammar.
    Shape shape();

    /// An input with comments that runs as it is.
    String example();

    /// Reads a checked input. What doesn't make sense together is refused through `given`.
    I read(Given given);

    /// Chooses what the question leaves to be chosen, such as places; it stays when an input is moved for intervals.
    /// On whole steps of a tape in that unit. Empty where there is nothing to choose.
    double[] settle(I inputs, PaperUnit unit);

    /// Answers.
    Draft answer(I inputs, double[] settled, Words words);

    /// Answers again with an input moved, for intervals; without sentences.
    Draft vary(I moved, double[] settled);
}
