/// Ink let go in still water: when its front arrives, how wide and how thin it is then, how clear the water stays.
///
/// Front classes: [plumeline.ink.Ink] for a descent with its spread, [plumeline.ink.Learnt] for one after takes of its
/// ink were read, [plumeline.ink.Clarity] for the water after it.
/// Below them the laws, each a [plumeline.ink.Course]: [plumeline.ink.Puff] (let go at once), [plumeline.ink.RowPuff]
/// (the same from a slot), [plumeline.ink.Stream] (maintained), [plumeline.ink.LaminarThread]; [plumeline.ink.Release]
/// holds what is let go, [plumeline.ink.FrontFit] a front that was read from takes, [plumeline.ink.ReadTake] a take
/// with its readings.
///
/// Units are SI. Distances of the laws count from the initial front: the nozzle's tip, or the surface below it;
/// depths count from the still surface; times from the first ink that leaves the nozzle. Buoyancy is + where ink sinks.
/// `low` and `high` bound 80 %: the published ranges of coefficients carried through one by one, and how far one take
/// is from the next, added as a root sum of squares in logarithms.
///
/// Not here: what the water does round a product (a simulation's work), walls and floor, currents, units text, plans.
@NullMarked
package plumeline.ink;

import org.jspecify.annotations.NullMarked;
