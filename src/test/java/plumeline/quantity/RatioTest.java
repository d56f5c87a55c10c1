package plumeline.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class RatioTest {
    private static void check(String text, int across, int down) {
        assertThat(Ratio.read(text)).as(text).contains(new Ratio(across, down));
    }

    @Test
    void ratios_areRead() {
        check("16:9", 16, 9);
        check("9:16", 9, 16);
        check("1:1", 1, 1);
        check("2.39:1", 239, 100);
        check("1.85:1", 37, 20);
        check("1920:1080", 1920, 1080);
    }

    @Test
    void otherTexts_areNone() {
        for (String text : new String[] {
            "",
            ":",
            "16",
            "16:",
            ":9",
            "0:1",
            "1:0",
            "-1:1",
            "1:1:1",
            "1.2345:1",
            "1 : 1",
            "1.:1",
            "999999:1",
            "a:b",
            "16/9"
        }) {
            assertThat(Ratio.read(text)).as(text).isEmpty();
        }
    }

    @Test
    void value_isWidthOverHeight() {
        assertThat(new Ratio(16, 9).value()).isEqualTo(16 / 9.0);
        assertThat(new Ratio(16, 9).toText()).isEqualTo("16:9");
    }
}
