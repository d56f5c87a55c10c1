/// The camera's and the things' moves of a solved shot as a scene for programs that make pictures: animated glTF 2.0.
///
/// Axes: ours are x to camera right, y away from it, z up; glTF's are x to the right, y up, z toward the viewer, so
/// that a place (x, y, z) is written (x, z, −y). Metres, radians, seconds of screen time from the shot's own first
/// frame. Front class: [MovesGlb]. What is *not* here: how anything moves (`stage`), lists for editors, masks, files.
@NullMarked
package plumeline.cut.scene;

import org.jspecify.annotations.NullMarked;
