/// Where something of one number turns: false position and halving, for every room that looks for one.
///
/// Front class: [plumeline.roots.Roots]. Numbers have no units here.
///
/// Not here: searches over several numbers (`search`).
@NullMarked
package plumeline.roots;

import org.jspecify.annotations.NullMarked;
