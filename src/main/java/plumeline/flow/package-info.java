/// Water that moves in a tank and carries dye: three-dimensional incompressible flow, dye making it heavier or lighter,
/// with solid bodies standing in it.
///
/// Front class: [plumeline.flow.Flow]. It is set up from a [plumeline.flow.Tank] (a [plumeline.flow.Grid], its
/// [plumeline.flow.Walls], what is solid), a [plumeline.flow.Liquid] and the ways dye gets in
/// ([plumeline.flow.Release]); it is run up to a time, and gives its
/// [plumeline.flow.Dye], the [plumeline.flow.Front] of that and its [plumeline.flow.State], from which it goes on
/// later as if it had never stopped.
///
/// Axes are those of `geom`: x to the right, y away, z up; here the origin is the tank's inner corner at the floor, on
/// the left and in front, so that the surface lies at the grid's height. Units are SI. Dye is a share of one: 1 is what
/// came out of the nozzle, 0 clear water. Fields are kept in single precision: what a cell of some millimetres leaves
/// out is a thousand times its rounding.
///
/// The same setting and seed give the same bits for any number of threads: work is cut into horizontal layers of cells,
/// and sums are added up layer by layer. Equations, discretisation, ranges: `docs/derivations/flow.md`.
///
/// Not here: laws of plumes and puffs and what the flow means for a shot (`ink`), files, plans.
@NullMarked
package plumeline.flow;

import org.jspecify.annotations.NullMarked;
