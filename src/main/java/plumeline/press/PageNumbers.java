package plumeline.press;

import java.io.IOException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.font.PDFont;

/// The numbers at the foot of each page, beside the running lines: only the whole print knows how many there are.
final class PageNumbers {
    private static final float SIZE = 14;
    private static final float POINTS_PER_MILLIMETRE = 72 / 25.4f;

    /// The style sheet's right margin, and the height at which the second running line stands.
    private static final float RIGHT = 12 * POINTS_PER_MILLIMETRE;

    private static final float BASELINE = 30.3f;

    private PageNumbers() {}

    static void write(PDDocument document) throws IOException {
        PDFont letters = PdfPrinter.lettering(document, Bundled.regular());
        int count = document.getNumberOfPages();
        int number = 1;
        for (PDPage page : document.getPages()) {
            String text = "page " + number++ + " of " + count;
            float width = letters.getStringWidth(text) / 1000 * SIZE;
            try (PDPageContentStream out = new PDPageContentStream(document, page, AppendMode.APPEND, true, true)) {
                out.beginMarkedContent(COSName.ARTIFACT);
                out.beginText();
                out.setFont(letters, SIZE);
                out.newLineAtOffset(page.getMediaBox().getWidth() - RIGHT - width, BASELINE);
                out.showText(text);
                out.endText();
                out.endMarkedContent();
            }
        }
    }
}
