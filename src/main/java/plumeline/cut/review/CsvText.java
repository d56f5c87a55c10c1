package plumeline.cut.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.text.Place;

/// Comma-separated values as rows of cells that know their places.
///
/// Lines end with CRLF or LF. A cell in quotes may hold commas, line ends and doubled quotes; blanks are part of a
/// cell. A quote within a cell that doesn't begin with one is taken as it stands. Empty lines are passed over.
///
/// **Source:** RFC 4180, section 2; LF beside CRLF is common practice.
final class CsvText {
    /// A cell.
    ///
    /// @param text without its quotes
    /// @param place with them
    record Cell(String text, Place place) {}

    /// What is wrong with a quote.
    ///
    /// @param place of the cell
    /// @param given what was found, as it follows "is"
    record Broken(Place place, String given) {}

    /// What was read.
    ///
    /// @param rows up to what is broken
    /// @param broken where reading ended early
    record Rows(List<List<Cell>> rows, Optional<Broken> broken) {
        Rows {
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    private final String text;
    private final String file;
    private final List<List<Cell>> rows = new ArrayList<>();
    private List<Cell> row = new ArrayList<>();
    private int at;
    private int line = 1;
    private int lineStart;

    private CsvText(String text, String file) {
        this.text = text;
        this.file = file;
    }

    static Rows read(String text, String file) {
        return new CsvText(text, file).rows();
    }

    private Rows rows() {
        Optional<Broken> broken = Optional.empty();
        boolean isDue = !text.isEmpty();
        while (isDue && broken.isEmpty()) {
            broken = at < text.length() && text.charAt(at) == '"' ? quoted() : plain();
            isDue = at < text.length();
            if (isDue && broken.isEmpty()) {
                pass();
                isDue = at < text.length() || !row.isEmpty();
            }
        }
        endRow();
        return new Rows(rows, broken);
    }

    private Optional<Broken> plain() {
        int start = at;
        while (at < text.length() && !isEnd()) {
            at++;
        }
        row.add(new Cell(text.substring(start, at), place(line, lineStart, start)));
        return Optional.empty();
    }

    private Optional<Broken> quoted() {
        int start = at;
        int startLine = line;
        int startOfLine = lineStart;
        StringBuilder cell = new StringBuilder();
        at++;
        while (at < text.length()) {
            char c = text.charAt(at++);
            if (c == '"' && !(at < text.length() && text.charAt(at) == '"')) {
                Place place = place(startLine, startOfLine, start);
                row.add(new Cell(cell.toString(), place));
                return at < text.length() && !isEnd()
                        ? Optional.of(new Broken(place, "followed by more behind its closing quote"))
                        : Optional.empty();
            }
            at += c == '"' ? 1 : 0;
            cell.append(c);
            if (c == '\n') {
                line++;
                lineStart = at;
            }
        }
        return Optional.of(new Broken(place(startLine, startOfLine, start), "opened with a quote that nothing closes"));
    }

    private boolean isEnd() {
        char c = text.charAt(at);
        return c == ',' || c == '\n' || c == '\r' && at + 1 < text.length() && text.charAt(at + 1) == '\n';
    }

    /// Goes past what ends a cell: a comma, or a line's end, which ends the row.
    private void pass() {
        if (text.charAt(at) == ',') {
            at++;
            return;
        }
        at += text.charAt(at) == '\r' ? 2 : 1;
        line++;
        lineStart = at;
        endRow();
    }

    private void endRow() {
        boolean isEmpty =
                row.isEmpty() || row.size() == 1 && row.getFirst().text().isBlank();
        if (!isEmpty) {
            rows.add(row);
        }
        row = new ArrayList<>();
    }

    private Place place(int fromLine, int fromLineStart, int start) {
        return new Place(file, fromLine, text.codePointCount(fromLineStart, start) + 1, start, at);
    }
}
