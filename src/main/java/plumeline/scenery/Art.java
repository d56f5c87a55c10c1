package plumeline.scenery;

/// A print: channels of a picture, linear, and how much it covers. Rows run from the top.
public final class Art {
    private final int width;
    private final int height;
    private final float[] texels;

    /// Takes a picture.
    ///
    /// @param width texels across, > 0
    /// @param height texels down, > 0
    /// @param texels red, green, blue as shares of one sent back, and cover, 0 to 1, four a texel, rows from the
    /// top
    public Art(int width, int height, float[] texels) {
        if (width < 1 || height < 1 || texels.length != 4 * width * height) {
            throw new IllegalArgumentException("a print needs four numbers a texel");
        }
        this.width = width;
        this.height = height;
        this.texels = texels.clone();
    }

    /// Gives how many texels lie across.
    ///
    /// @return texels
    public int width() {
        return width;
    }

    /// Gives how many texels lie down.
    ///
    /// @return texels
    public int height() {
        return height;
    }

    /// Mixes the four texels about a place.
    ///
    /// @param across from the left edge, share of the width, 0 to 1
    /// @param down from the upper edge, share of the height, 0 to 1
    /// @param into takes red, green, blue and cover
    public void at(double across, double down, double[] into) {
        double x = Math.clamp(across * width - 0.5, 0, width - 1.0);
        double y = Math.clamp(down * height - 0.5, 0, height - 1.0);
        int left = (int) x;
        int top = (int) y;
        int right = Math.min(left + 1, width - 1);
        int low = Math.min(top + 1, height - 1);
        double u = x - left;
        double v = y - top;
        for (int i = 0; i < 4; i++) {
            double upper = (1 - u) * texels[4 * (top * width + left) + i] + u * texels[4 * (top * width + right) + i];
            double lower = (1 - u) * texels[4 * (low * width + left) + i] + u * texels[4 * (low * width + right) + i];
            into[i] = (1 - v) * upper + v * lower;
        }
    }
}
