package plumeline.sheet;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import plumeline.sketch.Lettering;
import plumeline.sketch.Markup;

/// Tables and lists of the papers.
final class Rows {
    /// A figure with its fraction and its unit. It begins with a digit, so that texts without any are read quickly.
    private static final Pattern FIGURE = Pattern.compile("\\d(?<![\\w.:]\\d)[\\d.]*(?:"
            + "(?: \\d+/\\d+|/\\d+)?(?: (?:mm/s2|mm/s|mm|in/s2|in/s|in|deg/s|deg|%|s|fps|px|stops"
            + "|kg|g|ml|l/min|l|MPa|N|min)(?![A-Za-z0-9/]))"
            + "| \\d+/\\d+|/\\d+)");

    private static final Pattern HYPHEN = Pattern.compile("(?<![^\\s(\\[=])-(?=\\d)");

    private static final String SIGNS = "−±+-";

    private Rows() {}

    /// A row of a table of two columns.
    ///
    /// @param name what it is
    /// @param text its value in words
    /// @param drawn what else of it is to be seen in the drawings, in words that aren't printed; empty where
    /// nothing is
    record Pair(String name, String text, String drawn) {
        Pair(String name, String text) {
            this(name, text, "");
        }
    }

    /// A table of two columns.
    ///
    /// @param of what its rows are, where changed ones are marked
    /// @param shot on whose sheet it stands
    static Markup pairs(List<Pair> pairs, Changes changes, Changes.Of of, String shot) {
        Markup body = Markup.of("tbody");
        for (Pair pair : pairs) {
            Markup text = flowing(Markup.of("td"), pair.text());
            Markup row = named(pair.name(), name(pair.name()), text);
            body.add(changes.tell(row, text, of, shot, pair.name()));
        }
        return Markup.of("table", body);
    }

    /// A verdict's word and a sentence.
    static Markup verdict(String word, String sentence) {
        return flowing(Markup.of("p", Markup.of("span", word).with("class", "verdict " + word)), " " + sentence);
    }

    /// A line with a box to tick.
    static Markup toTick(String text) {
        Markup line = Markup.of("div", Markup.of("span").with("class", "tick")).with("class", "check");
        return flowing(line, text);
    }

    static Markup head(List<String> names) {
        Markup row = Markup.of("tr");
        names.forEach(name -> row.add(Markup.of("th", name).with("scope", "col")));
        return Markup.of("thead", row);
    }

    /// A name as long as this takes a line of its own above what is said of it, lest it be broken.
    private static final int LONG_NAME = 15;

    /// A row that begins with a name; a long one leaves a line free above its other cells.
    static Markup named(String name, Markup first, Markup... others) {
        Markup row = Markup.of("tr", first);
        if (!isLong(name)) {
            return row.add(others);
        }
        for (Markup other : others) {
            row.add(below(name, other));
        }
        return row.with("class", "long");
    }

    /// A cell that begins below a long name: a line free for each that the name takes.
    static Markup below(String name, Markup cell) {
        for (double left = Lettering.width(name); left > 0; left -= NAME_PIXELS) {
            cell.addFirst(Markup.of("div", "\u00a0").with("class", "gap"));
        }
        return cell;
    }

    /// Whether a name leaves no room on its line for a value at the far end.
    static boolean fillsLine(String name) {
        return Lettering.width(name) > NAME_PIXELS - FAR_PIXELS;
    }

    /// Of a line of 690 pixels, less a letter that no longer fits.
    private static final double NAME_PIXELS = 670;

    private static final double FAR_PIXELS = 190;

    static boolean isLong(String name) {
        return name.length() > LONG_NAME;
    }

    /// The cell that a named row begins with.
    static Markup name(String name) {
        return Markup.of("td", Markup.of("div", name).with("class", "who")).with("class", "name");
    }

    static Markup cell(String kind, String text) {
        return flowing(Markup.of("td"), text).with("class", kind);
    }

    /// Where a figure stands in a text, with the sign and the bracket before it.
    record Figure(int from, int to) {
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

    static List<Figure> figures(String text) {
        return FIGURE.matcher(text)
                .results()
                .map(found -> Figure.of(text, found))
                .toList();
    }

    /// Adds a text in which no figure is parted from its unit at a line's end, nor has a hyphen for a minus sign.
    static Markup flowing(Markup to, String written) {
        String text = HYPHEN.matcher(written).replaceAll("−");
        int from = 0;
        for (Figure figure : figures(text)) {
            to.text(text.substring(from, figure.from()));
            to.add(Markup.of("span", text.substring(figure.from(), figure.to())).with("class", "f"));
            from = figure.to();
        }
        return to.text(text.substring(from));
    }

    static Markup bullets(List<String> texts) {
        Markup list = Markup.of("ul");
        texts.forEach(text -> list.add(flowing(Markup.of("li"), text)));
        return list;
    }

    static Markup paragraph(String kind, String text) {
        return flowing(Markup.of("p"), text).with("class", kind);
    }

    /// Minus signs as printers set them.
    static String minus(String figure) {
        return figure.startsWith("-") ? "−" + figure.substring(1) : figure;
    }
}
