package plumeline.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/// How drawings are lettered: one size, 14 points, and how much room a text takes.
///
/// Widths are those of the papers' font, in thousandths of its size, rounded up; every label also carries its width
/// (`textLength`), so that another font is fitted into the same room.
public final class Lettering {
    /// 14 points in CSS pixels, rounded up.
    public static final double SIZE = 19;

    /// From one line of a label to the next, pixels.
    public static final double LINE = 22;

    /// From one row of labels to the next, with air between them, pixels.
    public static final double ROW = 26;

    /// Room of a character that the table doesn't hold.
    private static final int OTHER = 1000;

    /// Advance widths of U+0020 to U+007E.
    ///
    /// **Source:** read from the bundled `DejaVuSansCondensed.ttf` 2.37; a test reads them again.
    private static final int[] WIDTHS = {
        286, 361, 414, 754, 573, 855, 702, 248, 352, 352, 450, 754, 286, 325, 286, 304, 573, 573, 573, 573, 573, 573,
                573,
        573, 573, 573, 304, 304, 754, 754, 754, 478, 900, 616, 618, 629, 693, 569, 518, 698, 677, 266, 266, 590, 501,
                777,
        673, 709, 543, 709, 625, 572, 550, 659, 616, 890, 617, 550, 617, 352, 304, 352, 754, 450, 450, 552, 572, 495,
                572,
        554, 317, 572, 571, 250, 250, 521, 250, 877, 571, 551, 572, 572, 370, 469, 353, 571, 533, 736, 533, 533, 473,
                573,
        304, 573, 754
    };

    /// Signs beside these that drawings use.
    private static final Map<Integer, Integer> SIGNS =
            Map.of((int) '−', 754, (int) '±', 754, (int) '×', 754, (int) '·', 286, (int) '°', 450);

    private Lettering() {}

    /// Gives the room of a text.
    ///
    /// @param text the text
    /// @return pixels
    public static double width(String text) {
        return text.codePoints().map(Lettering::advance).sum() * SIZE / 1000;
    }

    /// The room of one character, thousandths of the size.
    static int advance(int c) {
        return c >= 32 && c < 127 ? WIDTHS[c - 32] : SIGNS.getOrDefault(c, OTHER);
    }

    /// Gives the room of lines of text.
    ///
    /// @param lines the lines
    /// @return the widest one's, pixels
    public static double width(List<String> lines) {
        return lines.stream().mapToDouble(Lettering::width).max().orElse(0);
    }

    /// How many letters at the end of a cut text stay: names of a row often differ there alone.
    private static final int TAIL = 6;

    /// Cuts a text to a width: three dots stand for what is left out before its last letters.
    ///
    /// @param text the text
    /// @param width pixels
    /// @return the text, no wider
    public static String fitted(String text, double width) {
        if (width(text) <= width) {
            return text;
        }
        int count = text.codePointCount(0, text.length());
        String rest = "..." + text.substring(text.offsetByCodePoints(text.length(), -Math.min(TAIL, count)));
        if (width(rest) > width) {
            rest = "...";
        }
        int end = text.length();
        while (end > 0 && width(text.substring(0, end) + rest) > width) {
            end = text.offsetByCodePoints(end, -1);
        }
        return text.substring(0, end) + rest;
    }

    /// Breaks a text at spaces into lines of a width; a word that is longer is cut.
    ///
    /// @param text the text
    /// @param width pixels
    /// @return the lines
    public static List<String> wrapped(String text, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer) > width) {
                lines.add(fitted(line, width));
                longer = word;
            }
            line = longer;
        }
        lines.add(fitted(line, width));
        return lines;
    }

    /// Letters lines of text into a box, from the top, left aligned.
    ///
    /// @param lines the lines
    /// @param box the box
    /// @return the group
    public static Markup text(List<String> lines, Box box) {
        Markup group = Markup.of("g");
        for (int i = 0; i < lines.size(); i++) {
            group.add(Markup.of("text", lines.get(i))
                    .with("x", box.left())
                    .with("y", box.top() + LINE * i + SIZE * 0.9)
                    .with("textLength", Math.max(0.1, width(lines.get(i))))
                    .with("lengthAdjust", "spacingAndGlyphs"));
        }
        return group;
    }
}
