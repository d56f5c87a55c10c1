package plumeline.resect;

import java.util.List;
import plumeline.geom.Vec;

/// A place of the set that a hand can find in a still.
///
/// Its name leads with the thing's in the shot: `first.top.left`, `first.label.top_left`, `tank.water.right`. Left and
/// right are as the camera sees them; a box's `front` is the side that faces −y at turn 0, its left and right are those
/// of one who looks at that side.
public sealed interface Landmark {
    /// Gives its name.
    ///
    /// @return the name
    String name();

    /// Which end of a rim.
    enum Side {
        /// The left one, as the camera sees it.
        LEFT,
        /// The right one.
        RIGHT
    }

    /// Where a turned body's outline leaves a rim: the place of the rim at which sight just grazes the mantle.
    ///
    /// @param name its name
    /// @param thing the thing's index
    /// @param heightMetres the rim's height over the base, metres
    /// @param radiusMetres its radius, metres, over 0
    /// @param slope by how much the mantle's radius grows a metre upwards there, dimensionless
    /// @param side which end
    record Rim(String name, int thing, double heightMetres, double radiusMetres, double slope, Side side)
            implements Landmark {}

    /// A place on a thing's surface.
    ///
    /// @param name its name
    /// @param thing the thing's index
    /// @param own the place in the thing's own frame, metres
    /// @param outward the surface's normals there, one a face that meets in it, own frame; none for a tip
    record OnThing(String name, int thing, Vec own, List<Vec> outward) implements Landmark {
        /// Copies the list.
        public OnThing {
            outward = List.copyOf(outward);
        }
    }

    /// A place of the tank.
    ///
    /// @param name its name
    /// @param corner which
    /// @param side which end of the wall that faces the camera
    record OnTank(String name, Corner corner, Side side) implements Landmark {}

    /// The mouth that ink comes from.
    ///
    /// @param name its name
    record Mouth(String name) implements Landmark {}

    /// A height of the tank.
    enum Corner {
        /// The outer block's upper edge.
        RIM,
        /// The outer block's lower edge.
        FOOT,
        /// Where the water's surface meets the facing wall's inner face.
        WATER
    }
}
