package plumeline.ask.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumeline.ask.Asking.answer;
import static plumeline.ask.Asking.number;
import static plumeline.ask.Asking.problems;
import static plumeline.ask.Asking.spread;

import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Item;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.tidy.Outside;

/// The question `clear-water` in text.
final class ClearWaterTest {
    private static String ask(String tank, String ink, String strength, String path, String more) {
        return "tank_volume: " + tank + "\nink_per_take: " + ink + "\n" + strength + "\nsight_path: " + path + "\n"
                + more;
    }

    @Test
    @Outside(
            source = "the project's check values on ink: E 1e4 /m, 10 ml in 60 l over 0.15 m is 0.2500",
            place = "absorbance; V_max 6.5 ml of OD 0.15 in 65 l",
            kind = "worked example",
            printedDigits = 4)
    void checkRows_areAnswered() {
        Answer answer = answer("clear-water", ask("60 l", "10 ml", "strength: 100 /cm", "150 mm", ""));
        assertThat(number(answer, "clear_after_1")).isCloseTo(100 * Math.pow(10, -0.25), within(1e-9));
        assertThat(answer.answers().stream().map(Item::name))
                .containsExactly("clear_after_1", "takes_before_change", "change_fraction");
        // OD 0.15 is 70.79 %: 6.5 ml, so that of 6.5 ml a take two begin clear enough, of 6.6 ml one.
        String most = "least_clear: 70.79 %\n";
        assertThat(number(
                        answer("clear-water", ask("65 l", "6.5 ml", "strength: 10000 /m", "15 cm", most)),
                        "takes_before_change"))
                .isEqualTo(2);
        assertThat(number(
                        answer("clear-water", ask("65 l", "6.6 ml", "strength: 10000 /m", "15 cm", most)),
                        "takes_before_change"))
                .isEqualTo(1);
    }

    @Test
    @Outside(
            source = "blue food colour E133, 1630 a per cent and cm (the project's check values Y03, Y11)",
            place = "1 ml of 2 % in 96 l over 300 mm leaves 9.6 %",
            kind = "worked example",
            printedDigits = 2)
    void foodColour_isStrong() {
        Answer answer = answer("clear-water", ask("96 l", "1 ml", "strength: 3260 /cm", "300 mm", ""));
        assertThat(number(answer, "clear_after_1")).isCloseTo(9.6, within(0.1));
    }

    @Test
    void changes_areAsTheReadingSays() {
        // a = 0.01 a take, 95 % is 0.0222764.
        Answer answer = answer("clear-water", ask("100 l", "10 ml", "strength: 10 /cm", "100 mm", ""));
        double allowed = -Math.log10(0.95);
        assertThat(number(answer, "takes_before_change")).isEqualTo(3);
        assertThat(number(answer, "change_fraction")).isCloseTo(100 * 0.01 / (0.01 + allowed), within(1e-9));
        assertThat(answer.assumed()).anyMatch(each -> each.name().equals("least_clear"));
    }

    @Test
    void unknownStrength_isUnknown_andSaysHowToMeasure() {
        Answer answer = answer("clear-water", "tank_volume: 60 l\nink_per_take: 5 ml\nsight_path: 150 mm\n");
        assertThat(answer.verdict()).isEqualTo(Verdict.UNKNOWN);
        for (Item item : answer.answers()) {
            assertThat(item.value()).isEqualTo(new Value.Word("unknown"));
        }
        assertThat(String.join(" ", answer.notes().attempts())).contains("jar").contains("phone");
    }

