/// What people say of a film's versions, read and written as comma-separated values.
///
/// A note has a version, the film's timecode, an author, a text and whether it is done; where it lands on the plan's
/// shots is filled in. Nothing that somebody wrote is dropped: columns that we don't know are carried along.
/// Front class: [ReviewNotes]. What is *not* here: which frame shows what, files.
@NullMarked
package plumeline.cut.review;

import org.jspecify.annotations.NullMarked;
