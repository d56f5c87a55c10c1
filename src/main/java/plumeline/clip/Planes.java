package plumeline.clip;

/// A picture as brightness and two differences of colour, these at half the width and half the height.
///
/// `Y = 16 + 219 (0.2126 R + 0.7152 G + 0.0722 B)`, `Cb = 128 + 224 (B − Y') / 1.8556`, `Cr = 128 + 224 (R − Y') /
/// 1.5748`, R, G and B being shares of full as a display has them. A colour difference stands at the left of its two
/// pixels and between its two rows: across it is mixed 1 : 2 : 1, down evenly.
///
/// **Source:** ITU-R BT.709-6, items 3.2 to 3.5 and 4.6 (from memory); where colour differences stand: ITU-T H.264,
/// annex E, chroma sample location type 0.
final class Planes {
    private static final double RED = 0.2126;
    private static final double BLUE = 0.0722;
    private static final double GREEN = 1 - RED - BLUE;

    private final int width;
    private final int height;
    private final byte[][] planes;
    private final double[] blues;
    private final double[] reds;

    Planes(int width, int height) {
        this.width = width;
        this.height = height;
        planes = new byte[][] {new byte[width * height], new byte[width * height / 4], new byte[width * height / 4]};
        blues = new double[2 * width];
        reds = new double[2 * width];
    }

    int width(int plane) {
        return plane == 0 ? width : width / 2;
    }

    int rows(int plane) {
        return plane == 0 ? height : height / 2;
    }

    byte[] bytes(int plane) {
        return planes[plane];
    }

    /// Takes a picture, `red · 65536 + green · 256 + blue` a pixel.
    void fill(int[] packed) {
        if (packed.length != width * height) {
            throw new IllegalArgumentException("a picture of " + packed.length + " pixels for " + width * height);
        }
        for (int y = 0; y < height; y += 2) {
            row(packed, y, 0);
            row(packed, y + 1, width);
            for (int x = 0; x < width; x += 2) {
                int at = y / 2 * (width / 2) + x / 2;
                planes[1][at] = code(128 + 224 * mixed(blues, x));
                planes[2][at] = code(128 + 224 * mixed(reds, x));
            }
        }
    }

    private void row(int[] packed, int y, int into) {
        for (int x = 0; x < width; x++) {
            int pixel = packed[y * width + x];
            double red = (pixel >> 16 & 255) / 255.0;
            double green = (pixel >> 8 & 255) / 255.0;
            double blue = (pixel & 255) / 255.0;
            double bright = RED * red + GREEN * green + BLUE * blue;
            planes[0][y * width + x] = code(16 + 219 * bright);
            blues[into + x] = (blue - bright) / (2 * (1 - BLUE));
            reds[into + x] = (red - bright) / (2 * (1 - RED));
        }
    }

    /// Mixes a pixel of both rows with those beside it; at an edge that pixel stands for what is beyond.
    private double mixed(double[] rows, int x) {
        int left = Math.max(0, x - 1);
        return (rows[left] + 2 * rows[x] + rows[x + 1] + rows[width + left] + 2 * rows[width + x] + rows[width + x + 1])
                / 8;
    }

    private static byte code(double value) {
        return (byte) (int) Math.floor(value + 0.5);
    }
}
