/// What wants on moves and time read off a shot: how far things smear, jump, drift and lie apart, whether machines make
/// their moves, whether there are frames enough, how long a label is read, and what a change of speed drags along.
///
/// Real time and the screen's are coupled by the shot's retime map alone. Front classes: [PaceMeasures] for wants,
/// [Coupling] for notes and papers. What is *not* here: verdicts (`solve`), how a move runs (`motion`), what exposure
/// costs light (`lit`).
@NullMarked
package plumeline.pace;

import org.jspecify.annotations.NullMarked;
