package plumeline.text;

/// A run of characters that tidying may move but never change.
///
/// @param start offset of its first character
/// @param end offset behind its last
/// @param sort what it is
/// @param column how far to indent it where it comes first on its line, spaces
/// @param pad for a colon, how many spaces follow it; for text in several lines, by how many its further lines move
record Piece(int start, int end, Sort sort, int column, int pad) {
    /// What a piece is.
    enum Sort {
        TEXT,
        LOOSE_TEXT,
        BLOCK_TEXT,
        OPEN,
        CLOSE,
        COMMA,
        COLON,
        DASH,
        QUESTION,
        MARKER,
        COMMENT
    }

    Piece at(int newColumn) {
        return new Piece(start, end, sort, newColumn, pad);
    }
}
