package plumeline.render;

import plumeline.trace.Plate;

/// A picture by fewer pixels, for who watches it come.
public final class Coarse {
    private static final int WHITE = 0xffffff;

    private Coarse() {}

    /// Gives a window of the same part of the camera's picture by fewer pixels.
    ///
    /// @param window the window
    /// @param step how many of its pixels each way become one, > 0
    /// @return the coarser window
    public static Window window(Window window, int step) {
        return step == 1
                ? window
                : new Window(window.frame(), Math.ceilDiv(window.width(), step), Math.ceilDiv(window.height(), step));
    }

    /// Makes it as large as a window, each pixel a block.
    ///
    /// @param coarse the picture
    /// @param window the window
    /// @return a picture of the window's size
    public static Pixels enlarged(Pixels coarse, Window window) {
        if (coarse.width() == window.width() && coarse.height() == window.height()) {
            return coarse;
        }
        int[] packed = new int[window.width() * window.height()];
        for (int y = 0; y < window.height(); y++) {
            int row = y * coarse.height() / window.height();
            for (int x = 0; x < window.width(); x++) {
                packed[y * window.width() + x] = coarse.at(x * coarse.width() / window.width(), row);
            }
        }
        return new Pixels(window.width(), window.height(), packed);
    }

    /// Tells which pixels of a plate have light summed.
    ///
    /// @param plate the plate
    /// @return white where they have, black where not
    public static Pixels drawn(Plate plate) {
        int[] packed = new int[plate.width() * plate.height()];
        for (int i = 0; i < packed.length; i++) {
            packed[i] = plate.count(i % plate.width(), i / plate.width()) > 0 ? WHITE : 0;
        }
        return new Pixels(plate.width(), plate.height(), packed);
    }

    /// Lays what is drawn of a picture over another.
    ///
    /// @param below the other
    /// @param above the picture
    /// @param drawn white where it is drawn
    /// @return both
    public static Pixels over(Pixels below, Pixels above, Pixels drawn) {
        int[] packed = new int[below.width() * below.height()];
        for (int i = 0; i < packed.length; i++) {
            packed[i] = (drawn.packed()[i] == WHITE ? above : below).packed()[i];
        }
        return new Pixels(below.width(), below.height(), packed);
    }
}
