package plumeline.cli;

import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// A print as poppler's programs read it: words with their boxes, and the tree of tags.
final class PdfText {
    private static final Pattern PAGE = Pattern.compile("<page width=\"([\\d.]+)\" height=\"([\\d.]+)\">");
    private static final Pattern WORD = Pattern.compile(
            "<word xMin=\"([-\\d.]+)\" yMin=\"([-\\d.]+)\" xMax=\"([-\\d.]+)\" yMax=\"([-\\d.]+)\">(.*)</word>");
    private static final Pattern ELEMENT = Pattern.compile("( *)([A-Za-z0-9]+)(?: \\((?:block|inline)\\))?(?:: ?.*)?");

    /// A word on a page; points from the page's left and top.
    record Word(String text, double left, double top, double right, double bottom) {
        double height() {
            return bottom - top;
        }

        boolean isLevelWith(Word other) {
            return Math.min(bottom, other.bottom) - Math.max(top, other.top) > 0.5 * Math.min(height(), other.height());
        }
    }

    /// A page with its words.
    record Page(double width, double height, List<Word> words) {
        String text() {
            StringBuilder text = new StringBuilder();
            words.forEach(word -> text.append(word.text()).append(' '));
            return text.toString();
        }
    }

    /// A tag with what is in it.
    static final class Tag {
        private final String role;
        private final List<Tag> children = new ArrayList<>();
        private final String own;

        Tag(String role, String own) {
            this.role = role;
            this.own = own;
        }

        String role() {
            return role;
        }

        boolean isHeading() {
            return role.matches("H[1-6]?");
        }

        /// All tags of these roles in it, in order, itself too.
        List<Tag> all(String... roles) {
            List<Tag> found = new ArrayList<>();
            if (List.of(roles).contains(role)) {
                found.add(this);
            }
            children.forEach(child -> found.addAll(child.all(roles)));
            return found;
        }

        /// Its text, and what is in it, with single blanks.
        String text() {
            StringBuilder text = new StringBuilder();
            collect(text);
            return plain(text.toString());
        }

        private void collect(StringBuilder text) {
            text.append(own).append(' ');
            children.forEach(child -> child.collect(text));
        }
    }

    private PdfText() {}

    /// Letters joined by the printer stand apart again; blanks are single.
    static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFKC)
                .replaceAll("[\\p{Cf}\\s\\u00a0]+", " ")
                .strip();
    }

    static String withoutBlanks(String text) {
        return plain(text).replace(" ", "");
    }

    /// The pages with their words, by `pdftotext -bbox-layout`.
    static List<Page> pages(Path pdf) {
        List<Page> pages = new ArrayList<>();
        for (String line : OutsideTool.poppler("pdftotext", "-bbox-layout", pdf.toString(), "-")
                .split("\n")) {
            Matcher page = PAGE.matcher(line);
            Matcher word = WORD.matcher(line);
            if (page.find()) {
                pages.add(new Page(number(page, 1), number(page, 2), new ArrayList<>()));
            } else if (word.find()) {
                String text = plain(word.group(5)
                        .replace("&lt;", "<")
                        .replace("&gt;", ">")
                        .replace("&quot;", "\"")
                        .replace("&apos;", "'")
                        .replace("&amp;", "&"));
                pages.getLast()
                        .words()
                        .add(new Word(text, number(word, 1), number(word, 2), number(word, 3), number(word, 4)));
            }
        }
        return pages;
    }

    private static double number(Matcher found, int group) {
        return Double.parseDouble(found.group(group));
    }

    /// The tree of tags, by `pdfinfo -struct-text`.
    static Tag tags(Path pdf) {
        Tag root = new Tag("", "");
        Deque<Tag> open = new ArrayDeque<>(List.of(root));
        Deque<Integer> depths = new ArrayDeque<>(List.of(-1));
        for (String line :
                OutsideTool.poppler("pdfinfo", "-struct-text", pdf.toString()).split("\n")) {
            String inner = line.strip();
            Matcher element = ELEMENT.matcher(line);
            if (inner.startsWith("\"")) {
                String text = inner.substring(1);
                open.peek()
                        .children
                        .add(new Tag("", text.endsWith("\"") ? text.substring(0, text.length() - 1) : text));
            } else if (!inner.startsWith("/") && !inner.startsWith("Object ") && element.matches()) {
                int depth = element.group(1).length();
                while (depths.peek() >= depth) {
                    depths.pop();
                    open.pop();
                }
                Tag tag = new Tag(element.group(2), "");
                open.peek().children.add(tag);
                open.push(tag);
                depths.push(depth);
            }
        }
        return root;
    }
}
