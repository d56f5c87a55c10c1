package plumeline.text;

/// A span of a text.
///
/// @param file the text's name, as messages say it
/// @param line from 1
/// @param column in characters as people count them (code points), from 1
/// @param start offset of the first character, in UTF-16 units from 0
/// @param end offset behind the last character
public record Place(String file, int line, int column, int start, int end) {
    /// Checks the order.
    public Place {
        if (line < 1 || column < 1 || start < 0 || end < start) {
            throw new IllegalArgumentException(
                    "no place: line " + line + ", column " + column + ", from " + start + " to " + end);
        }
    }

    /// Gives the start of a file, where a problem has no better place.
    ///
    /// @param file the text's name
    /// @return its first character's place, empty
    public static Place ofFile(String file) {
        return new Place(file, 1, 1, 0, 0);
    }

    /// Writes it as messages do: `teapot.yaml:14:9`.
    ///
    /// @return file, line and column
    public String toText() {
        return file + ":" + line + ":" + column;
    }
}
