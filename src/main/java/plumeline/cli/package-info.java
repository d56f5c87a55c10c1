/// The commands: `./plumeline ask`, `help`, `--version` and those that work on a plan.
///
/// Front class: [plumeline.cli.Main]. A command is one class that implements `desk.Command` and one line in `Commands`;
/// those of several classes lie below, by subject. With `desk` this is the only room that prints, ends the process,
/// opens files or reads the clock and the environment; every other room hands its result back. Answers go to standard
/// output; progress and problems go to standard error. The process ends with 0 when it answered (whatever the
/// verdict), 1 when the program or the world failed, 2 when the input was refused, and 3 when `--strict` was asked for
/// and a want does not hold.
///
/// Not here: what an answer says (`ask`, `solve`), how a paper looks (`sheet`).
@NullMarked
package plumeline.cli;

import org.jspecify.annotations.NullMarked;
