package plumeline.press;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.text.Bidi;

/// Letters lines as pixels by the bundled lettering: its outlines are filled, smooth at their edges, the same on every
/// machine. Scripts that run from right to left are turned round and joined as on papers.
public final class LetteredLine {
    private static final double UP = 0.95;
    private static final double DOWN = 0.27;

    private final LetterShapes letters = new LetterShapes();

    /// Makes the lettering ready.
    public LetteredLine() {}

    /// Takes a lettered line.
    ///
    /// @param <T> what it makes of it
    @FunctionalInterface
    public interface Taker<T> {
        /// Takes it.
        ///
        /// @param width pixels across, ≥ 1
        /// @param height pixels down
        /// @param cover a byte a pixel, rows from the top, 255 where it is covered whole
        /// @return anything
        T take(int width, int height, byte[] cover);
    }

    /// Letters a line.
    ///
    /// @param text one line, in reading order
    /// @param sizePixels the letters' size, pixels, > 0
    /// @param taker takes the line, as high as any of that size
    /// @return what the taker makes of it
    /// @param <T> what that is
    public <T> T of(String text, double sizePixels, Taker<T> taker) {
        String visual = visual(text);
        int width = Math.max(1, (int) Math.ceil(letters.lengthPixels(visual, sizePixels)));
        int height = (int) Math.ceil((UP + DOWN) * sizePixels);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D brush = image.createGraphics();
        brush.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        brush.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        brush.setColor(Color.WHITE);
        brush.translate(0, UP * sizePixels);
        brush.fill(letters.outline(visual, sizePixels, 0));
        brush.dispose();
        return taker.take(width, height, ((DataBufferByte) image.getRaster().getDataBuffer()).getData());
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
            all.append(bidi.getRunLevel(run) % 2 == 1 ? turner.reorderRTLTextToLTR(turner.shapeText(part)) : part);
        }
        return all.toString();
    }
}
