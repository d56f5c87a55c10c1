/// What the ray tracer works out without knowing of a world: numbers that are drawn, what falls from outlines, shares
/// that are mirrored, and ways by Snell's law through layers and round a corner.
///
/// Front class: [plumeline.trace.sums.Layers]. All are used again and again, by one
/// thread. Not here: rays, parts, lights (`trace`).
@NullMarked
package plumeline.trace.sums;

import org.jspecify.annotations.NullMarked;
