/// The marks of a film, found: what to set, how far off each may be, and what to do where it can't be had.
///
/// [Solve] finds free marks so that everything may be off together as far as possible, and answers each want with a
/// verdict, a margin, the reason and what to try; whatever it proposes has been tested against all other wants. A
/// locked mark never moves. Invariants: pure; each shot on one thread, so that the same plan gives the same answer.
/// What is *not* here: what a want measures (`want`), how the search goes (`search`), paper (`draw`, `sheet`).
@NullMarked
package plumeline.solve;

import org.jspecify.annotations.NullMarked;
