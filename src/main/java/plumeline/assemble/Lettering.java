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
    final class Line {
        private final int width;
        private final int height;
        private final byte[] cover;

        /// Takes a line.
        ///
        /// @param width pixels across, ≥ 0
        /// @param height pixels down, ≥ 0
        /// @param cover a byte a pixel, rows from the top, 255 where it is covered whole; it is not copied
        public Line(int width, int height, byte[] cover) {
            if (cover.length != width * height) {
                throw new IllegalArgumentException("a line needs a byte a pixel");
            }
            this.width = width;
            this.height = height;
            this.cover = cover;
        }

        /// Gives how wide it is.
        ///
        /// @return pixels
        public int width() {
            return width;
        }

        /// Gives how high it is.
        ///
        /// @return pixels
        public int height() {
            return height;
        }

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
