package plumeline.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import plumeline.draw.Made;
import plumeline.draw.SvgReader;
import plumeline.solve.FilmAnswer;

final class PdfTest {
    private static final Printed PRINTED = new Printed("2026-11-25 10:42");
    private static final Pattern FIGURE = Pattern.compile("\\d[\\d.]*");

    private static FilmAnswer film = Made.film(Made.text());
    private static PDDocument pdf = new PDDocument();

    @BeforeAll
    static void print() throws IOException {
        pdf.close();
        film = Made.film(Made.text());
        pdf = Loader.loadPDF(Papers.of(film, PRINTED).pdf());
    }

    @AfterAll
    static void close() throws IOException {
        pdf.close();
    }

    @Test
    void pages_areTaggedA4WithEmbeddedLettering() {
        assertThat(pdf.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
        assertThat(pdf.getDocumentCatalog().getStructureTreeRoot()).isNotNull();
        assertThat(pdf.getDocumentCatalog().getLanguage()).startsWithIgnoringCase("en");
        assertThat(pdf.getDocumentInformation().getTitle()).startsWith("Papers film");
        int fonts = 0;
        for (var page : pdf.getPages()) {
            assertThat(page.getMediaBox().getWidth()).isBetween(595f, 596f);
            assertThat(page.getMediaBox().getHeight()).isBetween(841f, 842f);
            for (var name : page.getResources().getFontNames()) {
                try {
                    assertThat(page.getResources().getFont(name).isEmbedded())
                            .as("%s", name)
                            .isTrue();
                } catch (IOException broken) {
                    throw new AssertionError(broken);
                }
                fonts++;
            }
        }
        assertThat(fonts).isGreaterThan(5);
    }

    @Test
    void everyPage_hasRevisionTimeAndNumber() throws IOException {
        int pages = pdf.getNumberOfPages();
        assertThat(pages).isGreaterThan(3);
        for (int page = 1; page <= pages; page++) {
            PDFTextStripper reader = new PDFTextStripper();
            reader.setStartPage(page);
            reader.setEndPage(page);
            assertThat(reader.getText(pdf))
                    .contains("plan revision 0123456789ab · printed 2026-11-25 10:42", "page " + page + " of " + pages);
        }
    }

    /// A card is cut out, or held at the tank: it stands on one page, cautions, figures and boxes.
    @Test
    void cards_areNotParted() throws IOException {
        Map<String, String> ends = Map.of(
                "Tank card: glass", "Ruler at bottle",
                "Float card: flacon", "The evening before",
                "Hang card: bottle", "One line lets it turn|Its lines keep its face");
        Map<String, Integer> found = new TreeMap<>();
        for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
            PDFTextStripper reader = new PDFTextStripper();
            reader.setStartPage(page);
            reader.setEndPage(page);
            String text = reader.getText(pdf);
            ends.forEach((title, end) -> {
                if (text.contains(title)) {
                    found.merge(title, 1, Integer::sum);
                    assertThat(text.substring(text.indexOf(title))).containsPattern(end);
                }
            });
        }
        assertThat(found)
                .hasSize(3)
                .allSatisfy((title, pages) -> assertThat(pages).isEqualTo(1));
    }

    /// Every figure of the page and of its drawings, with how often it stands there, is in the PDF, apart from the
    /// running lines and table heads that pages repeat.
    @Test
    void figures_areThePagesOwn() throws IOException {
        String html = Papers.of(film, PRINTED).html();
        Map<String, Integer> wanted = figures(shownText(SvgReader.parse(html).getDocumentElement()));
        PDFTextStripper reader = new PDFTextStripper();
        // Else figures that are drawn from right to left are read as one.
        reader.setSortByPosition(true);
        Map<String, Integer> found = figures(reader.getText(pdf)
                .replaceAll("[^\\n]*plan revision[^\\n]*", "")
                .replaceAll("page \\d+ of \\d+", ""));
        assertThat(wanted).hasSizeGreaterThan(40);
        assertThat(found).isEqualTo(wanted);
    }

    /// In the file the letters stand as they are set, from left to right.
    @Test
    void rightToLeftTitle_isSetFromTheRight() throws IOException {
        FilmAnswer hebrew = Made.film(Made.text().replace("title: Papers film", "title: \"שלום 24\""));
        try (PDDocument printed = Loader.loadPDF(Papers.of(hebrew, PRINTED).pdf())) {
            TreeMap<Float, String> letters = new TreeMap<>();
            PDFTextStripper reader = new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition position) {
                    if (position.getFontSizeInPt() > 20) {
                        letters.put(position.getXDirAdj(), position.getUnicode());
                    }
                }
            };
            reader.setEndPage(1);
            reader.getText(printed);
            assertThat(String.join("", letters.values()).strip()).isEqualTo("24 םולש");
        }
    }

    /// The letters a title was written in are read back from the joined forms that are drawn, by the library's own
    /// reader.
    @Test
    void arabic_isDrawnJoinedAndReadAsLetters() throws IOException {
        String title = "\u0648\u0631\u062F \u0627\u0644\u0634\u062A\u0627\u0621";
        FilmAnswer named = Made.film(Made.text().replace("title: Papers film", "title: " + title));
        try (PDDocument printed = Loader.loadPDF(Papers.of(named, PRINTED).pdf())) {
            PDFTextStripper reader = new PDFTextStripper();
            reader.setEndPage(1);
            assertThat(reader.getText(printed)).contains(title);
        }
    }

    @Test
    void titleThatCannotBeLettered_isOwnedUpTo() {
        String thai = Made.text().replace("title: Papers film", "title: \u0E14\u0E2D\u0E01");
        String told = "The print has no letters for some of";
        assertThat(Papers.of(Made.film(thai), PRINTED).html()).contains(told);
        assertThat(Papers.of(film, PRINTED).html()).doesNotContain(told);
    }

    private static Map<String, Integer> figures(String text) {
        Map<String, Integer> count = new TreeMap<>();
        FIGURE.matcher(text).results().forEach(figure -> count.merge(figure.group(), 1, Integer::sum));
        return count;
    }

    private static String shownText(Element element) {
        StringBuilder out = new StringBuilder();
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                boolean skipped = java.util.Set.of("title", "head").contains(inner.getTagName())
                        || inner.getAttribute("class").equals("running")
                        || isLaterMark(inner);
                out.append(skipped ? " " : shownText(inner) + " ".repeat(isInline(inner) ? 0 : 1));
            } else {
                out.append(child.getTextContent());
            }
        }
        return out.toString();
    }

    /// On paper only the first stands in the line that says which is next.
    private static boolean isLaterMark(Element element) {
        return element.getTagName().equals("li")
                && ((Element) element.getParentNode()).getAttribute("class").equals("next")
                && element.getPreviousSibling() != null;
    }

    private static boolean isInline(Element element) {
        return element.getTagName().equals("span");
    }
}
