package plumeline.cut.mask;

import plumeline.geom.Point;
import plumeline.stage.Picture;
import plumeline.stage.Scene;

/// A clip's size: the pixels of the capture mode, the picture as held.
///
/// @param acrossPixels pixels across
/// @param downPixels pixels down
public record ClipSize(int acrossPixels, int downPixels) {
    /// Reads a picture's size.
    ///
    /// @param picture the picture
    /// @return its pixels, rounded to whole ones
    public static ClipSize of(Picture picture) {
        return new ClipSize((int) Math.rint(picture.widthMetres() / picture.pixelMetres()), (int)
                Math.rint(picture.heightMetres() / picture.pixelMetres()));
    }

    /// Pixels that a tangent of 1 has.
    static double scalePixels(Scene scene) {
        return scene.picture().imageMetres() / scene.picture().pixelMetres();
    }

    /// Where a point of the picture is in the clip, px from its upper left corner.
    Point pixel(Scene scene, Point tangents) {
        double scale = scalePixels(scene);
        return new Point(acrossPixels / 2.0 + tangents.x() * scale, downPixels / 2.0 - tangents.y() * scale);
    }
}
