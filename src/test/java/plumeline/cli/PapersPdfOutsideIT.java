package plumeline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import plumeline.cli.PapersRun.MarkLine;
import plumeline.cli.PdfText.Page;
import plumeline.cli.PdfText.Tag;
import plumeline.cli.PdfText.Word;
import plumeline.tidy.Outside;

/// Reads the print of plans nobody has seen with programs that aren't ours, and compares it with `solve --json`.
@Outside(
        source = "poppler 22.12 (pdftotext, pdftohtml, pdfinfo, pdffonts, pdftoppm) reads the print; solve --json",
        kind = "program")
final class PapersPdfOutsideIT {
    /// pdftohtml gives whole figures; drawn three times as large, 14 pt are 42.
    private static final int ZOOM = 3;

    private static final int LEAST_POINTS = 14;
    private static final Pattern FONT =
            Pattern.compile("<fontspec id=\"(\\d+)\" size=\"(\\d+)\" family=\"[^\"]*\" color=\"(#[0-9a-f]+)\"");
    private static final Pattern TEXT = Pattern.compile("<text [^>]*font=\"(\\d+)\">(.*?)</text>");

    static Stream<PapersRun> runs() {
        return PapersRun.all();
    }

    /// The shot's part of the tree of tags, found by its heading.
    private static Tag sheet(PapersRun run, Tag tags, String shot) {
        String heading = heading(PapersRun.byId(run.page(), "shot." + shot));
        List<Tag> found = tags.all("Sect").stream()
                .filter(sect -> sect.all("H1", "H2", "H3").stream()
                        .limit(1)
                        .anyMatch(head -> PdfText.withoutBlanks(head.text()).equals(PdfText.withoutBlanks(heading))))
                .toList();
        assertThat(found).as("sections headed %s", heading).hasSize(1);
        return found.getFirst();
    }

