package plumeline.press;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/// Figures in texts: a number with its fraction, its unit, its sign and the bracket before it, or a timecode, none of
/// which is parted at a line's end.
public final class Figures {
    /// It begins with a digit, so that texts without any are read quickly.
    private static final Pattern FIGURE = Pattern.compile("\\d(?<![\\w.:]\\d)(?:"
            + "\\d:\\d\\d:\\d\\d[:;]\\d\\d|[\\d.]*(?:"
            + "(?: \\d+/\\d+|/\\d+)?(?: (?:mm/s2|mm/s|mm|in/s2|in/s|in|deg/s|deg|%|s|fps|px|stops"
            + "|kg|g|ml|l/min|l|MPa|N|min)(?![A-Za-z0-9/]))"
            + "| \\d+/\\d+|/\\d+))");

    private static final String SIGNS = "−±+-";

    private Figures() {}

    /// Where a figure stands in a text.
    ///
    /// @param from its first character's index
    /// @param to the index after its last
    public record Figure(int from, int to) {
        private static Figure of(String text, MatchResult found) {
            int from = found.start();
            if (from > 0 && SIGNS.indexOf(text.charAt(from - 1)) >= 0) {
                from--;
            }
            if (from > 0 && text.charAt(from - 1) == '(') {
                from--;
            }
            return new Figure(from, found.end());
        }
    }

    /// Finds the figures of a text.
    ///
    /// @param text the text
    /// @return the figures in order
    public static List<Figure> in(String text) {
        return FIGURE.matcher(text)
                .results()
                .map(found -> Figure.of(text, found))
                .toList();
    }
}
