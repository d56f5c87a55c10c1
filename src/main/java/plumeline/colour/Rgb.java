package plumeline.colour;

/// Light in three channels, linear; 1 in each is white. A channel below 0 means that the primaries don't reach the
/// colour.
///
/// @param red the red channel
/// @param green the green channel
/// @param blue the blue channel
public record Rgb(double red, double green, double blue) {
    /// Gives the fullest channel.
    ///
    /// @return the most of the three
    public double most() {
        return Math.max(red, Math.max(green, blue));
    }

    /// Gives the emptiest channel.
    ///
    /// @return the least of the three
    public double least() {
        return Math.min(red, Math.min(green, blue));
    }
}
