package plumeline.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/// What isn't parted at a line's end.
final class FiguresTest {
    private static List<String> in(String text) {
        return Figures.in(text).stream()
                .map(figure -> text.substring(figure.from(), figure.to()))
                .toList();
    }

    @Test
    void numbersWithUnits_signsAndBrackets_areWhole() {
        assertThat(in("from −12 mm (3/8 in) to 2 5/8 in, at 1/48 s"))
                .containsExactly("−12 mm", "(3/8 in", "2 5/8 in", "1/48 s");
    }

    @Test
    void timecodes_areWhole_alsoThoseThatDrop() {
        assertThat(in("from 01:00:00:00 through 00:59:58;00, (10:00:01:12)"))
                .containsExactly("01:00:00:00", "00:59:58;00", "(10:00:01:12");
    }
}
