/// A film's timeline drawn as a ruler, a few seconds a drawing.
///
/// Under each other: which shot is seen, how fast it is played, frames and beats, the real time on its table, what is
/// heard, lettered and laid over. Front class: [TimelineRuler]. What is *not* here: which frame shows what
/// (`timeline`), pages.
@NullMarked
package plumeline.draw.time;

import org.jspecify.annotations.NullMarked;
