/// One question, one answer: text or records in, records out.
///
/// Front class: [plumeline.ask.Questions]. A question has a grammar (a `Shape` of the `text` room, so every problem of
/// an input is found at once and named with its place), an example that runs as it is, and an answer that is always of
/// the same form. [plumeline.ask.Framing] and [plumeline.ask.Reveal] can be asked with records of plain SI numbers too.
///
/// **To add a question:** write its typed class (`Inputs`, what is found, `answer`), a package-private `Inquiry`
/// beside it (grammar, example, reading, wording), and name it in [plumeline.ask.Questions]. Everything else is here
/// already: defaults that are listed as assumed, ± that becomes intervals, verdict, JSON, text.
///
/// **Intervals:** a ± in an input is a 95 % half-width. Each such input is moved by itself (others as given), the
/// answer computed again, and the changes added as a root sum of squares: first order, inputs taken as independent and
/// normal. `low` and `high` bound the middle 80 % so found.
///
/// No input or output here: files arrive as bytes. Plans are not known here.
@NullMarked
package plumeline.ask;

import org.jspecify.annotations.NullMarked;
