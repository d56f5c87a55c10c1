package plumeline.cut.cue;

import java.util.ArrayList;
import java.util.List;
import plumeline.quantity.Print;
import plumeline.text.CsvRow;

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
            "pan_out_percent",
            "out_is");

    private CueCsv() {}

    static String write(CueSheet sheet) {
        StringBuilder out = new StringBuilder();
        CsvRow.write(NAMES, out);
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
            cells.add(row.ending().word());
            CsvRow.write(cells, out);
        }
        return out.toString();
    }

    /// Whole per cent.
    static String percent(double pan) {
        return Print.number(100 * pan, 0);
    }
}
