package plumeline.cut.cue;

import java.util.ArrayList;
import java.util.List;
import plumeline.quantity.Print;

/// The cue sheet as comma-separated values.
final class CueCsv {
    private static final List<String> NAMES = List.of(
            "number",
            "sound",
            "layer",
            "shot",
            "pass",
            "thing",
            "in",
            "in_frame",
            "in_sample",
            "sync",
            "sync_frame",
            "sync_sample",
            "out",
            "out_frame",
            "out_sample",
            "pan_in_percent",
            "pan_sync_percent",
            "pan_out_percent");

    private CueCsv() {}

    static String write(CueSheet sheet) {
        StringBuilder out = new StringBuilder();
        write(NAMES, out);
        int number = 0;
        for (CueRow row : sheet.rows()) {
            List<String> cells = new ArrayList<>(List.of(
                    String.valueOf(++number),
                    row.sound(),
                    row.layer(),
                    row.shows().shot(),
                    row.shows().pass(),
                    row.thing()));
            for (CueRow.Place place : List.of(row.in(), row.sync(), row.out())) {
                cells.add(sheet.label(place.frame()));
                cells.add(String.valueOf(place.frame()));
                cells.add(String.valueOf(place.sample()));
            }
            for (CueRow.Place place : List.of(row.in(), row.sync(), row.out())) {
                cells.add(percent(place.pan()));
            }
            write(cells, out);
        }
        return out.toString();
    }

    /// Whole per cent.
    static String percent(double pan) {
        return Print.number(100 * pan, 0);
    }

    private static void write(List<String> cells, StringBuilder out) {
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
