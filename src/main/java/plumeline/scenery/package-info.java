/// What there is before a camera at an instant: bodies and surfaces with what light does at them, lamps, a tank, ink.
///
/// Front class: [plumeline.scenery.World]. Light is in three linear channels, of which each is a luminance: 1 cd/m² of
/// the neutral white is 1 in each. Axes are those of `geom`.
///
/// Not here: how rays run in it (`trace`), where it comes from (`render`).
@NullMarked
package plumeline.scenery;

import org.jspecify.annotations.NullMarked;
