package plumeline.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import plumeline.draw.Made;
import plumeline.draw.Moment;
import plumeline.draw.SvgReader;
import plumeline.press.DrawingPainter;
import plumeline.solve.FilmAnswer;

/// Computed pictures on shot sheets, beside the line art.
final class PicturesTest {
    private static final FilmAnswer FILM = Made.film(Made.text());

    private static final byte[] JPEG = DrawingPainter.jpeg(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"96\" height=\"54\" viewBox=\"0 0 96 54\">"
                    + "<circle cx=\"40\" cy=\"20\" r=\"15\"/></svg>",
            96);

    private static Papers papers() {
        var start = Pictures.One.ofJpeg(Moment.START, "Start, frame 1, computed", "Shot reveal: at start", JPEG);
        var end = Pictures.One.ofJpeg(Moment.END, "End, frame 96, computed", "Shot reveal: at end", JPEG);
        var pictures = new Pictures(
                Map.of("reveal", new Pictures.OfShot(List.of(start, end), List.of("No lamp is written."))));
        return Papers.of(FILM, new Printed("2026-11-25 10:42", Changes.none(), pictures));
    }

    @Test
    void pictures_standBesideTheLineArtOfTheirInstant() {
        Document page = SvgReader.parse(papers().html());
        var images = page.getElementsByTagName("img");
        assertThat(images.getLength()).isEqualTo(2);
        Element end = (Element) images.item(1);
        assertThat(end.getAttribute("alt")).isEqualTo("Shot reveal: at end");
        Element row = (Element) end.getParentNode().getParentNode();
        assertThat(row.getAttribute("class")).isEqualTo("pair");
        assertThat(row.getElementsByTagName("svg").getLength()).isEqualTo(1);
        assertThat(row.getTextContent()).contains("End, frame").contains("computed");
        assertThat(page.getDocumentElement().getTextContent()).contains("No lamp is written.");
    }

    @Test
    void withoutPictures_nothingIsSaidOfThem() {
        String html = Papers.of(FILM, new Printed("2026-11-25 10:42")).html();
        assertThat(html).doesNotContain("<img").doesNotContain("Computed pictures");
    }

    /// The print holds them as they are, each told to who can't see it.
    @Test
    void thePrint_holdsThem() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(papers().pdf())) {
            List<String> found = new ArrayList<>();
            for (PDPage page : pdf.getPages()) {
                for (COSName name : page.getResources().getXObjectNames()) {
                    if (page.getResources().isImageXObject(name)) {
                        found.add(page.getResources()
                                .getXObject(name)
                                .getCOSObject()
                                .getNameAsString(COSName.FILTER));
                    }
                }
            }
            assertThat(found).isNotEmpty().allMatch("DCTDecode"::equals);
        }
    }
}
