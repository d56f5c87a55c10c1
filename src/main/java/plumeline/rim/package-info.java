/// Where sight goes that meets round clear glass: through the wall, through what is in it or past that, and out.
///
/// Front classes: [plumeline.rim.ClearRound] for one ray, [plumeline.rim.GlassView] for what a camera sees of lights
/// across the outline. Units are SI; a body's own frame and the table's are those of `geom`. Each face is a smooth
/// clear one: Snell's law and Fresnel's formulas, exact in space. Only the main way is followed: at every face what
/// passes, or all of it where it is totally reflected. What faces mirror beside that (the outer face's own highlights,
/// and at the very rim a hair of what stands behind), what goes to and fro in the wall, colour and absorption are left
/// out.
///
/// Not here: flat-sided glass, frosted glass, what a thing's wall is, what counts as dark.
@NullMarked
package plumeline.rim;

import org.jspecify.annotations.NullMarked;
