package plumeline.assemble;

/// Who letters titles.
@FunctionalInterface
public interface Lettering {
    /// Letters a line.
    ///
    /// @param text one line, in reading order
    /// @param sizePixels its letters' size, pixels, > 0
    /// @return the line
    Line line(String text, double sizePixels);

    /// A lettered line: how much of each pixel is covered.
    ///
    /// @param width pixels across, ≥ 0
    /// @param height pixels down
    /// @param cover a byte a pixel, rows from the top, 255 where it is covered whole
    record Line(int width, int height, byte[] cover) {
        /// Gives how much of a pixel is covered.
        ///
        /// @param x pixels from the left
        /// @param y pixels from the top
        /// @return 0 to 255; 0 outside
        public int at(int x, int y) {
            return x < 0 || y < 0 || x >= width || y >= height ? 0 : cover[y * width + x] & 255;
        }
    }
}
