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
}
