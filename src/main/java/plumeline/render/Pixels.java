package plumeline.render;

/// A finished picture: 8 bits a channel, by IEC 61966-2-1 (sRGB), rows from the top.
public final class Pixels {
    private final int width;
    private final int height;
    private final int[] packed;

    /// Takes a picture.
    ///
    /// @param width pixels across, > 0
    /// @param height pixels down, > 0
    /// @param packed a pixel each, `red · 65536 + green · 256 + blue`; it is not copied
    public Pixels(int width, int height, int[] packed) {
        if (width < 1 || height < 1 || packed.length != width * height) {
            throw new IllegalArgumentException("a picture needs a number a pixel");
        }
        this.width = width;
        this.height = height;
        this.packed = packed;
    }

    /// Gives how many pixels lie across.
    ///
    /// @return pixels
    public int width() {
        return width;
    }

    /// Gives how many pixels lie down.
    ///
    /// @return pixels
    public int height() {
        return height;
    }

    /// Gives a pixel.
    ///
    /// @param x pixels from the left
    /// @param y pixels from the top
    /// @return `red · 65536 + green · 256 + blue`
    public int at(int x, int y) {
        return packed[y * width + x];
    }

    /// Gives all pixels, row by row; whoever takes them leaves them as they are.
    ///
    /// @return a number each
    public int[] packed() {
        return packed;
    }
}
