/// Questions on what the lens sees: `framing`, `reveal`.
///
/// Front class: [plumeline.ask.picture.PictureQuestions]; typed: [plumeline.ask.picture.Framing],
/// [plumeline.ask.picture.Reveal].
@NullMarked
package plumeline.ask.picture;

import org.jspecify.annotations.NullMarked;
