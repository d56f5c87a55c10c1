/// What is said of a thing in the water and of a tank on its table, for wants and cards alike: what tank and table
/// bear, what brings a thing down or turns it upright, what is missing of it.
///
/// Front classes: [plumeline.wet.CarriedTank], [plumeline.wet.Sinking], [plumeline.wet.Lacks].
///
/// Figures are SI inside; sentences give them as a hand sets them.
///
/// Not here: margins and verdicts (`want`), the laws (`water`), where things stand (`stage`).
@NullMarked
package plumeline.wet;

import org.jspecify.annotations.NullMarked;
