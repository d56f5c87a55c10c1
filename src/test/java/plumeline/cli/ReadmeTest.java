package plumeline.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.desk.Console;

/// The README's tour shows what the program says.
final class ReadmeTest {
    private static final String EXAMPLE = "examples/fernhollow.yaml";

    private static String said(String input, String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Main.run(
                List.of(words),
                new Console(new ByteArrayInputStream(input.getBytes(UTF_8)), out, new ByteArrayOutputStream()));
        return out.toString(UTF_8);
    }

    /// What the README shows below a command, to the end of its block.
    private static String shown(String command) throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        int from = readme.indexOf(command + "\n");
        assertThat(from).as(command).isNotNegative();
        int start = from + command.length() + 1;
        return readme.substring(start, readme.indexOf("```", start));
    }

    @Test
    void questions_areAnsweredAsShown() throws IOException {
        String framing = said("", "ask", "framing", "--example");
        assertThat(said(framing, "ask", "framing", "-")).isEqualTo(shown("$ ./plumeline ask framing can.yaml"));
        String reveal = said("", "ask", "reveal", "--example");
        assertThat(said(reveal, "ask", "reveal", "-"))
                .isEqualTo(shown("$ ./plumeline ask reveal --example | ./plumeline ask reveal -"));
    }

    @Test
    void example_isSolvedAsShown() throws IOException {
        assertThat(said("", "solve", EXAMPLE, "--shot", "reveal"))
                .isEqualTo(shown("$ ./plumeline solve " + EXAMPLE + " --shot reveal"));
        assertThat(said("", "solve", EXAMPLE, "--shot", "plume")).contains(shown("In the second shot:\n\n```"));
    }
}
