/// Checks of arguments for rooms that know laws: what is out of range throws, with its name and what it must be.
///
/// One class: [plumeline.ranges.Ranges].
///
/// Not here: what a plan or a question may say (`text`), the range in which a law of matter holds (its own room).
@NullMarked
package plumeline.ranges;

import org.jspecify.annotations.NullMarked;
