package plumeline.sketch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

final class LetteringOutsideTest {
    @Test
    @Outside(
            source = "DejaVu Sans Condensed 2.37, the font file itself, read by fontbox",
            place = "hmtx table",
            kind = "measurement")
    void widths_areTheFontsRoundedUp() throws IOException {
        int compared = 0;
        try (var in = Lettering.class.getResourceAsStream("/plumeline/press/DejaVuSansCondensed.ttf");
                var font = new TTFParser().parse(new RandomAccessReadBuffer(in))) {
            var glyphs = font.getUnicodeCmapLookup();
            String known = " !\"#$%&'()*+,-./0123456789:;<=>?@ABCDEFGHIJKLMNOPQRSTUVWXYZ"
                    + "[\\]^_`abcdefghijklmnopqrstuvwxyz{|}~−±×·°";
            for (int c : known.codePoints().toArray()) {
                double width = font.getAdvanceWidth(glyphs.getGlyphId(c)) * 1000.0 / font.getUnitsPerEm();
                assertThat((double) Lettering.advance(c)).as("U+%04X", c).isBetween(width, width + 1);
                compared++;
            }
        }
        assertThat(compared).isEqualTo(100);
    }

    @Test
    @Outside(source = "common practice", kind = "definition: a point is 1/72 in, a CSS pixel 1/96 in")
    void letters_areFourteenPointsOrMore() {
        assertThat(Lettering.SIZE * 72 / 96).isGreaterThanOrEqualTo(14);
    }
}
