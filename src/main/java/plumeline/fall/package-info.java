/// Pieces that fall or rise: how fast they are after a way, how long they are in a frame, how many fill a vessel.
///
/// Front class: [plumeline.fall.Fall]. Beside it [plumeline.fall.Piece], [plumeline.fall.Drag] (coefficients by
/// Reynolds number, with their ranges), [plumeline.fall.Medium] (air, water) and [plumeline.fall.Packing].
///
/// Units are SI. Ways are of the piece's middle, from rest, along its motion: down for what sinks, up for what floats.
///
/// Not here: pieces that flutter, tumble sideways, hit each other or bounce; surfaces that they fall through; units
/// text.
@NullMarked
package plumeline.fall;

import org.jspecify.annotations.NullMarked;
