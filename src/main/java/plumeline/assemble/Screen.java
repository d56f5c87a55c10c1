package plumeline.assemble;

/// A film's picture and where the delivery's lies in it: all of it, but for black bars where it has another ratio.
///
/// @param width pixels across the film, even
/// @param height pixels down the film, even
/// @param left pixels from the left to the delivery's picture
/// @param top pixels from the top
/// @param across how wide that is, pixels
/// @param down how high, pixels
public record Screen(int width, int height, int left, int top, int across, int down) {
    /// A ratio is met where one pixel more or less would be no nearer.
    private static final double NEAR_PIXELS = 1;

    /// Lays a picture of a ratio into a film.
    ///
    /// @param width pixels across the film, even
    /// @param height pixels down, even
    /// @param aspect the picture's width over its height
    /// @return the whole film where both ratios agree within a pixel; else with bars at the sides, or above and
    /// below
    public static Screen of(int width, int height, double aspect) {
        if (Math.abs(height * aspect - width) <= NEAR_PIXELS || Math.abs(width / aspect - height) <= NEAR_PIXELS) {
            return new Screen(width, height, 0, 0, width, height);
        }
        if (width > height * aspect) {
            int across = even(height * aspect, width);
            return new Screen(width, height, (width - across) / 2, 0, across, height);
        }
        int down = even(width / aspect, height);
        return new Screen(width, height, 0, (height - down) / 2, width, down);
    }

    /// Gives the film that holds a ratio without bars and fits into so many pixels, upright into the same turned round.
    ///
    /// @param longer pixels along its longer side at most, even
    /// @param shorter pixels along its shorter side at most, even
    /// @param aspect its width over its height
    /// @return the film
    public static Screen within(int longer, int shorter, double aspect) {
        int width = aspect >= 1 ? longer : shorter;
        int height = aspect >= 1 ? shorter : longer;
        int across = even(height * aspect, width);
        int down = even(width / aspect, height);
        return of(across, down, (double) across / down);
    }

    private static int even(double pixels, int most) {
        return (int) Math.clamp(2 * Math.round(pixels / 2), 2L, (long) most);
    }

    /// Tells whether there are bars.
    ///
    /// @return true where the ratio is another
    public boolean hasBars() {
        return across < width || down < height;
    }
}
