/// The form of an answer, and what every question's answering shares.
///
/// Front classes: [plumeline.answer.Question], [plumeline.answer.Answer]. A question has a grammar (a `Shape` of the
/// `text` room, so every problem of an input is found at once and named with its place), an example that runs as it is,
/// and an answer that is always of the same form. A subject's questions write an [plumeline.answer.Inquiry] each; here
/// are defaults that are listed as assumed, ± that becomes intervals, verdict, JSON and text.
///
/// **Intervals:** a ± in an input is a 95 % half-width. Each such input is moved by itself (others as given), the
/// answer computed again, and the changes added as a root sum of squares: first order, inputs taken as independent and
/// normal. `low` and `high` bound the middle 80 % so found. The interval of a law itself
/// ([plumeline.answer.Course.OfLaw]) is added likewise, in logarithms.
///
/// No input or output here: files arrive as bytes, those that a question names through [plumeline.answer.Beside]. What
/// is asked, physics and plans are not known here.
@NullMarked
package plumeline.answer;

import org.jspecify.annotations.NullMarked;
