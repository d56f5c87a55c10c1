/// What a camera sees of bodies in light: rays followed from the lens through air, glass and water to what is there.
///
/// Front classes: [plumeline.scenery.World] says what there is at an instant, [plumeline.trace.Tracer] follows rays in
/// it, [plumeline.trace.Exposing] sums them into a [plumeline.trace.Plate]. Light is in three linear channels, of which
/// each is a luminance: 1 cd/m² of the neutral white is 1 in each. Axes are those of `geom`. What comes out rests on
/// the arguments and a seed alone, whatever the number of threads.
///
/// Not here: plans, lamps by name, how a sensor turns light into a picture, light that is thrown from body to body
/// (but by mirrors and through clear ones).
@NullMarked
package plumeline.trace;

import org.jspecify.annotations.NullMarked;
