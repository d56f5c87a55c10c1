/// Where each axis of a solved film is at each instant, for a machine that plays it and for papers that tell it.
///
/// A place counts from where the move begins, in metres or radians, and has the sign that `by` has in the plan: a turn
/// clockwise seen from above is positive, a way along one axis of the table has that axis's sign, a slanting way is
/// positive along itself. Seconds are real ones after GO. Front classes: [MovedAxis], [KeysCsv]. What is *not* here:
/// how a move runs (`motion`), what a machine can do (`pace`), files.
@NullMarked
package plumeline.keys;

import org.jspecify.annotations.NullMarked;
