package plumeline.cut.mask;

/// How wide a mask is to each side of a strand's middle line at a place, part by part, px.
///
/// @param widthPixels half of the strand's own width
/// @param edgePixels for its soft edge
/// @param swingPixels for what hangs and swings
/// @param swayPixels for what machines sway
/// @param placingPixels how far it may hang beside the plan by its thing's placing error; told, and no part of the
/// mask:
///     who lays the masks over the take moves all of them by what it is
public record Margins(
        double widthPixels, double edgePixels, double swingPixels, double swayPixels, double placingPixels) {
    /// Pixels that a mask is wider than the line on each side (common practice).
    public static final double EDGE_PIXELS = 2;

    /// Gives how wide the mask is: all of it but the placing error.
    ///
    /// @return px
    public double sumPixels() {
        return widthPixels + edgePixels + swingPixels + swayPixels;
    }
}