    static String heading(Element section) {
        var all = section.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            if (((Element) all.item(i)).getTagName().matches("h[1-6]")) {
                return all.item(i).getTextContent();
            }
        }
        throw new AssertionError("no heading in " + section.getAttribute("id"));
    }

    private static List<String> heads(Element row) {
        Element table = row;
        while (!table.getTagName().equals("table")) {
            table = (Element) table.getParentNode();
        }
        List<String> heads = new ArrayList<>();
        var all = table.getElementsByTagName("th");
        for (int i = 0; i < all.getLength(); i++) {
            heads.add(PdfText.withoutBlanks(all.item(i).getTextContent()));
        }
        return heads;
    }

    @ParameterizedTest
    @MethodSource("runs")
    void everyMark_standsInItsSheetsTableOnceWithItsValue(PapersRun run) {
        Tag tags = PdfText.tags(run.pdf());
        var page = run.page();
        int compared = 0;
        for (String shot : run.shots()) {
            List<MarkLine> marks = run.marks(shot);
            String first = marks.getFirst().path();
            List<String> heads = heads(PapersRun.byId(page, shot + ".mark." + first));
            assertThat(heads).as("heads of the marks table").isNotEmpty();
            List<Tag> rows = sheet(run, tags, shot).all("Table").stream()
                    .filter(table -> hasHeads(table, heads))
                    .flatMap(table -> table.all("TR").stream())
                    .filter(row -> !row.all("TD").isEmpty())
                    .toList();
            assertThat(rows).as("rows of marks of %s", shot).hasSameSizeAs(marks);
            for (MarkLine mark : marks) {
                List<Tag> found = rows.stream()
                        .filter(row -> PdfText.withoutBlanks(
                                        row.all("TD", "TH").getFirst().text())
                                .equals(mark.path()))
                        .toList();
                assertThat(found).as("rows of %s in %s", mark.path(), shot).hasSize(1);
                assertThat(found.getFirst().all("TD", "TH").stream().skip(1).map(Tag::text))
                        .as("%s of %s is one of %s", mark.path(), shot, mark.figures())
                        .anyMatch(cell -> mark.figures().stream().anyMatch(figure -> begins(cell, figure)));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(8);
    }

    /// A table that goes on over the page has its heads there again.
    private static boolean hasHeads(Tag table, List<String> heads) {
        List<Tag> found = table.all("TH");
        return found.size() == heads.size()
                && IntStream.range(0, heads.size())
                        .allMatch(i -> PdfText.withoutBlanks(found.get(i).text())
                                .matches("(" + Pattern.quote(heads.get(i)) + ")+"));
    }

    private static boolean begins(String cell, String figure) {
        String plain = PdfText.plain(figure);
        return cell.equals(plain) || cell.startsWith(plain + " ");
    }

    /// By the words' places: a mark's value stands on the line of its name, to its right.
    @ParameterizedTest
    @MethodSource("runs")
    void everyMark_hasItsValueOnItsLine(PapersRun run) {
        List<Page> pages = PdfText.pages(run.pdf());
        Map<String, Integer> wanted = new TreeMap<>();
        Map<String, MarkLine> lines = new TreeMap<>();
        for (String shot : run.shots()) {
            for (MarkLine mark : run.marks(shot)) {
                wanted.merge(mark.path() + " " + mark.figures(), 1, Integer::sum);
                lines.put(mark.path() + " " + mark.figures(), mark);
            }
        }
        wanted.forEach((key, count) -> assertThat(pages.stream()
                        .mapToInt(page -> countRows(page, lines.get(key)))
                        .sum())
                .as("lines that read %s", key)
                .isGreaterThanOrEqualTo(count));
    }

    private static int countRows(Page page, MarkLine mark) {
        int count = 0;
        for (Word word : page.words()) {
            if (isName(page, word, mark.path()) && mark.figures().stream().anyMatch(f -> isBeside(page, word, f))) {
                count++;
            }
        }
        return count;
    }

    /// Whether a name begins with this word and goes on below it, where it is too long for its column.
    private static boolean isName(Page page, Word first, String name) {
        String read = first.text();
        Word last = first;
        while (!read.isEmpty() && name.startsWith(read) && !name.equals(read)) {
            Word above = last;
            var below = page.words().stream()
                    .filter(word -> Math.abs(word.left() - first.left()) < 1
                            && word.top() > above.top() + 1
                            && word.top() < above.bottom() + above.height())
                    .findFirst();
            if (below.isEmpty()) {
                return false;
            }
            last = below.get();
            read += last.text();
        }
        return name.equals(read);
    }

    private static boolean isBeside(Page page, Word name, String figure) {
        List<String> line = page.words().stream()
                .filter(word -> word.left() > name.left() && word != name && word.isLevelWith(name))
                .sorted((one, other) -> Double.compare(one.left(), other.left()))
                .map(Word::text)
                .toList();
        List<String> parts = List.of(PdfText.plain(figure).split(" "));
        for (int i = 0; i + parts.size() <= line.size(); i++) {
            boolean isWhole = i == 0 || !line.get(i - 1).matches("[\u2212+-]?\\d+");
            if (isWhole && line.subList(i, i + parts.size()).equals(parts)) {
                return true;
            }
        }
        return false;
    }

    @ParameterizedTest
    @MethodSource("runs")
    void everyWant_standsInItsSheetsListOnce(PapersRun run) {
        Tag tags = PdfText.tags(run.pdf());
        var page = run.page();
        int compared = 0;
        for (String shot : run.shots()) {
            String sheet = PdfText.withoutBlanks(sheet(run, tags, shot).text());
            for (String want : run.wants(shot)) {
                String text = PdfText.withoutBlanks(
                        PapersRun.byId(page, shot + ".want." + want).getTextContent());
                assertThat(text).contains(want);
                assertThat(sheet.split(Pattern.quote(text), -1))
                        .as("%s in the print: %s", want, text)
                        .hasSize(2);
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(3);
    }

    @ParameterizedTest
    @MethodSource("runs")
    void text_isBlackAndNoSmallerThanFourteenPoints(PapersRun run) {
        String xml = OutsideTool.poppler(
                "pdftohtml",
                "-xml",
                "-stdout",
                "-i",
                "-zoom",
                Integer.toString(ZOOM),
                run.pdf().toString());
        Map<String, MatchResult> fonts = new TreeMap<>();
        FONT.matcher(xml).results().forEach(font -> fonts.put(font.group(1), font));
        List<String> wrong = new ArrayList<>();
        int read = 0;
        for (MatchResult text : TEXT.matcher(xml).results().toList()) {
            String words = PdfText.plain(text.group(2).replaceAll("<[^>]*>", ""));
            MatchResult font = fonts.get(text.group(1));
            int size = Integer.parseInt(font.group(2));
            boolean isWrong = size < LEAST_POINTS * ZOOM || !font.group(3).equals("#000000");
            if (!words.isEmpty() && isWrong && wrong.size() < 10) {
                wrong.add(size / (double) ZOOM + " pt " + font.group(3) + ": " + words);
            }
            read++;
        }
        assertThat(read).as("pieces of text").isGreaterThan(100);
        assertThat(wrong).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("runs")
    void words_areOnThePageAndOverNoOthers(PapersRun run) {
        List<String> wrong = new ArrayList<>();
        int number = 0;
        for (Page page : PdfText.pages(run.pdf())) {
            number++;
            List<Word> words =
                    page.words().stream().filter(word -> !word.text().isEmpty()).toList();
            for (int i = 0; i < words.size(); i++) {
                Word word = words.get(i);
                if (word.left() < 0 || word.top() < 0 || word.right() > page.width() || word.bottom() > page.height()) {
                    wrong.add("page " + number + ": " + word + " leaves the page");
                }
                for (Word other : words.subList(i + 1, words.size())) {
                    if (overlap(word.left(), word.right(), other.left(), other.right()) > 2
                            && overlap(word.top(), word.bottom(), other.top(), other.bottom()) > 4) {
                        wrong.add("page " + number + ": " + word.text() + " lies over " + other.text());
                    }
                }
            }
        }
        assertThat(number).isGreaterThan(3);
        assertThat(wrong).isEmpty();
    }

    private static double overlap(double low, double high, double otherLow, double otherHigh) {
        return Math.min(high, otherHigh) - Math.max(low, otherLow);
    }

    /// Nothing at all, drawings too, is nearer to the paper's edge than the 5 mm that printers leave out.
    @ParameterizedTest
    @MethodSource("runs")
    void edge_isLeftWhite(PapersRun run) {
        int perInch = 51;
        int edge = 10;
        byte[] all = OutsideTool.run(
                OutsideTool.find("pdftoppm", "poppler-utils"),
                "-r",
                "" + perInch,
                "-gray",
                run.pdf().toString());
        Grey picture = new Grey(all, 0);
        int pages = 0;
        while (picture.isThere()) {
            pages++;
            assertThat(picture.darkInEdge(edge))
                    .as("dark spots at the edge of page %d", pages)
                    .isZero();
            picture = picture.next();
        }
        assertThat(pages).isEqualTo(PdfText.pages(run.pdf()).size());
    }

    /// Grey pictures in a row, as pdftoppm writes them: `P5`, width, height, 255, then a byte a spot.
    private record Grey(byte[] all, int from, int width, int height, int spots) {
        Grey(byte[] all, int from) {
            this(all, from, head(all, from, 1), head(all, from, 2), from + headLength(all, from));
        }

        private static String[] words(byte[] all, int from) {
            return new String(all, from, Math.min(40, all.length - from), java.nio.charset.StandardCharsets.ISO_8859_1)
                    .split("\\s", 5);
        }

        private static int head(byte[] all, int from, int index) {
            return from >= all.length ? 0 : Integer.parseInt(words(all, from)[index]);
        }

        private static int headLength(byte[] all, int from) {
            return from >= all.length
                    ? 0
                    : Stream.of(words(all, from))
                            .limit(4)
                            .mapToInt(word -> word.length() + 1)
                            .sum();
        }

        boolean isThere() {
            return width > 0;
        }

        Grey next() {
            return new Grey(all, spots + width * height);
        }

        int darkInEdge(int edge) {
            int dark = 0;
            for (int y = 0; y < height; y++) {
                for (int x = 0; x < width; x++) {
                    boolean isEdge = x < edge || y < edge || x >= width - edge || y >= height - edge;
                    dark += isEdge && (all[spots + y * width + x] & 0xff) < 250 ? 1 : 0;
                }
            }
            return dark;
        }
    }

    @ParameterizedTest
    @MethodSource("runs")
    void fonts_areEmbedded(PapersRun run) {
        List<String> lines = OutsideTool.poppler("pdffonts", run.pdf().toString())
                .lines()
                .skip(2)
                .toList();
        assertThat(lines)
                .hasSizeGreaterThanOrEqualTo(2)
                .allSatisfy(line -> assertThat(line).matches(".* yes +(yes|no) +yes +\\d+ +\\d+"));
    }

    @ParameterizedTest
    @MethodSource("runs")
    void file_isTaggedAndSaysItsTitle(PapersRun run) {
        String info = OutsideTool.poppler("pdfinfo", run.pdf().toString());
        assertThat(info).containsPattern("(?m)^Tagged: +yes$").containsPattern("(?m)^Page size: .*\\(A4\\)$");
        assertThat(PdfText.plain(info.lines()
                        .filter(line -> line.startsWith("Title:"))
                        .findFirst()
                        .orElse("")))
                .contains(PdfText.plain(run.title()));
    }

    @ParameterizedTest
    @MethodSource("runs")
    void outline_leadsToEveryShotOnce(PapersRun run) throws IOException {
        List<Page> pages = PdfText.pages(run.pdf());
        try (PDDocument pdf = Loader.loadPDF(run.pdf().toFile())) {
            List<PDOutlineItem> items = new ArrayList<>();
            PDOutlineNode outline = pdf.getDocumentCatalog().getDocumentOutline();
            assertThat(outline).as("the outline").isNotNull();
            collect(outline, items);
            int before = 0;
            for (String shot : run.shots()) {
                List<PDOutlineItem> found = items.stream()
                        .filter(item -> List.of(item.getTitle().split("[ :·]+")).contains(shot))
                        .toList();
                assertThat(found).as("entries of %s", shot).hasSize(1);
                int page = pdf.getPages().indexOf(found.getFirst().findDestinationPage(pdf));
                assertThat(page).as("page of %s", shot).isGreaterThan(before);
                assertThat(PdfText.withoutBlanks(pages.get(page).text())).contains(shot);
                before = page;
            }
        }
    }

    private static void collect(PDOutlineNode node, List<PDOutlineItem> items) {
        for (PDOutlineItem item : node.children()) {
            items.add(item);
            collect(item, items);
        }
    }

    @ParameterizedTest
    @MethodSource("runs")
    void everyPage_hasItsNumberTheRevisionAndTheTime(PapersRun run) {
        List<Page> pages = PdfText.pages(run.pdf());
        Pattern printed = Pattern.compile("printed (\\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d)\\b");
        List<String> times = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            String text = pages.get(i).text().replaceAll("\\s+", " ");
            assertThat(text)
                    .as("page %d", i + 1)
                    .contains("plan revision " + run.revision())
                    .contains("page " + (i + 1) + " of " + pages.size());
            printed.matcher(text).results().forEach(time -> times.add(time.group(1)));
        }
        assertThat(times).hasSizeGreaterThanOrEqualTo(pages.size());
        assertThat(times.stream().distinct()).hasSize(1);
    }

    /// poppler gives words in the order they are read in, whichever way they run.
    @ParameterizedTest
    @MethodSource("runs")
    void title_isReadBackInItsOwnScript(PapersRun run) {
        String text = PdfText.plain(
                OutsideTool.poppler("pdftotext", "-l", "1", run.pdf().toString(), "-"));
        assertThat(PdfText.withoutBlanks(text)).contains(PdfText.withoutBlanks(run.title()));
    }
}
