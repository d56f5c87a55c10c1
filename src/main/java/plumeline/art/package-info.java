/// Prints of labels: files as their makers hand them over, as shares of light sent back.
///
/// Front class: [plumeline.art.ArtFile]. Bytes come in, nothing is opened: an SVG that points at anything outside
/// itself is refused. Pictures are drawn in memory, by the JDK's own means; no screen is needed.
///
/// Not here: where a label sits (`trace`), which file it is (`plan`), files (`cli`).
@NullMarked
package plumeline.art;

import org.jspecify.annotations.NullMarked;
