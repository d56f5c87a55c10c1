package plumeline.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

final class EditTest {
    private static Edit.Replacement at(String path, String text, String with) {
        return new Edit.Replacement(Texts.root(text).at(path).orElseThrow().place(), with);
    }

    private static Edit.Replacement span(int start, int end, String with) {
        return new Edit.Replacement(new Place("p", 1, 1, start, end), with);
    }

    @Test
    void spans_areReplacedInAnyOrderAndNothingElseIs() {
        String text = "\uFEFFa: [free,  free]   # \uD83C\uDF39\r\nb:  {c: free}\r\n";
        String edited = Edit.replace(
                text, List.of(at("b.c", text, "3 mm solved"), at("a[1]", text, "1 mm"), at("a[2]", text, "22 mm")));
        assertThat(edited).isEqualTo("\uFEFFa: [1 mm,  22 mm]   # \uD83C\uDF39\r\nb:  {c: 3 mm solved}\r\n");
    }

    @Test
    void nothingToReplace_givesTheTextItself() {
        assertThat(Edit.replace("a: 1\n", List.of())).isEqualTo("a: 1\n");
    }

    @Test
    void emptySpans_putIn() {
        assertThat(Edit.replace("ab", List.of(span(0, 0, "x"), span(1, 1, "y"), span(2, 2, "z"))))
                .isEqualTo("xaybz");
    }

    @Test
    void spansThatOverlapOrLeave_areABug() {
        assertThatThrownBy(() -> Edit.replace("abcd", List.of(span(0, 2, "x"), span(1, 3, "y"))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("overlaps another span or leaves the text");
        assertThatThrownBy(() -> Edit.replace("abcd", List.of(span(3, 5, "x"))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void randomSpans_leaveWhatIsBetween() {
        long seed = 5;
        var random = new Random(seed);
        String text = Texts.example();
        for (int i = 0; i < 200; i++) {
            int start = random.nextInt(text.length());
            int end = random.nextInt(start, text.length());
            String edited = Edit.replace(text, List.of(span(start, end, "\u0001")));
            assertThat(edited).as("seed " + seed + " round " + i).startsWith(text.substring(0, start));
            assertThat(edited).as("seed " + seed + " round " + i).endsWith("\u0001" + text.substring(end));
        }
    }
}
