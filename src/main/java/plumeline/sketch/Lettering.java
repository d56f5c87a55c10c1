package plumeline.sketch;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

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

    private static final String DOTS = "...";

    /// A text of which only its first and its last letters stay.
    private record Cut(String head, String tail) {
        String text() {
            return head + DOTS + tail;
        }

        /// Whether a text would be cut to the same.
        boolean isOf(String other) {
            return other.length() >= head.length() + tail.length() && other.startsWith(head) && other.endsWith(tail);
        }
    }

    /// Cuts a text to a width: three dots stand for what is left out before its last letters.
    ///
    /// @param text the text
    /// @param width pixels
    /// @return the text, no wider
    public static String fitted(String text, double width) {
        return width(text) <= width ? text : cut(text, TAIL, width).text();
    }

    private static Cut cut(String text, int tailLetters, double width) {
        int count = text.codePointCount(0, text.length());
        String tail = text.substring(text.offsetByCodePoints(text.length(), -Math.min(tailLetters, count)));
        if (width(DOTS + tail) > width) {
            tail = "";
        }
        int end = text.length();
        while (end > 0 && width(text.substring(0, end) + DOTS + tail) > width) {
            end = text.offsetByCodePoints(end, -1);
        }
        return new Cut(text.substring(0, end), tail);
    }

    /// Cuts a name to a width so that it is still told from others; where no cut does that, it is broken into rows.
    ///
    /// @param name the name
    /// @param width pixels
    /// @param others names that stand on the same drawing
    /// @return one row, or more where letters within the name are needed
    public static List<String> rows(String name, double width, Collection<String> others) {
        if (width(name) <= width) {
            return List.of(name);
        }
        int count = name.codePointCount(0, name.length());
        return IntStream.concat(
                        IntStream.rangeClosed(TAIL, count), IntStream.iterate(TAIL - 1, i -> i >= 0, i -> i - 1))
                .mapToObj(tail -> cut(name, tail, width))
                .filter(cut ->
                        others.stream().filter(other -> !other.equals(name)).noneMatch(cut::isOf))
                .findFirst()
                .map(cut -> List.of(cut.text()))
                .orElseGet(() -> wrapped(name, width));
    }

    /// Breaks a text at spaces into lines of a width; a word that is longer is broken too.
    ///
    /// @param text the text
    /// @param width pixels
    /// @return the lines
    public static List<String> wrapped(String text, double width) {
        return wrapped(text, width, List.of());
    }

    /// Breaks a text at spaces into lines of a width; of words that are longer names are cut as [#rows] does, others
    /// are broken.
    ///
    /// @param text the text
    /// @param width pixels
    /// @param names names that stand on the same drawing
    /// @return the lines
    public static List<String> wrapped(String text, double width, Collection<String> names) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer) > width) {
                lines.add(line);
                longer = word;
            }
            List<String> pieces = names.contains(longer) ? rows(longer, width, names) : broken(longer, width);
            lines.addAll(pieces.subList(0, pieces.size() - 1));
            line = pieces.getLast();
        }
        lines.add(line);
        return lines;
    }

    private static List<String> broken(String word, double width) {
        List<String> pieces = new ArrayList<>();
        String rest = word;
        while (width(rest) > width && rest.codePointCount(0, rest.length()) > 1) {
            int end = breakAt(rest, width);
            pieces.add(rest.substring(0, end));
            rest = rest.substring(end);
        }
        pieces.add(rest);
        return pieces;
    }

    /// Where a long word is broken: after a stroke in the later half of what fits, else where no more fits.
    private static int breakAt(String word, double width) {
        int end = word.offsetByCodePoints(0, 1);
        while (width(word.substring(0, word.offsetByCodePoints(end, 1))) <= width) {
            end = word.offsetByCodePoints(end, 1);
        }
        int stroke = Math.max(word.lastIndexOf('_', end - 1), word.lastIndexOf('-', end - 1)) + 1;
        return stroke > end / 2 ? stroke : end;
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
