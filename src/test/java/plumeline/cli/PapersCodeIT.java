package plumeline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plumeline.tidy.Outside;

/// Holds a reader to the printed pages: every shot's code says film, shot and revision.
@Outside(source = "ISO/IEC 18004 (QR code) as ZXing 3.5.4 reads it off the drawn page", kind = "program")
final class PapersCodeIT {
    /// What a phone sees of a printed page, or less.
    private static final float DOTS_PER_INCH = 150;

    /// One thing and a Hebrew title; long names and an Arabic one; a Japanese one.
    static Stream<PapersRun> runs() {
        return Stream.of(0L, 1L, 3L).map(PapersRun::of);
    }

    @ParameterizedTest
    @MethodSource("runs")
    void everyShot_hasACodeOfFilmShotAndRevision(PapersRun run) throws IOException {
        List<String> wanted = run.shots().stream()
                .map(shot -> "film: " + run.title() + "\nshot: " + shot + "\nrevision: " + run.revision())
                .toList();
        assertThat(wanted).isNotEmpty();
        assertThat(codes(run)).isEqualTo(wanted);
    }

    /// All codes of the print, from the first page to the last.
    private static List<String> codes(PapersRun run) throws IOException {
        List<String> codes = new ArrayList<>();
        try (PDDocument pdf = Loader.loadPDF(run.pdf().toFile())) {
            PDFRenderer renderer = new PDFRenderer(pdf);
            for (int page = 0; page < pdf.getNumberOfPages(); page++) {
                codes.addAll(read(renderer.renderImageWithDPI(page, DOTS_PER_INCH, ImageType.RGB)));
            }
        }
        return codes;
    }

    private static List<String> read(BufferedImage image) {
        int width = image.getWidth();
        int height = image.getHeight();
        int[] dots = image.getRGB(0, 0, width, height, null, 0, width);
        BinaryBitmap bitmap = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, dots)));
        try {
            Result[] found =
                    new QRCodeMultiReader().decodeMultiple(bitmap, Map.of(DecodeHintType.TRY_HARDER, Boolean.TRUE));
            return Stream.of(found).map(Result::getText).toList();
        } catch (NotFoundException none) {
            return List.of();
        }
    }
}