    @Test
    void jar_givesTheStrength() {
        // 188 of 255 is half the light of white by the sRGB curve: lg 2 over 0.1 m and 1 in 1001 is 3013/m, 30.1 /cm.
        Answer jar = answer(
                "clear-water",
                ask(
                        "60 l",
                        "5 ml",
                        "jar: {ink: 1 ml, water: 1 l, path: 100 mm, clean: 255, inked: 187.5 ± 3}",
                        "150 mm",
                        ""));
        Answer known = answer("clear-water", ask("60 l", "5 ml", "strength: 30.1 /cm", "150 mm", ""));
        assertThat(number(jar, "clear_after_1")).isCloseTo(number(known, "clear_after_1"), within(0.05));
        assertThat(spread(jar, "clear_after_1").low()).isLessThan(number(jar, "clear_after_1"));
    }

    /// 100 /cm over 150 mm, 0.5 ml a take in 60 l: a = 0.0125, 80 % is 0.0969, so 8 takes beginning after the 0th to
    /// the 7th, 0.0875. With 90 to 110 /cm (80 % of ± 15.3 /cm) it is 9 and 8; counted, not by a slope.
    @Test
    void takesAreCounted_intervalIsOfWholeNumbers() {
        Answer answer = answer(
                "clear-water", ask("60 l", "0.5 ml", "strength: 100 /cm ± 15.3 /cm", "150 mm", "least_clear: 80 %\n"));
        assertThat(number(answer, "takes_before_change")).isEqualTo(8);
        assertThat(spread(answer, "takes_before_change").low()).isEqualTo(8);
        assertThat(spread(answer, "takes_before_change").high()).isEqualTo(9);
    }

    /// A picture shows nothing over 255: the ink may be stronger than two such jars say.
    @Test
    void whiteCleanJar_isWarnedOf() {
        String jar = "jar: {ink: 1 ml, water: 1 l, path: 100 mm, clean: %s, inked: 150}";
        Answer white = answer("clear-water", ask("60 l", "5 ml", jar.formatted("255"), "150 mm", ""));
        assertThat(String.join(" ", white.notes().because())).contains("clean jar is white", "may be stronger");
        assertThat(white.notes().attempts().getFirst()).contains("again, darker");
        Answer grey = answer("clear-water", ask("60 l", "5 ml", jar.formatted("250"), "150 mm", ""));
        assertThat(String.join(" ", grey.notes().because())).doesNotContain("white");
        assertThat(String.join(" ", grey.notes().attempts())).doesNotContain("darker");
    }

    @Test
    void whatHelpsNothing_isNotTried() {
        Answer black = answer("clear-water", ask("1 l", "1 l", "strength: 1000 /cm", "1 m", ""));
        assertThat(black.notes().attempts()).isEmpty();
        Answer clear = answer("clear-water", ask("1000 l", "1 ml", "strength: 1 /cm", "100 mm", ""));
        assertThat(clear.notes().attempts()).isEmpty();
        Answer usual = answer("clear-water", ask("60 l", "10 ml", "strength: 100 /cm", "150 mm", ""));
        assertThat(usual.notes().attempts()).hasSize(2);
    }

    @Test
    void wrongInputs_areRefused() {
        String jar = "jar: {ink: 1 ml, water: 1 l, path: 100 mm, clean: 200, inked: %s}";
        assertThat(problems("clear-water", ask("60 l", "5 ml", jar.formatted("199"), "150 mm", "")))
                .singleElement()
                .asString()
                .contains("jar.inked is 199, 99 % of the clean jar's light; must be from 2 % to 95 % of the light")
                .contains("Add ink")
                .contains("P-ASK-75");
        assertThat(problems("clear-water", ask("60 l", "5 ml", jar.formatted("5"), "150 mm", "")))
                .singleElement()
                .asString()
                .contains("Thin it");
        assertThat(problems("clear-water", ask("60 l", "5 ml", "strength: 30 mm", "150 mm", "")))
                .isNotEmpty();
        assertThat(problems("clear-water", ask("0 l", "5 ml", "strength: 30 /cm", "150 mm", "")))
                .isNotEmpty();
        assertThat(problems(
                        "clear-water", ask("60 l", "5 ml", "strength: 30 /cm\n" + jar.formatted("100"), "150 mm", "")))
                .isNotEmpty();
    }
}
