package plumeline.text;

import java.util.List;

/// Puts pieces together again with white space of our own between them; made for one use.
final class Spacing {
    private final String text;
    private final String lineEnd;
    private final StringBuilder out = new StringBuilder();

    private Spacing(String text) {
        this.text = text;
        this.lineEnd = lineEnd(text);
    }

    /// Writes the pieces of a text.
    static String write(Source source, List<Piece> pieces) {
        Spacing spacing = new Spacing(source.text);
        spacing.out.append(source.text, 0, source.first);
        for (int i = 0; i < pieces.size(); i++) {
            if (i == 0) {
                spacing.indent(pieces.getFirst().column());
            } else {
                spacing.gap(pieces.get(i - 1), pieces.get(i));
            }
            spacing.piece(pieces.get(i));
        }
        return spacing.out.append(spacing.lineEnd).toString();
    }

    /// Takes the text's first line end for all of them.
    private static String lineEnd(String text) {
        int feed = text.indexOf('\n');
        return feed > 0 && text.charAt(feed - 1) == '\r' ? "\r\n" : "\n";
    }

    private void indent(int spaces) {
        out.repeat(' ', Math.max(0, spaces));
    }

    private void gap(Piece before, Piece after) {
        int lines = lineEnds(before.end(), after.start());
        for (int i = 0; i < Math.min(lines, 2); i++) {
            out.append(lineEnd);
        }
        indent(lines > 0 ? after.column() : spaces(before, after));
    }

    private int lineEnds(int from, int to) {
        int count = 0;
        for (int i = from; i < to; i++) {
            char c = text.charAt(i);
            boolean pair = c == '\r' && i + 1 < to && text.charAt(i + 1) == '\n';
            count += (c == '\n' || c == '\r') && !pair ? 1 : 0;
        }
        return count;
    }

    /// Gives how many spaces stand between two pieces on one line. A comment behind something keeps its distance.
    private static int spaces(Piece before, Piece after) {
        if (after.sort() == Piece.Sort.COMMENT) {
            return Math.max(1, after.start() - before.end());
        }
        if (before.sort() == Piece.Sort.OPEN) {
            return 0;
        }
        return switch (after.sort()) {
            case CLOSE, COMMA, COLON -> 0;
            case TEXT, LOOSE_TEXT, BLOCK_TEXT, OPEN, DASH, QUESTION, MARKER, COMMENT ->
                before.sort() == Piece.Sort.COLON ? before.pad() : 1;
        };
    }

    private void piece(Piece piece) {
        String raw = text.substring(piece.start(), piece.end());
        boolean several = raw.indexOf('\n') >= 0 || raw.indexOf('\r') >= 0;
        if (!several) {
            out.append(piece.sort() == Piece.Sort.LOOSE_TEXT ? Loose.drawn(raw) : raw);
            return;
        }
        String[] lines = raw.split("\r\n|\n|\r", -1);
        out.append(lines[0]);
        for (int i = 1; i < lines.length; i++) {
            out.append(lineEnd);
            if (piece.sort() == Piece.Sort.BLOCK_TEXT) {
                appendMoved(lines[i], piece.pad());
            } else if (!lines[i].isBlank()) {
                indent(piece.pad());
                out.append(withoutIndent(lines[i]));
            }
        }
    }

    /// Moves a line of a block, whose indentation beyond the block's is part of the text.
    private void appendMoved(String line, int by) {
        String rest = withoutIndent(line);
        int column = line.length() - rest.length();
        if (column > 0 || !rest.isEmpty()) {
            indent(column + by);
            out.append(rest);
        }
    }

    private static String withoutIndent(String line) {
        int at = 0;
        while (at < line.length() && (line.charAt(at) == ' ' || line.charAt(at) == '\t')) {
            at++;
        }
        return line.substring(at);
    }
}
