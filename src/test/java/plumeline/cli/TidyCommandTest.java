package plumeline.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumeline.desk.Console;
import plumeline.desk.Outcome;

final class TidyCommandTest {
    @TempDir
    private Path folder = Path.of("");

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private Outcome run(String input, String... words) {
        return Main.run(List.of(words), new Console(new ByteArrayInputStream(input.getBytes(UTF_8)), out, err));
    }

    @Test
    void tidy_standardInput_printsTheTidyText() {
        assertThat(run("a:   {b:1,c: 2 }\n\n", "tidy", "-")).isEqualTo(Outcome.REFUSED);
        assertThat(run("a:   {b: 1,c: 2 }\n\n", "tidy", "-")).isEqualTo(Outcome.ANSWERED);
        assertThat(out.toString(UTF_8)).isEqualTo("a: {b: 1, c: 2}\n");
        assertThat(err.toString(UTF_8)).endsWith("standard input is tidy now\n");
    }

    @Test
    void tidy_file_isRewrittenInItsPlace() throws Exception {
        Path file = Files.writeString(folder.resolve("plan.yaml"), "a:\r\n    b:   [ 1 ]\r\n");
        assertThat(run("", "tidy", file.toString())).isEqualTo(Outcome.ANSWERED);
        assertThat(file).hasContent("a:\r\n  b: [1]\r\n");
        assertThat(Files.readString(file)).isEqualTo("a:\r\n  b: [1]\r\n");
        assertThat(run("", "tidy", file.toString())).isEqualTo(Outcome.ANSWERED);
        assertThat(err.toString(UTF_8)).isEqualTo(file + " is tidy now\n" + file + " has no spacing to change\n");
        assertThat(out.size()).isZero();
        try (var beside = Files.list(folder)) {
            assertThat(beside).hasSize(1);
        }
    }

    @Test
    void tidy_textWithProblems_isLeftAlone() throws Exception {
        Path file = Files.writeString(folder.resolve("plan.yaml"), "a:    true\n");
        assertThat(run("", "tidy", file.toString())).isEqualTo(Outcome.REFUSED);
        assertThat(Files.readString(file)).isEqualTo("a:    true\n");
        assertThat(err.toString(UTF_8))
                .isEqualTo(file + ":1:7 a is true; must be yes or no where that is meant\n"
                        + "  Write yes, or put a text in quotes.   (P-TEXT-09, docs/problems.md)\n"
                        + "1 problem; the text was left as it is\n");
    }

    @Test
    void schema_isTheGrammarOfAPlan() {
        assertThat(run("", "schema")).isEqualTo(Outcome.ANSWERED);
        assertThat(out.toString(UTF_8)).isEqualTo(plumeline.text.JsonSchema.write(plumeline.plan.Plans.grammar()));
        assertThat(err.size()).isZero();
    }
}
