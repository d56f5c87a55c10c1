/// The commands that draw: `draft` and `still`, `frames` and `animatic`, `compare`; and the pictures on papers.
///
/// Front classes: the five commands and [plumeline.cli.picture.PaperPictures]. Not here: how light runs (`trace`), what
/// a film shows (`assemble`), how far a still is off (`resect`).
@NullMarked
package plumeline.cli.picture;

import org.jspecify.annotations.NullMarked;
