/// Masks that follow what holds a thing, a hanging line or a rig's rod, through move, tank wall, lens and time: for
/// each captured frame of a clip, at the clip's size, and for each screen frame that shows one; and the clean plates
/// that they ask for. Front: [plumeline.cut.mask.Masked]; files by [plumeline.cut.mask.MaskFiles].
///
/// Pixels count from the upper left corner of the picture's first pixel: x to the right, y down; that pixel's middle is
/// (0.5, 0.5). Not here: where a line is in space and how a lens sees a place (`stage`), which clip is cut where
/// (`timeline`).
@NullMarked
package plumeline.cut.mask;

import org.jspecify.annotations.NullMarked;
