/// The questions on sound.
///
/// Front class: [plumeline.ask.sound.SoundQuestions].
@NullMarked
package plumeline.ask.sound;

import org.jspecify.annotations.NullMarked;
