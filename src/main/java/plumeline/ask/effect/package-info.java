/// Questions on what is let go in front of the lens: `ink`, `clear-water`, `fall`.
///
/// Front class: [plumeline.ask.effect.EffectQuestions].
@NullMarked
package plumeline.ask.effect;

import org.jspecify.annotations.NullMarked;
