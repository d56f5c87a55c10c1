package plumeline.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.ask.Questions;
import plumeline.desk.Console;
import plumeline.desk.Outcome;

/// `ask NAME --table`.
final class AskTableTest {
    private static final String RAMP = Questions.find("ramp").orElseThrow().example();

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private Outcome run(String input, String... words) {
        return Main.run(List.of(words), new Console(new ByteArrayInputStream(input.getBytes(UTF_8)), out, err));
    }

    private void checkRefused(String said, String... words) {
        assertThat(run(RAMP, words)).isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8)).isEqualTo(said);
        assertThat(out.size()).isZero();
    }

    @Test
    void ramp_listsALineAFrame() {
        assertThat(run(RAMP, "ask", "ramp", "-", "--table")).isEqualTo(Outcome.ANSWERED);
        assertThat(out.toString(UTF_8).lines()).hasSize(1 + 96);
        assertThat(err.size()).isZero();
    }

    @Test
    void aWrongRamp_isRefusedAsEver() {
        assertThat(run(RAMP + "eas: smooth\n", "ask", "ramp", "-", "--table")).isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8)).contains("eas is not a known key");
    }

    @Test
    void otherQuestions_haveNone() {
        checkRefused(
                "plumeline: framing has no rows to list; --table is for ramp\n  Leave --table out.\n",
                "ask",
                "framing",
                "-",
                "--table");
    }

    @Test
    void itTakesNoJson() {
        checkRefused(
                "plumeline: --table is plain text and takes no --json\n  Leave one of them out.\n",
                "ask",
                "ramp",
                "-",
                "--table",
                "--json");
    }

    @Test
    void itNeedsAQuestion_andNoExample() {
        checkRefused(
                "plumeline: --table needs the name of a question\n  Type: plumeline ask NAME --table\n",
                "ask",
                "--table");
        err.reset();
        checkRefused(
                "plumeline: --example prints the example and takes nothing else\n  Leave the rest out.\n",
                "ask",
                "ramp",
                "--example",
                "--table");
    }
}
