/// Many independent tasks, done by several threads, with progress and a way to stop them.
///
/// Front class: [plumeline.jobs.Jobs]. What a task gives must not depend on who does it or beside what; then all they
/// give is the same for any number of threads, and stands in the order of the tasks.
///
/// Not here: what a task does, clocks (how long is left is told by whoever has one), other machines.
@NullMarked
package plumeline.jobs;

import org.jspecify.annotations.NullMarked;
