package plumeline.assemble;

import plumeline.trace.Exposing;

/// How finely a camera's picture is drawn, and which part of it is.
///
/// @param width pixels across the whole picture, > 0
/// @param height pixels down the whole picture, > 0
/// @param kept the part that is drawn
public record View(int width, int height, Exposing.Tile kept) {
    /// Checks that the part lies within.
    public View {
        boolean isWithin = kept.left() >= 0
                && kept.top() >= 0
                && kept.width() > 0
                && kept.height() > 0
                && kept.left() + kept.width() <= width
                && kept.top() + kept.height() <= height;
        if (!isWithin) {
            throw new IllegalArgumentException(kept + " of " + width + " x " + height);
        }
    }

    /// Draws all of it.
    ///
    /// @param width pixels across, > 0
    /// @param height pixels down, > 0
    /// @return the view
    public static View whole(int width, int height) {
        return new View(width, height, new Exposing.Tile(0, 0, width, height));
    }

    /// Tells what it draws in a name for files.
    ///
    /// @return such as `640x360`, or `1138x640+390+0+358x640` for a part
    public String name() {
        String all = width + "x" + height;
        return kept.width() == width && kept.height() == height
                ? all
                : all + "+" + kept.left() + "+" + kept.top() + "+" + kept.width() + "x" + kept.height();
    }
}
