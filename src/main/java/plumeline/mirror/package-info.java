/// What is seen mirrored in glossy bodies, and how bright: bodies of revolution, boxes, flat panes.
///
/// Front class: [plumeline.mirror.GlossyBody]. Units are SI; places and directions are of the table frame
/// (`geom`). Every piece of a profile and every face is a mirror of its own; edges mirror nothing, and light that goes
/// from one mirror to another is not followed.
///
/// Not here: which finish a thing has, where lights stand, what is behind clear glass.
@NullMarked
package plumeline.mirror;

import org.jspecify.annotations.NullMarked;
