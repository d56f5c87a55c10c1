/// The command `lesson`: what was measured on the set, as it is typed, kept beside the plan and told again.
///
/// Front class: [plumeline.cli.lesson.LessonCommand]. Not here: the file of lessons (`desk`), what is learnt
/// (`lesson`).
@NullMarked
package plumeline.cli.lesson;

import org.jspecify.annotations.NullMarked;
