/// Water and what it does to a product on a table: substances, drops, float, trim and hang; what tank and line carry.
///
/// Front classes: [plumeline.water.Water] for pure water, [plumeline.water.Buoyancy] for what floats. Beside them:
/// [plumeline.water.Solution] (salt, sugar, glycerine), [plumeline.water.Material] (solids), [plumeline.water.MoistAir]
/// and [plumeline.water.Chilled] (dew), [plumeline.water.Surface] and [plumeline.water.Drops] (beads); bodies:
/// [plumeline.water.Form] and [plumeline.water.Vessel]; which end up: [plumeline.water.Attitudes]; tie heights and
/// loads: [plumeline.water.Hanging]; tanks: [plumeline.water.TankCheck], [plumeline.water.Plates],
/// [plumeline.water.TankTimes]; what things hang on: [plumeline.water.Line].
///
/// Units are SI: temperatures in kelvin, pressures in pascals, shares as fractions of one, angles in radians; all at
/// one atmosphere. Every law of a substance has a range. Inside it answers [plumeline.water.Figure.Known] with the
/// share it may be off; outside it answers [plumeline.water.Figure.Unknown] with the range, never a figure beyond it.
///
/// A floating body's own frame is that of `geom`: origin in the middle of its base, axis along z. `up` is the world's
/// upward direction as the body sees it; at tilt θ it is (sin θ, 0, cos θ): 0 is upright, π/2 lying, π upside down.
/// A pane's x runs along its width and y up from its lower edge. Levels are heights along `up` over the body's origin.
/// Densities are handed in. Still water; air weighs nothing here (1.2 g a litre) and keeps its volume (half a metre of
/// water would squeeze it by 5 %).
///
/// Not here: how things look through water (`optics`), units text, plans.
@NullMarked
package plumeline.water;

import org.jspecify.annotations.NullMarked;
