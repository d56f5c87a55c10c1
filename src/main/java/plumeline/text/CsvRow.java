package plumeline.text;

import java.util.List;

/// A row of comma-separated values as it is written.
///
/// A cell that holds a comma, a quote or a line's end, or that begins or ends with a blank, stands in quotes, its own
/// quotes doubled. A row ends with CRLF.
///
/// **Source:** RFC 4180, section 2.
public final class CsvRow {
    private CsvRow() {}

    /// Writes a row.
    ///
    /// @param cells its cells as they are
    /// @param out what it is put behind
    public static void write(List<String> cells, StringBuilder out) {
        for (int i = 0; i < cells.size(); i++) {
            out.append(i == 0 ? "" : ",").append(field(cells.get(i)));
        }
        out.append("\r\n");
    }

    private static String field(String cell) {
        boolean isPlain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n')
                && cell.strip().equals(cell);
        return isPlain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
