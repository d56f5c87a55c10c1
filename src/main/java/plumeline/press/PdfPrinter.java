package plumeline.press;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.multipdf.PDFMergerUtility;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/// Prints the papers' page as PDF: A4, tagged, lettering embedded, no outside address fetched.
public final class PdfPrinter {
    private static final Pattern UNPARTED = Pattern.compile("<span class=\"f\">([^<]*)</span>");

    /// From here on Unicode holds what the usual lettering lacks; it is large, so it is loaded where it is needed.
    private static final int FIRST_EASTERN = 0x2E80;

    private static final Pattern TICK = Pattern.compile("<input [^<>]*class=\"tick[^<>]*/>");

    /// A sheet's id and heading.
    private static final Pattern SHEET = Pattern.compile(
            "<section class=\"(?:shot|cover)\" id=\"([^\"]*)\">.*?<h[12][^>]*>([^<]*)</h[12]>", Pattern.DOTALL);

    private PdfPrinter() {}

    /// Prints pages one after the other into one file; they are set side by side, each by itself.
    ///
    /// @param pages well-formed pages
    /// @param planSha256 the plan's SHA-256, which gives the file its id
    /// @return the file's bytes
    public static byte[] print(List<String> pages, String planSha256) {
        XRLog.setLoggingEnabled(false);
        List<byte[]> parts = pages.parallelStream().map(PdfPrinter::set).toList();
        try (PDDocument whole = Loader.loadPDF(parts.getFirst())) {
            PDFMergerUtility merger = new PDFMergerUtility();
            for (byte[] part : parts.subList(1, parts.size())) {
                try (PDDocument next = Loader.loadPDF(part)) {
                    merger.appendDocument(whole, next);
                }
            }
            if (pages.stream().anyMatch(RightToLeft.Turner::joins)) {
                LettersOfForms.correct(whole);
            }
            PageNumbers.write(whole);
            PDMarkInfo tagged = new PDMarkInfo();
            tagged.setMarked(true);
            whole.getDocumentCatalog().setMarkInfo(tagged);
            // What a part was given by the clock would stay.
            whole.getDocument().getTrailer().removeItem(COSName.ID);
            whole.getDocumentInformation().getCOSObject().removeItem(COSName.CREATION_DATE);
            whole.setDocumentId(documentId(planSha256));
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            whole.save(bytes);
            return bytes.toByteArray();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static byte[] set(String html) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.usePDDocument(document);
            builder.usePdfUaAccessibility(true);
            builder.useSVGDrawer(new DrawingPrinter());
            builder.useUnicodeLineBreaker(new FigureBreaker());
            builder.useUnicodeBidiSplitter(RightToLeft::new);
            builder.useUnicodeBidiReorderer(new RightToLeft.Turner());
            builder.useUriResolver((base, address) -> isWithin(address) ? address : "about:blank");
            useLettering(builder, document, Bundled.regular(), 400);
            useLettering(builder, document, Bundled.bold(), 700);
            if (html.codePoints().anyMatch(c -> c >= FIRST_EASTERN)) {
                PDFont eastern = lettering(document, Bundled.eastern());
                builder.useFont(new PDFontSupplier(eastern), Bundled.EASTERN_FAMILY, 400, FontStyle.NORMAL, true);
            }
            builder.useReplacementText("□");
            builder.withProducer("Plumeline");
            builder.withHtmlContent(described(html), "about:blank");
            try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
                renderer.layout();
                renderer.createPDFKeepOpen().save(bytes);
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return bytes.toByteArray();
    }

    /// Whether what an address names is in the page itself.
    private static boolean isWithin(String address) {
        return address.startsWith("#") || address.startsWith("data:image/jpeg;base64,");
    }

    /// Makes the page what the printer takes.
    ///
    /// The printer takes a drawing's description from `alt`, a browser from `aria-label`. What keeps a browser from
    /// parting figures is left out: the printer has a line breaker of its own, and writes text in parts otherwise.
    /// Boxes to tick are drawn; headings of sheets become the outline. A plan's text has no bare quote, so nothing
    /// else can match.
    private static String described(String html) {
        String described = html.replace("role=\"img\" aria-label=", "role=\"img\" alt=");
        String whole = UNPARTED.matcher(described).replaceAll("$1");
        String boxed = TICK.matcher(whole).replaceAll("<span class=\"tick\"></span>");
        return boxed.replace("</head>", outline(html) + "</head>");
    }

    private static String outline(String html) {
        String entries = SHEET.matcher(html)
                .results()
                .map(sheet -> "<bookmark name=\"" + sheet.group(2) + "\" href=\"#" + sheet.group(1) + "\"/>")
                .collect(Collectors.joining());
        return "<bookmarks>" + entries + "</bookmarks>";
    }

    private static void useLettering(PdfRendererBuilder builder, PDDocument document, InputStream file, int weight)
            throws IOException {
        builder.useFont(new PDFontSupplier(lettering(document, file)), Bundled.FAMILY, weight, FontStyle.NORMAL, true);
    }

    /// Letters as they are written: joined ones (such as fi) couldn't be searched for; Arabic ones are told apart from
    /// their forms.
    static PDFont lettering(PDDocument document, InputStream file) throws IOException {
        TrueTypeFont letters = new TTFParser().parse(new RandomAccessReadBuffer(file));
        letters.setEnableGsub(false);
        return PDType0Font.load(document, letters, true);
    }

    /// The same plan gives the same document id.
    private static long documentId(String planSha256) {
        String digits = planSha256.length() >= 15 ? planSha256.substring(0, 15) : "0";
        return HexFormat.fromHexDigitsToLong(digits);
    }
}
