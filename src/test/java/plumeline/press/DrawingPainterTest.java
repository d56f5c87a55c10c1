package plumeline.press;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

final class DrawingPainterTest {
    private static String svg(String inner) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100\" height=\"40\" viewBox=\"0 0 100 40\""
                + " font-size=\"19\" fill=\"#000\"><title>t</title>" + inner + "</svg>";
    }

    private static BufferedImage painted(String inner, int wide) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(DrawingPainter.png(svg(inner), wide)));
    }

    private static int grey(BufferedImage image, int x, int y) {
        return image.getRGB(x, y) & 255;
    }

    @Test
    void shapes_lieWhereTheyAreDrawn() throws IOException {
        BufferedImage image = painted(
                "<g><rect x=\"10\" y=\"10\" width=\"20\" height=\"20\"/>"
                        + "<line x1=\"50\" y1=\"20\" x2=\"90\" y2=\"20\" stroke=\"#000\" stroke-width=\"2\"/></g>",
                200);
        assertThat(image.getWidth()).isEqualTo(200);
        assertThat(image.getHeight()).isEqualTo(80);
        assertThat(grey(image, 19, 40)).isEqualTo(255);
        assertThat(grey(image, 21, 40)).isZero();
        assertThat(grey(image, 59, 40)).isZero();
        assertThat(grey(image, 61, 40)).isEqualTo(255);
        assertThat(grey(image, 140, 40)).isZero();
        assertThat(grey(image, 140, 36)).isEqualTo(255);
    }

    @Test
    void clips_cut() throws IOException {
        BufferedImage image = painted(
                "<g clip-path=\"url(#c)\"><clipPath id=\"c\"><rect x=\"0\" y=\"0\" width=\"50\" height=\"40\"/>"
                        + "</clipPath>"
                        + "<rect x=\"40\" y=\"10\" width=\"20\" height=\"20\"/></g>",
                100);
        assertThat(grey(image, 45, 20)).isZero();
        assertThat(grey(image, 55, 20)).isEqualTo(255);
    }

    /// A text is as wide as it says, whatever its letters take.
    @Test
    void letters_fillTheirRoom() throws IOException {
        BufferedImage image = painted("<text x=\"10\" y=\"30\" textLength=\"80\">HHHH</text>", 100);
        int first = 100;
        int last = 0;
        for (int x = 0; x < 100; x++) {
            for (int y = 0; y < 40; y++) {
                if (grey(image, x, y) < 128) {
                    first = Math.min(first, x);
                    last = Math.max(last, x);
                }
            }
        }
        assertThat(first).isBetween(10, 14);
        assertThat(last).isBetween(84, 89);
        assertThat(grey(image, 50, 38)).isEqualTo(255);
    }

    @Test
    void jpeg_isSmallAndTheSameEachTime() throws IOException {
        byte[] one = DrawingPainter.jpeg(svg("<circle cx=\"50\" cy=\"20\" r=\"15\"/>"), 300);
        assertThat(one).isEqualTo(DrawingPainter.jpeg(svg("<circle cx=\"50\" cy=\"20\" r=\"15\"/>"), 300));
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(one));
        assertThat(grey(image, 150, 60)).isLessThan(10);
        assertThat(grey(image, 20, 20)).isGreaterThan(245);
    }

    @Test
    void nothingFromOutside_isFetched() {
        assertThatThrownBy(() -> painted("<image href=\"https://example.org/a.png\" x=\"0\" y=\"0\"/>", 100))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
