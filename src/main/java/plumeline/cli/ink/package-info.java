/// The command `ink`: which shot's ink is run and how finely, one run after another into the plan's folder, what is
/// said of them.
///
/// Front class: [plumeline.cli.ink.InkCommand]. Not here: where the films lie (`desk`), how ink moves (`plume`).
@NullMarked
package plumeline.cli.ink;

import org.jspecify.annotations.NullMarked;
