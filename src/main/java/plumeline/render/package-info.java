/// Pictures of a shot: its stage as a world for rays, exposed and developed as its camera would.
///
/// Front classes: [plumeline.render.ShotSet] makes a staged shot a world at any instant, [plumeline.render.Render]
/// exposes it, [plumeline.render.Develop] makes a picture of what was exposed. Files are handed in as bytes and out as
/// bytes.
///
/// Not here: how rays run (`trace`), what is cut where (`assemble`), moving pictures (`clip`), line art (`draw`).
@NullMarked
package plumeline.render;

import org.jspecify.annotations.NullMarked;
