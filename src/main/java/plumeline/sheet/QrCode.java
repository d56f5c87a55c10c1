package plumeline.sheet;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;
import plumeline.sketch.Markup;

/// A text as a QR code in lines that print sharply at any size.
///
/// **Source:** ISO/IEC 18004 for the code itself, made by the library; a quiet zone of four modules round it.
final class QrCode {
    /// Side of the drawing, CSS pixels: 31 mm, read from arm's length.
    private static final int SIDE = 118;

    private QrCode() {}

    /// @param text what it says; up to a few hundred characters
    static Markup of(String id, String text, String title) {
        BitMatrix modules = modules(text);
        int size = modules.getWidth();
        Markup svg = Markup.of("svg")
                .with("xmlns", "http://www.w3.org/2000/svg")
                .with("id", id)
                .with("role", "img")
                .with("aria-label", title)
                .with("class", "code")
                .with("width", SIDE)
                .with("height", SIDE)
                .with("viewBox", "0 0 " + size + " " + size);
        return svg.add(
                Markup.of("title", title),
                Markup.of("path").with("d", path(modules)).with("fill", "#000"));
    }

    private static BitMatrix modules(String text) {
        Map<EncodeHintType, Object> hints = Map.of(
                EncodeHintType.CHARACTER_SET,
                "UTF-8",
                EncodeHintType.ERROR_CORRECTION,
                ErrorCorrectionLevel.M,
                EncodeHintType.MARGIN,
                4);
        try {
            return new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 0, 0, hints);
        } catch (WriterException impossible) {
            throw new IllegalStateException("a short text has a code", impossible);
        }
    }

    /// Each run of dark modules in a row as a rectangle.
    private static String path(BitMatrix modules) {
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < modules.getHeight(); y++) {
            int x = 0;
            while (x < modules.getWidth()) {
                int from = x;
                while (x < modules.getWidth() && modules.get(x, y)) {
                    x++;
                }
                if (x > from) {
                    path.append('M')
                            .append(from)
                            .append(' ')
                            .append(y)
                            .append('h')
                            .append(x - from);
                    path.append("v1h").append(from - x).append('z');
                }
                x++;
            }
        }
        return path.toString();
    }
}
