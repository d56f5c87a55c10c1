package plumeline.pace;

import plumeline.stage.Scene;

/// Which way a thing's label looks from the lens, for papers.
public final class LabelFacing {
    private LabelFacing() {}

    /// Gives the turn of the middle of a thing's label, or of its front, from the lens.
    ///
    /// @param scene the instant
    /// @param thing its index
    /// @return radians from −π to π, positive clockwise seen from above
    public static double radians(Scene scene, int thing) {
        return Readable.facingRadians(scene, thing);
    }
}
