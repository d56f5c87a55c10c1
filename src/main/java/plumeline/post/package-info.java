/// Everything that post opens, as files by name: lists, timelines, scenes, keys, masks, sounds, notes and papers.
///
/// Each file is made when it is written, so that few are in memory at once; the same plan gives the same bytes. Front
/// class: [Post]. What is *not* here: what is in a file (`cut`, `keys`, `sheet`), where files go (`cli`).
@NullMarked
package plumeline.post;

import org.jspecify.annotations.NullMarked;
