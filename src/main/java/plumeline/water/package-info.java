/// What water does to a product: whether it floats, which way up it comes to rest, how it hangs.
///
/// Front class: [plumeline.water.Buoyancy]. Bodies: [plumeline.water.Form] and [plumeline.water.Vessel]; which end up:
/// [plumeline.water.Attitudes]; tie heights and loads: [plumeline.water.Hanging].
///
/// Units are SI. A body's own frame is that of `geom`: origin in the middle of its base, axis along z. `up` is the
/// world's upward direction as the body sees it; at tilt θ it is (sin θ, 0, cos θ): 0 is upright, π/2 lying, π upside
/// down. Levels are heights along `up` over the body's origin. Densities are handed in. Still water; air weighs
/// nothing here (1.2 g a litre) and keeps its volume (half a metre of water would squeeze it by 5 %).
@NullMarked
package plumeline.water;

import org.jspecify.annotations.NullMarked;
