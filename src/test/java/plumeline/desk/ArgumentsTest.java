package plumeline.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

final class ArgumentsTest {
    private static final Usage ASK = new Usage(
            "ask",
            "Answers a question.",
            "[NAME [FILE]]",
            0,
            2,
            List.of(Usage.flag("--json", "As JSON."), Usage.valued("--to", "DIR", "Where to.")));

    @Test
    void read_optionsAnywhere_areSortedFromPlainOnes() throws Refusal {
        Arguments given = Arguments.read(ASK, List.of("--json", "framing", "--to", "here", "-"));
        assertThat(given.plain()).containsExactly("framing", "-");
        assertThat(given.has("--json")).isTrue();
        assertThat(given.findValue("--to")).contains("here");
    }

    @Test
    void read_valueAfterEquals_isTaken() throws Refusal {
        assertThat(Arguments.read(ASK, List.of("--to=a=b")).findValue("--to")).contains("a=b");
    }

    @Test
    void read_afterTwoDashes_allIsPlain() throws Refusal {
        assertThat(Arguments.read(ASK, List.of("--", "--json")).plain()).containsExactly("--json");
    }

    @Test
    void read_misspeltOption_namesTheNearest() {
        checkRefused("ask has no option --jsn; it has --json, --to", "Try --json.", "--jsn");
    }

    @Test
    void read_optionTwice_isRefused() {
        checkRefused("--json is given twice", "Give it once.", "--json", "--json");
    }

    @Test
    void read_optionWithoutItsValue_isRefused() {
        checkRefused("--to has no value", "Give --to DIR.", "--to");
    }

    @Test
    void read_flagWithValue_isRefused() {
        checkRefused("--json takes no value", "Give --json alone.", "--json=yes");
    }

    @Test
    void read_tooMuch_isRefusedWithTheLineToType() {
        checkRefused(
                "ask was given too much: c", "Type: plumeline ask [NAME [FILE]] [--json] [--to DIR]", "a", "b", "c");
    }

    @Test
    void read_tooLittle_isRefused() {
        Usage tidy = new Usage("tidy", "Tidies.", "PLAN", 1, 1, List.of());
        assertThatThrownBy(() -> Arguments.read(tidy, List.of()))
                .isInstanceOf(Refusal.class)
                .hasMessage("tidy needs PLAN");
    }

    private static void checkRefused(String message, String attempt, String... words) {
        assertThatThrownBy(() -> Arguments.read(ASK, List.of(words))).isInstanceOfSatisfying(Refusal.class, e -> {
            assertThat(e).hasMessage(message);
            assertThat(e.attempt()).isEqualTo(attempt);
        });
    }
}
