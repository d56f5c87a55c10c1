package plumeline.resect;

import plumeline.geom.Point;

/// Where a place of the set should show in the still.
public sealed interface Spotted {
    /// It should be seen.
    ///
    /// @param pixel x, y, pixels
    record Seen(Point pixel) implements Spotted {}

    /// It has a place there, but can't be seen in the still.
    ///
    /// @param pixel x, y, pixels, perhaps beyond the edges
    /// @param why such as `behind second`
    record Covered(Point pixel, String why) implements Spotted {}

    /// Where it shows isn't known.
    ///
    /// @param why such as `seen over the tank's rim, which isn't computed`
    record Unknown(String why) implements Spotted {}
}
