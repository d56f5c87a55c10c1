/// What becomes of a shot's ink: the flow in the shot's own tank with its things in the water, run several times with
/// different noise, and what of it matters to a crew.
///
/// Front classes: [plumeline.plume.InkShots] makes an [plumeline.plume.InkShot] of a staged shot;
/// [plumeline.plume.InkRun] steps one run frame by frame and gives each as a [plumeline.plume.DyeFrame];
/// [plumeline.plume.DyeFilm] is how a run is kept; [plumeline.plume.Viewing] looks at the films from the camera and
/// gives the [plumeline.plume.InkRecord], which whoever judges a want reads; [plumeline.plume.InkTries] draws the
/// tries. [plumeline.plume.InkKey] tells whether a record is of a shot as it stands.
///
/// Time 0 is the release's start. Places are in the table frame but where a grid is named: there the origin is the
/// tank's inner corner at its floor, on the left and in front. Depths are below the still water line, heights over a
/// thing's base along its axis. Dye is a share of one: 1 is what came out of the nozzle.
///
/// Nothing here reads or writes files: bytes are handed in and out. The forms they have are in `docs/ink-files.md`.
///
/// Not here: the flow itself (`flow`), laws of plumes (`ink`), which want holds (`want`), how dye looks (`render`).
@NullMarked
package plumeline.plume;

import org.jspecify.annotations.NullMarked;
