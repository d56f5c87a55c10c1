package plumeline.sheet;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumSet;
import java.util.HexFormat;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/// Prints the papers' page as PDF: A4, tagged, lettering embedded, no outside address fetched.
final class PdfPrinter {
    private static final Pattern UNPARTED = Pattern.compile("<span class=\"f\">([^<]*)</span>");

    private static final Pattern TICK = Pattern.compile("<input [^<>]*class=\"tick[^<>]*/>");

    /// A sheet's id and heading.
    private static final Pattern SHEET = Pattern.compile(
            "<section class=\"(?:shot|cover)\" id=\"([^\"]*)\">.*?<h[12][^>]*>([^<]*)</h[12]>", Pattern.DOTALL);

    private PdfPrinter() {}

    static byte[] print(String html, String planSha256) {
        XRLog.setLoggingEnabled(false);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.usePdfUaAccessibility(true);
        builder.useSVGDrawer(new BatikSVGDrawer());
        builder.useUnicodeLineBreaker(new FigureBreaker());
        builder.useUnicodeBidiSplitter(RightToLeft::new);
        builder.useUnicodeBidiReorderer(new RightToLeft.Turner());
        builder.useUriResolver((base, address) -> address.startsWith("#") ? address : "about:blank");
        useLettering(builder, Bundled.FAMILY);
        useLettering(builder, "DejaVu Sans Condensed");
        builder.withProducer("Plumeline");
        builder.withHtmlContent(described(html), "about:blank");
        builder.toStream(bytes);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.getPdfDocument().setDocumentId(documentId(planSha256));
            renderer.layout();
            renderer.createPDF();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return bytes.toByteArray();
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

    private static void useLettering(PdfRendererBuilder builder, String family) {
        Set<FSFontUseCase> uses = EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG, FSFontUseCase.FALLBACK_FINAL);
        builder.useFont(Bundled::regular, family, 400, FontStyle.NORMAL, true, uses);
        builder.useFont(Bundled::bold, family, 700, FontStyle.NORMAL, true, uses);
    }

    /// The same plan gives the same document id.
    private static long documentId(String planSha256) {
        String digits = planSha256.length() >= 15 ? planSha256.substring(0, 15) : "0";
        return HexFormat.fromHexDigitsToLong(digits);
    }
}
