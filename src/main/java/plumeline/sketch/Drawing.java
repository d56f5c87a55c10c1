package plumeline.sketch;

/// A finished drawing.
///
/// @param id its id, the prefix of every id in it
/// @param title what it shows, in words, for who can't see it
/// @param widthPixels its width, CSS pixels, whole
/// @param heightPixels its height, CSS pixels, whole
/// @param picture its `svg` element
public record Drawing(String id, String title, int widthPixels, int heightPixels, Markup picture) {
    /// Writes the drawing as a document of its own.
    ///
    /// @return SVG text
    public String toSvg() {
        return picture.toText();
    }
}
