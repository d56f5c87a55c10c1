/// A shot's looks: how its passes are lit and coloured against each other, and how they are cut.
///
/// Front class: [plumeline.look.LookMeasures], from a want on looks as written to what it measures;
/// [plumeline.look.CutLooks] and [plumeline.look.FlashCount] for the film's cuts.
///
/// A look is a pass of a shot, or the shot itself; a pair of looks is compared at one instant of both. Colours are of
/// the CIE 1931 observer.
///
/// Not here: verdicts, what light falls where, what colours are, whether a flash is allowed to anybody.
@NullMarked
package plumeline.look;

import org.jspecify.annotations.NullMarked;
