/// Water, what is dissolved in it, the air's moisture, and drops on a surface: pure functions of plain numbers.
///
/// Front class: [plumeline.water.Water] for pure water. Beside it: [plumeline.water.Solution] (salt, sugar, glycerine),
/// [plumeline.water.Material] (solids), [plumeline.water.MoistAir] and [plumeline.water.Chilled] (dew),
/// [plumeline.water.Surface] and [plumeline.water.Drops] (beads).
///
/// Units are SI: temperatures in kelvin, pressures in pascals, shares as fractions of one, angles in radians; all at
/// one atmosphere. Every law has a range. Inside it answers [plumeline.water.Figure.Known] with the share it may be
/// off; outside it answers [plumeline.water.Figure.Unknown] with the range, never a figure beyond it.
///
/// Not here: how things look through water (`optics`), units text, plans.
@NullMarked
package plumeline.water;

import org.jspecify.annotations.NullMarked;
