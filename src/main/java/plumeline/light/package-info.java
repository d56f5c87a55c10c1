/// Light on the set: pure functions of plain numbers.
///
/// Front classes: [plumeline.light.Emitter] for what shines with an area and how much of it arrives,
/// [plumeline.light.RoundMirror] for where a light is seen in a glossy cylinder, [plumeline.light.Exposure] for what a
/// setting needs, [plumeline.light.Intensity] for how a lamp's light goes out into its directions, and
/// [plumeline.light.LampFile] for what a photometric file says of a lamp.
///
/// Units are SI: cd/m², lx, candelas, lumens, metres, radians. A lamp's own frame has two angles: gamma from its axis,
/// 0 along it, π against it; C round the axis, counterclockwise as seen from behind the lamp looking along the axis.
///
/// Not here: where a lamp stands, plans and units text, where a file lies; mirror images in other forms (`mirror`).
@NullMarked
package plumeline.light;

import org.jspecify.annotations.NullMarked;
