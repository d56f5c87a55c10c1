package plumeline.trace;

/// What was summed of a picture: light by pixel and channel, and how many rays it is of. Rows run from the top.
///
/// Threads may fill parts of it that have no pixel in common.
public final class Plate {
    private final int width;
    private final int height;
    private final double[] sums;
    private final double[] squares;
    private final int[] counts;

    /// Makes a dark one.
    ///
    /// @param width pixels across, > 0
    /// @param height pixels down, > 0
    public Plate(int width, int height) {
        this.width = width;
        this.height = height;
        sums = new double[3 * width * height];
        squares = new double[width * height];
        counts = new int[width * height];
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

    /// Adds a ray's light to a pixel.
    void add(int x, int y, double[] light, int from) {
        int at = y * width + x;
        sums[3 * at] += light[from];
        sums[3 * at + 1] += light[from + 1];
        sums[3 * at + 2] += light[from + 2];
        double grey = (light[from] + light[from + 1] + light[from + 2]) / 3;
        squares[at] += grey * grey;
        counts[at]++;
    }

    /// Gives a channel's mean luminance in a pixel.
    ///
    /// @param x pixels from the left
    /// @param y pixels from the top
    /// @param channel 0 red, 1 green, 2 blue
    /// @return cd/m²; 0 where no ray was summed
    public double light(int x, int y, int channel) {
        int at = y * width + x;
        return counts[at] == 0 ? 0 : sums[3 * at + channel] / counts[at];
    }

    /// Gives how many rays a pixel is of.
    ///
    /// @param x pixels from the left
    /// @param y pixels from the top
    /// @return rays
    public int count(int x, int y) {
        return counts[y * width + x];
    }

    /// Gives how far off a pixel's mean of the three channels may be: its standard error.
    ///
    /// @param x pixels from the left
    /// @param y pixels from the top
    /// @return cd/m²; endless where fewer than two rays were summed
    public double error(int x, int y) {
        int at = y * width + x;
        int count = counts[at];
        if (count < 2) {
            return Double.POSITIVE_INFINITY;
        }
        double mean = (sums[3 * at] + sums[3 * at + 1] + sums[3 * at + 2]) / 3 / count;
        return Math.sqrt(Math.max(0, squares[at] / count - mean * mean) / (count - 1));
    }
}
