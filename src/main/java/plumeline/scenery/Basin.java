package plumeline.scenery;

import plumeline.geom.Bounds;

/// A tank of clear panes, open above, with water in it. Bodies may stand in it.
///
/// @param outside its glass's outer bounds; open above
/// @param inside the room inside, to the same upper edge
/// @param waterLineMetres height of the water over the table, m; at or under the floor it is dry
/// @param glass what its panes are of
/// @param water what is in it
public record Basin(Bounds outside, Bounds inside, double waterLineMetres, Medium glass, Medium water) {}
