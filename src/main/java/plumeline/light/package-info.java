/// Light on the set: pure functions of plain numbers.
///
/// Front classes: [plumeline.light.Intensity] for how a lamp's light goes out into its directions, and
/// [plumeline.light.LampFile] for what a photometric file says of a lamp.
///
/// Units are SI: candelas, lumens, metres, radians. A lamp's own frame has two angles: gamma from its axis, 0 along it,
/// π against it; C round the axis, counterclockwise as seen from behind the lamp looking along the axis.
///
/// Not here: where a lamp stands, plans and units text, where a file lies.
@NullMarked
package plumeline.light;

import org.jspecify.annotations.NullMarked;
