package plumeline.press;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/// The outlines of the bundled letters, so that a text looks the same wherever it is drawn. Left to right only.
final class LetterShapes {
    /// From here on the eastern lettering is looked into.
    private static final int FIRST_EASTERN = 0x2E80;

    private final List<TrueTypeFont> fonts = new ArrayList<>();

    LetterShapes() {
        fonts.add(font(Bundled.regular()));
    }

    private static TrueTypeFont font(InputStream file) {
        try {
            return new TTFParser().parse(new RandomAccessReadBuffer(file));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /// Gives a text's outline with its baseline's left end at 0, 0.
    ///
    /// @param size of the letters, pixels
    /// @param length to which the text is fitted, pixels; 0 for its own
    Shape outline(String text, double size, double length) {
        Path2D.Double path = new Path2D.Double();
        double at = place(text, path);
        double across = length > 0 && at > 0 ? length / at : size;
        path.transform(AffineTransform.getScaleInstance(across, size));
        return path;
    }

    /// Gives how far a text goes.
    ///
    /// @param size of the letters, pixels
    /// @return pixels
    double lengthPixels(String text, double size) {
        return size * place(text, new Path2D.Double());
    }

    /// Adds a text in letters of size 1.
    ///
    /// @return how far it goes
    private double place(String text, Path2D.Double path) {
        if (fonts.size() == 1 && text.codePoints().anyMatch(c -> c >= FIRST_EASTERN)) {
            fonts.add(font(Bundled.eastern()));
        }
        double at = 0;
        try {
            for (int c : text.codePoints().toArray()) {
                at += add(path, c, at);
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return at;
    }

    /// Adds a letter of size 1.
    ///
    /// @return how far it goes on
    private double add(Path2D.Double path, int c, double at) throws IOException {
        TrueTypeFont font = fonts.getFirst();
        int glyph = font.getUnicodeCmapLookup().getGlyphId(c);
        if (glyph == 0 && fonts.size() > 1) {
            font = fonts.getLast();
            glyph = font.getUnicodeCmapLookup().getGlyphId(c);
        }
        double unit = 1.0 / font.getUnitsPerEm();
        var shape = font.getGlyph().getGlyph(glyph);
        if (shape != null) {
            path.append(new AffineTransform(unit, 0, 0, -unit, at, 0).createTransformedShape(shape.getPath()), false);
        }
        return font.getAdvanceWidth(glyph) * unit;
    }
}
