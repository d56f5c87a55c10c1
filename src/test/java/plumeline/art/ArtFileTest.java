package plumeline.art;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumeline.scenery.Art;

/// Prints as files.
final class ArtFileTest {
    private static final String SVG = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 40 20\">"
            + "<rect width=\"20\" height=\"20\" fill=\"#ff0000\"/>%s</svg>";

    private static byte[] written(String kind, int type) throws IOException {
        var image = new BufferedImage(4, 2, type);
        for (int i = 0; i < 8; i++) {
            image.setRGB(i % 4, i / 4, i % 4 < 2 ? 0xff808080 : 0xff0000ff);
        }
        var out = new ByteArrayOutputStream();
        assertThat(ImageIO.write(image, kind, out)).isTrue();
        return out.toByteArray();
    }

    private static Art read(byte[] bytes) {
        assertThat(ArtFile.read(bytes)).isInstanceOf(ArtFile.Read.class);
        return ((ArtFile.Read) ArtFile.read(bytes)).art();
    }

    private static double[] at(Art art, double across, double down) {
        double[] texel = new double[4];
        art.at(across, down, texel);
        return texel;
    }

    @Test
    void png_isLinear() throws IOException {
        Art art = read(written("png", BufferedImage.TYPE_INT_ARGB));
        assertThat(art.width()).isEqualTo(4);
        assertThat(at(art, 0.1, 0.5)[0]).isEqualTo(0.2158605, within(1e-6));
        assertThat(at(art, 0.9, 0.5)).containsExactly(new double[] {0, 0, 1, 1}, within(1e-6));
    }

    @Test
    void jpeg_isRead() throws IOException {
        assertThat(at(read(written("jpg", BufferedImage.TYPE_INT_RGB)), 0.05, 0.5)[1])
                .isEqualTo(0.216, within(0.1));
    }

    @Test
    void svg_isDrawnAndItsGroundIsClear() {
        Art art = read(String.format(SVG, "").getBytes(UTF_8));
        assertThat(art.width()).isEqualTo(2 * art.height());
        assertThat(at(art, 0.25, 0.5)).containsExactly(new double[] {1, 0, 0, 1}, within(1e-6));
        assertThat(at(art, 0.75, 0.5)[3]).isZero();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<image href=\"logo.png\" width=\"9\" height=\"9\"/>",
                "<image xlink:href='http://example.invalid/a.png'/>",
                "<rect fill=\"url(file:///etc/x.svg#a)\"/>",
                "<style>@import 'other.css';</style>",
                "<use href=\"other.svg#a\"/>",
            })
    void svgThatPointsElsewhere_isRefused(String inside) {
        ArtFile file = ArtFile.read(String.format(SVG, inside).getBytes(UTF_8));
        assertThat(file)
                .isInstanceOfSatisfying(
                        ArtFile.Refused.class,
                        refused -> assertThat(refused.found()).contains("outside itself"));
    }

    @Test
    void svgThatPointsIntoItself_isRead() {
        String inside = "<defs><linearGradient id=\"a\"><stop stop-color=\"blue\"/></linearGradient></defs>"
                + "<rect x=\"20\" width=\"20\" height=\"20\" fill=\"url(#a)\"/>";
        assertThat(at(read(String.format(SVG, inside).getBytes(UTF_8)), 0.75, 0.5)[2])
                .isEqualTo(1, within(1e-6));
    }

    @Test
    void damage_isRefusedInWords() throws IOException {
        byte[] png = written("png", BufferedImage.TYPE_INT_ARGB);
        assertThat(ArtFile.read(Arrays.copyOf(png, 40))).isInstanceOf(ArtFile.Refused.class);
        assertThat(ArtFile.read("hello".getBytes(UTF_8)))
                .isEqualTo(new ArtFile.Refused("neither a PNG, a JPEG nor an SVG", "Save it as a PNG."));
        assertThat(ArtFile.read("<svg xmlns=".getBytes(UTF_8))).isInstanceOf(ArtFile.Refused.class);
        assertThat(ArtFile.read("<!DOCTYPE svg [<!ENTITY a \"b\">]><svg/>".getBytes(UTF_8)))
                .isInstanceOf(ArtFile.Refused.class);
        assertThat(ArtFile.read(new byte[0])).isInstanceOf(ArtFile.Refused.class);
    }
}
