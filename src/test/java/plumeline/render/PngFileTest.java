package plumeline.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/// PNG files, as the JDK reads them.
final class PngFileTest {
    @Test
    void picture_isReadBackAsItIs() throws IOException {
        int[] packed = new int[37 * 23];
        for (int i = 0; i < packed.length; i++) {
            packed[i] = i * 2_654_435 & 0xffffff;
        }
        byte[] png = PngFile.of(new Pixels(37, 23, packed));
        var read = ImageIO.read(new ByteArrayInputStream(png));
        assertThat(read.getWidth()).isEqualTo(37);
        for (int i = 0; i < packed.length; i++) {
            assertThat(read.getRGB(i % 37, i / 37) & 0xffffff).isEqualTo(packed[i]);
        }
        assertThat(new String(png, StandardCharsets.ISO_8859_1)).contains("sRGB");
    }
}
