package plumeline.sheet;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import plumeline.draw.Drawings;
import plumeline.draw.Made;
import plumeline.draw.Moment;
import plumeline.press.Bundled;
import plumeline.press.PdfPrinter;
import plumeline.sketch.Drawing;
import plumeline.solve.FilmAnswer;
import plumeline.solve.ShotAnswer;

/// Each drawing as it is printed, by the library's own renderer. Where lines stand is held by the numbers of the
/// drawings' own tests; these hold that they are inked, weighted and lettered as they were when somebody looked.
final class DrawingsGoldenTest {
    private static final double POINTS_PER_INCH = 72;

    /// Room under a drawing for the page number, pixels.
    private static final int FOOT = 80;

    private final FilmAnswer film = Made.film(Made.text());

    private ShotAnswer shot(String name) {
        return Made.shot(film, name);
    }

    @Test
    void planFromAbove() throws IOException {
        check("plan-from-above", Drawings.planFromAbove(film.plan(), shot("reveal")));
    }

    @Test
    void sideElevation() throws IOException {
        check("side-elevation", Drawings.sideElevation(film.plan(), shot("reveal")));
    }

    @Test
    void tankSide() throws IOException {
        check("tank-side", Drawings.tankSide(film.plan(), shot("plume")).getFirst());
    }

    @Test
    void cameraView() throws IOException {
        check("camera-view", Drawings.cameraView(film.plan(), shot("looks"), Moment.START));
    }

    @Test
    void sharpRuler() throws IOException {
        check("sharp-ruler", Drawings.sharpRuler(film.plan(), shot("looks")).getFirst());
    }

    @Test
    void unrolledLabel() throws IOException {
        String labelled = Made.text()
                .replace(
                        "[118 mm, 10 mm]], body: opaque}",
                        "[118 mm, 10 mm]], body: opaque, label: {width: 90 mm, height: 50 mm, bottom: 20 mm}}");
        FilmAnswer answered = Made.film(labelled);
        check(
                "unrolled-label",
                Drawings.unrolledLabel(answered.plan(), Made.shot(answered, "plume"))
                        .getFirst());
    }

    @Test
    void travel() throws IOException {
        check("travel", Drawings.travel(film.plan(), shot("looks")).getFirst());
    }

    @Test
    void leewayBoxes() throws IOException {
        check("leeway-boxes", Drawings.leewayBoxes(film.plan(), shot("reveal")).getFirst());
    }

    @Test
    void firstPageOfASheet() throws IOException {
        byte[] pdf = Papers.of(film, new Printed("2026-11-25 10:42")).pdf();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Golden.check("sheet/first-page", picture(document, 1));
        }
    }

    private static void check(String name, Drawing drawing) throws IOException {
        String page = "<html lang=\"en\"><head><title>" + name + "</title><style>@page { size: " + drawing.widthPixels()
                + "px " + (drawing.heightPixels() + FOOT) + "px; margin: 0 } body { margin: 0; font-family: "
                + Bundled.FAMILY
                + " }</style></head><body>" + drawing.toSvg() + "</body></html>";
        byte[] pdf = PdfPrinter.print(List.of(page), "0123456789abcdef");
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Golden.check("sheet/" + name, picture(document, 0));
        }
    }

    private static BufferedImage picture(PDDocument document, int page) throws IOException {
        var box = document.getPage(page).getMediaBox();
        double dots = (Golden.SIDE - 1) * POINTS_PER_INCH / Math.max(box.getWidth(), box.getHeight());
        return new PDFRenderer(document).renderImageWithDPI(page, (float) dots, ImageType.RGB);
    }
}
