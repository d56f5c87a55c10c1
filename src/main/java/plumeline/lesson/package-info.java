/// What was measured on the set, and what it teaches: a text beside the plan whose values take the place of the plan's
/// before anything is staged; of ink, how fast and wide it comes down, the next try, and the one change that helps
/// most.
///
/// Front classes: [plumeline.lesson.Lessons] for the text and what it does to a plan, [plumeline.lesson.InkLesson] for
/// an ink, [plumeline.lesson.NextTry] for a shot.
///
/// The plan is never changed; a value that comes from here has the origin `measured` and the place where it stands.
/// Estimates bound 80 %.
///
/// Not here: the law by which readings combine (`ink`), files, wants' margins.
@NullMarked
package plumeline.lesson;

import org.jspecify.annotations.NullMarked;
