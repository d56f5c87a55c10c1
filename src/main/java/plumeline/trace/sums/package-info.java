/// What the ray tracer works out without knowing of a world: numbers that are drawn, what falls from outlines, shares
/// that are mirrored, and ways by Snell's law through layers and round a corner.
///
/// Front classes: [plumeline.trace.sums.Draws] and [plumeline.trace.sums.Layers]. They are used again and again, by one
/// thread. Not here: rays, parts, lights (`trace`).
@NullMarked
package plumeline.trace.sums;

import org.jspecify.annotations.NullMarked;
