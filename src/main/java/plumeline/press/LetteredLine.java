package plumeline.press;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Bidi;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/// Letters lines as pixels by the bundled lettering: its outlines are filled, smooth at their edges, the same on every
/// machine. Scripts that run from right to left are turned round and joined as on papers.
public final class LetteredLine {
    private static final double UP = 0.95;
    private static final double DOWN = 0.27;

    private final Face plain = new Face(Bundled.regular());
    private final Face eastern = new Face(Bundled.eastern());

    /// Makes the lettering ready.
    public LetteredLine() {}

    /// A line: how much of each pixel is covered.
    ///
    /// @param width pixels across, ≥ 1
    /// @param height pixels down
    /// @param cover a byte a pixel, rows from the top, 255 where it is covered whole
    public record Covered(int width, int height, byte[] cover) {}

    /// Letters a line.
    ///
    /// @param text one line, in reading order
    /// @param sizePixels the letters' size, pixels, > 0
    /// @return the line, as high as any of that size
    public Covered of(String text, double sizePixels) {
        Path2D.Double path = new Path2D.Double();
        double across = path(visual(text), path);
        int width = Math.max(1, (int) Math.ceil(across * sizePixels));
        int height = (int) Math.ceil((UP + DOWN) * sizePixels);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D brush = image.createGraphics();
        brush.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        brush.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        brush.setColor(Color.WHITE);
        brush.fill(new AffineTransform(sizePixels, 0, 0, -sizePixels, 0, UP * sizePixels)
                .createTransformedShape(path));
        brush.dispose();
        return new Covered(width, height, ((DataBufferByte) image.getRaster().getDataBuffer()).getData());
    }

    /// A text in the order in which it is set from left to right, letters joined.
    private static String visual(String text) {
        Bidi bidi = new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
        if (bidi.isLeftToRight()) {
            return text;
        }
        int count = bidi.getRunCount();
        byte[] levels = new byte[count];
        Integer[] order = new Integer[count];
        for (int i = 0; i < count; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
            order[i] = i;
        }
        Bidi.reorderVisually(levels, 0, order, 0, count);
        RightToLeft.Turner turner = new RightToLeft.Turner();
        StringBuilder all = new StringBuilder();
        for (int run : order) {
            String part = text.substring(bidi.getRunStart(run), bidi.getRunLimit(run));
            all.append(
                    bidi.getRunLevel(run) % 2 == 1 ? turner.reorderRTLTextToLTR(turner.shapeText(part)) : part);
        }
        return all.toString();
    }

    /// Adds a text's outlines, for letters of size 1, and gives how far it goes.
    private double path(String text, Path2D.Double path) {
        double across = 0;
        for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
            int letter = text.codePointAt(at);
            Face face = plain.has(letter) ? plain : eastern.has(letter) ? eastern : plain;
            across += face.add(letter, across, path);
        }
        return across;
    }

    /// One file of lettering.
    private static final class Face {
        private final TrueTypeFont font;
        private final CmapLookup glyphs;

        Face(InputStream file) {
            try {
                font = new TTFParser().parse(new RandomAccessReadBuffer(file));
                glyphs = font.getUnicodeCmapLookup();
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }

        boolean has(int letter) {
            return glyphs.getGlyphId(letter) != 0;
        }

        double add(int letter, double across, Path2D.Double path) {
            try {
                int glyph = glyphs.getGlyphId(letter);
                double scale = 1.0 / font.getUnitsPerEm();
                GlyphData outline = font.getGlyph().getGlyph(glyph);
                if (outline != null) {
                    path.append(
                            new AffineTransform(scale, 0, 0, scale, across, 0)
                                    .createTransformedShape(outline.getPath()),
                            false);
                }
                return font.getAdvanceWidth(glyph) * scale;
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }
    }
}
