/// The light of a shot on its stage: its lamps as they shine, what of them comes to a place of a surface past whatever
/// stands between, and what the camera's setting needs there.
///
/// Front classes: [plumeline.lit.Lighting] for the light on a place, [plumeline.lit.Spots] for places on things,
/// [plumeline.lit.Setting] for the camera's setting, [plumeline.lit.LightMeasures] for what wants measure by them,
/// [plumeline.lit.Metered] for what a meter shows, [plumeline.lit.Reflections] for what a thing mirrors of lamps.
///
/// Faces shine by Lambert's law, even or with a hot centre, a window, a grid; points by the inverse square. Cards throw
/// back what lamps shine on them, once; what walls, tables and things throw back isn't counted. Into a tank, and
/// through it and out again, light is followed through glass and surface; out of lamps in a tank it isn't.
@NullMarked
package plumeline.lit;

import org.jspecify.annotations.NullMarked;
