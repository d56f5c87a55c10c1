/// The questions that can be asked with a handful of numbers: text or records in, records out.
///
/// Front class: [plumeline.ask.Questions]. The questions of a subject lie in a package below, each with a front of its
/// own; these packages know the form of an answer (`answer`) and the physics, and not each other.
/// [plumeline.ask.picture.Framing] and [plumeline.ask.picture.Reveal] can be asked with records of plain SI numbers
/// too.
///
/// **To add a question:** in its subject's package write its typed class (`Inputs`, what is found, `answer`), a
/// package-private `Inquiry` beside it (grammar, example, reading, wording), a method of the subject's front, and name
/// it in [plumeline.ask.Questions].
///
/// No input or output here: files arrive as bytes. Plans are not known here.
@NullMarked
package plumeline.ask;

import org.jspecify.annotations.NullMarked;
