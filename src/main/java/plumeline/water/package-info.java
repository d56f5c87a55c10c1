/// Water in tanks: what the tank and its table carry, what hangs in it on a line.
///
/// Front classes: [plumeline.water.TankCheck], [plumeline.water.Line]. Panes are bent by [plumeline.water.Plates]; how
/// a tank fills, empties and comes to rest is in [plumeline.water.TankTimes].
///
/// Units are SI. A pane's x runs along its width and y up from its lower edge. Densities and gravity come in as
/// arguments. Not here: how a thing looks through water (`optics`), plans and units text.
@NullMarked
package plumeline.water;

import org.jspecify.annotations.NullMarked;
