package plumeline.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumeline.desk.Command;
import plumeline.desk.Console;
import plumeline.desk.Outcome;

final class MainTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    void run_nothing_listsTheCommands() {
        assertThat(run()).isEqualTo(Outcome.ANSWERED);
        for (Command command : Commands.listAll()) {
            assertThat(out.toString(UTF_8)).contains("  " + command.usage().toLine() + "\n");
        }
        assertThat(err.size()).isZero();
    }

    @Test
    void run_unknownCommand_namesTheNearestAndIsRefused() {
        assertThat(run("hlep")).isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8))
                .startsWith("plumeline: there is no command hlep; there are ")
                .endsWith("\n  Try plumeline help.\n");
        assertThat(out.size()).isZero();
    }

    @Test
    void run_helpOption_tellsWhatEachCommandTakes() {
        for (Command command : Commands.listAll()) {
            out.reset();
            assertThat(run(command.usage().name(), "--help")).isEqualTo(Outcome.ANSWERED);
            assertThat(out.toString(UTF_8))
                    .startsWith("plumeline " + command.usage().toLine() + "\n");
        }
    }

    @Test
    void run_version_saysIt() {
        assertThat(run("--version")).isEqualTo(Outcome.ANSWERED);
        assertThat(out.toString(UTF_8)).matches("plumeline \\S+\n");
    }

    @Test
    void run_readerGone_isNoFailure() {
        assertThat(runInto("Broken pipe")).isEqualTo(Outcome.ANSWERED);
        assertThat(err.size()).isZero();
    }

    @Test
    void run_diskFull_failsInOnePlainLine() {
        assertThat(runInto("No space left on device")).isEqualTo(Outcome.FAILED);
        assertThat(err.toString(UTF_8))
                .isEqualTo("plumeline: standard output cannot be written: No space left on device\n");
    }

    @Test
    void commands_haveOneNameEach() {
        var names = new HashSet<String>();
        for (Command command : Commands.listAll()) {
            assertThat(names.add(command.usage().name()))
                    .as(command.usage().name())
                    .isTrue();
            assertThat(command.rehearsals())
                    .as("rehearsals of %s", command.usage().name())
                    .isNotEmpty();
        }
    }

    @Test
    void rehearsals_areAllAnswered() {
        for (Command command : Commands.listAll()) {
            for (Command.Rehearsal rehearsal : command.rehearsals()) {
                if (rehearsal.arguments().stream().anyMatch(word -> word.startsWith("{"))) {
                    continue;
                }
                var words = new java.util.ArrayList<>(List.of(command.usage().name()));
                words.addAll(rehearsal.arguments());
                var in = new ByteArrayInputStream(rehearsal.input().getBytes(UTF_8));
                assertThat(Main.run(words, new Console(in, out, err)))
                        .as("%s: %s", words, err.toString(UTF_8))
                        .isEqualTo(Outcome.ANSWERED);
            }
        }
    }

    @Test
    void main_endsWithTheStatusAndAllThatWasPrinted(@TempDir Path folder) throws Exception {
        Files.createDirectory(folder.resolve("tmp"));
        assertThat(process(folder, "schema")).isZero();
        assertThat(folder.resolve("out")).hasContent(plumeline.text.JsonSchema.write(plumeline.plan.Plans.grammar()));
        assertThat(process(folder, "nothing")).isEqualTo(2);
        assertThat(folder.resolve("err")).content().startsWith("plumeline: there is no command nothing; there are ");
    }

    /// The library that sets pages has the JDK write the lettering to temporary files.
    @Test
    void main_papers_leaveNothingInTheTemporaryFolder(@TempDir Path folder) throws Exception {
        Path plan = Files.writeString(folder.resolve("plan.yaml"), KeepCommandTest.PLAN);
        Path temporary = Files.createDirectory(folder.resolve("tmp"));
        assertThat(process(folder, "papers", plan.toString())).isZero();
        assertThat(folder.resolve("papers/papers.pdf")).isNotEmptyFile();
        try (var left = Files.list(temporary)) {
            assertThat(left).isEmpty();
        }
    }

    private static int process(Path folder, String... words) throws Exception {
        var command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.io.tmpdir=" + folder.resolve("tmp"),
                "-cp",
                System.getProperty("java.class.path"),
                "plumeline.cli.Main"));
        command.addAll(List.of(words));
        Process process = new ProcessBuilder(command)
                .redirectOutput(folder.resolve("out").toFile())
                .redirectError(folder.resolve("err").toFile())
                .start();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return process.exitValue();
    }

    private Outcome run(String... words) {
        return Main.run(List.of(words), new Console(new ByteArrayInputStream(new byte[0]), out, err));
    }

    private Outcome runInto(String failure) {
        OutputStream broken = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException(failure);
            }
        };
        return Main.run(List.of("help"), new Console(new ByteArrayInputStream(new byte[0]), broken, err));
    }
}
