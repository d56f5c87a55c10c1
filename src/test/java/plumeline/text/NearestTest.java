package plumeline.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

final class NearestTest {
    private static final List<String> KNOWN =
            List.of("focal_length", "f_number", "fills", "height", "width", "at", "aim");

    private static void check(String word, String near) {
        assertThat(Nearest.find(word, KNOWN)).as(word).contains(near);
    }

    @Test
    void oneSlip_isForgiven() {
        check("heigth", "height");
        check("hight", "height");
        check("heigght", "height");
        check("hwight", "height");
        check("ta", "at");
    }

    @Test
    void caseAndDashes_countForNothing() {
        check("Focal-Length", "focal_length");
        check("F NUMBER", "f_number");
    }

    @Test
    void beginnings_areEnough() {
        check("foc", "focal_length");
        check("widths_of_all", "width");
    }

    @Test
    void tooFar_findsNothing() {
        for (String word : List.of("", "colour", "xy", "hgt", "x".repeat(65), "zzzzzzzzzzzz")) {
            assertThat(Nearest.find(word, KNOWN)).as(word).isEmpty();
        }
        assertThat(Nearest.find("height", List.of())).isEmpty();
    }

    @Test
    void aThirdOfTheLetters_isTheMost() {
        assertThat(Nearest.find("abcxyz", List.of("abcdef"))).isEmpty();
        assertThat(Nearest.find("abcdxy", List.of("abcdef"))).contains("abcdef");
    }

    @Test
    void ties_goToTheFirst() {
        assertThat(Nearest.find("bat", List.of("cat", "hat"))).contains("cat");
        assertThat(Nearest.find("bat", List.of("hat", "cat"))).contains("hat");
    }

    /// A thing's name alone finds its places; a part too few or too many does.
    @Test
    void list_isByParts_nearestFirst() {
        List<String> known = List.of("first.top.left", "first.base.left", "box.top.front_left", "box.base.front_left");
        assertThat(Nearest.list("frist", known, 2)).containsExactly("first.top.left", "first.base.left");
        assertThat(Nearest.list("box.top.left", known, 1)).containsExactly("first.top.left");
        assertThat(Nearest.list("box.top", known, 1)).containsExactly("box.top.front_left");
        assertThat(Nearest.list("bx.base.front-left", known, 1)).containsExactly("box.base.front_left");
        assertThat(Nearest.list("x".repeat(9000), known, 9)).hasSize(4);
        assertThat(Nearest.list("first", List.of(), 3)).isEmpty();
    }
}
