package plumeline.cut.cue;

import java.util.Locale;
import plumeline.sound.SampleGrid;

/// The cue sheet as WebVTT.
final class CueVtt {
    private static final long PER_MILLISECOND = SampleGrid.FOR_PICTURES / 1000;

    private CueVtt() {}

    static String write(CueSheet sheet) {
        StringBuilder out = new StringBuilder("WEBVTT\n");
        int number = 0;
        for (CueRow row : sheet.rows()) {
            number++;
            if (row.out().sample() <= 0) {
                continue;
            }
            long begin = milliseconds(Math.max(0, row.in().sample()));
            long end = Math.max(begin + 1, milliseconds(row.out().sample()));
            out.append('\n').append(number).append('\n');
            out.append(stamp(begin)).append(" --> ").append(stamp(end)).append('\n');
            out.append(escaped(words(row, sheet))).append('\n');
        }
        return out.toString();
    }

    private static String words(CueRow row, CueSheet sheet) {
        String meets = sheet.label(row.sync().frame());
        return row.sound() + (row.layer().isEmpty() ? "" : " [" + row.layer() + "]") + ": "
                + row.shows().name() + (row.thing().isEmpty() ? "" : ", " + row.thing()) + "; sync "
                + (meets.isEmpty() ? "frame " + row.sync().frame() : meets) + "; pan "
                + sheet.pan(row);
    }

    /// The nearest millisecond, halves up.
    private static long milliseconds(long sample) {
        return Math.floorDiv(sample + PER_MILLISECOND / 2, PER_MILLISECOND);
    }

    private static String stamp(long milliseconds) {
        return String.format(
                Locale.ROOT,
                "%02d:%02d:%02d.%03d",
                milliseconds / 3_600_000,
                milliseconds / 60_000 % 60,
                milliseconds / 1000 % 60,
                milliseconds % 1000);
    }

    /// One line that can be taken for nothing else: neither tags nor arrows nor an end of the cue.
    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replaceAll("[\\r\\n]+", " ");
    }
}
