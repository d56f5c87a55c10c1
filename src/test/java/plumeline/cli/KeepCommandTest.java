package plumeline.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumeline.desk.Console;
import plumeline.desk.Outcome;

final class KeepCommandTest {
    /// One free mark that is found, one lamp that nothing bears on, a want that fails whatever is set, one that isn't
    /// computed.
    static final String PLAN = """
        plumeline: 1
        film: {rate: 24 fps, papers: mm}
        things: {tin: {diameter: 76 mm, height: 96 mm}}   # free
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
          lenses: {fifty: {focal_length: 50 mm}}
          lights: {strip: {panel: [300 mm, 1200 mm]}}
        shots:
          one:
            camera:
              body: main
              lens: fifty
              at: [0 mm, free between -2000 mm and -300 mm, 48 mm]   # where free
              aim: hero
            place: {hero: {thing: tin, at: [0 mm, 0 mm]}}
            lights: {key: {light: strip, at: free}}
            wants:
              - {fills: hero, height: 60 %}
        """;

    private static final String FAILING = PLAN + """
              - {fills: hero, height: 20 %}
              - {no_shadow: hero}
        """;

    @TempDir
    private Path folder = Path.of("");

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private Outcome run(String input, String... words) {
        return Main.run(List.of(words), new Console(new ByteArrayInputStream(input.getBytes(UTF_8)), out, err));
    }

    private String keep(String plan) {
        assertThat(run(plan, "keep", "-")).as(err.toString(UTF_8)).isEqualTo(Outcome.ANSWERED);
        return out.toString(UTF_8);
    }

    @Test
    void keep_touchesOnlyTheMarksThatWereFound() {
        String kept = keep(PLAN);
        assertThat(kept).matches("(?s).*at: \\[0 mm, -[0-9]+ mm solved, 48 mm]   # where free.*");
        assertThat(kept.replaceFirst("-[0-9]+ mm solved", "free between -2000 mm and -300 mm"))
                .isEqualTo(PLAN);
    }

    @Test
    void keep_saysWhichMarksStayFreeAndWhy() {
        keep(PLAN);
        assertThat(err.toString(UTF_8)).isEqualTo("""
            1 mark kept
            one: key.x, key.y, key.z stay free: nothing that is computed bears on them
            """);
    }

    @Test
    void keep_inInches_isWhatATapeReads() {
        assertThat(keep(PLAN.replace("papers: mm", "papers: in")))
                .containsPattern("at: \\[0 mm, -[0-9]+( [0-9]+/(2|4|8|16))? in solved, 48 mm]");
    }

    @Test
    void keep_failingShot_warnsPlainly() {
        keep(FAILING);
        assertThat(err.toString(UTF_8))
                .containsPattern("(?m)^kept though one\\.[12] fails in one: fills hero height [26]0 %\\. .+$")
                .containsPattern("(?m)^kept without knowing one\\.3: solve says what is missing$");
    }

    @Test
    void keep_nothingFree_saysSo() {
        String kept = keep(PLAN.replace("at: free", "at: [0 mm, 0 mm, 1 m]"));
        out.reset();
        err.reset();
        assertThat(keep(kept)).isEqualTo(kept);
        assertThat(err.toString(UTF_8)).startsWith("no mark kept: there is none that is free and was found\n");
    }

    @Test
    void keep_file_isRewrittenInOneStepWithItsLineEnds() throws Exception {
        String plan = PLAN.replace("\n", "\r\n");
        Path file = Files.writeString(folder.resolve("plan.yaml"), plan);
        Object before = Files.getAttribute(file, "unix:ino");
        assertThat(run("", "keep", file.toString())).isEqualTo(Outcome.ANSWERED);
        assertThat(Files.readString(file).replaceFirst("-[0-9]+ mm solved", "free between -2000 mm and -300 mm"))
                .isEqualTo(plan);
        // A file moved over the old one is another file: nobody ever sees half of it.
        assertThat(Files.getAttribute(file, "unix:ino")).isNotEqualTo(before);
        try (var beside = Files.list(folder)) {
            assertThat(beside).containsExactly(file);
        }
        assertThat(out.size()).isZero();
    }

    @Test
    void keep_readOnlyFile_isLeftAsItIs() throws Exception {
        Path file = Files.writeString(folder.resolve("plan.yaml"), PLAN);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
        for (String command : List.of("keep", "tidy")) {
            err.reset();
            assertThat(run("", command, file.toString())).isEqualTo(Outcome.FAILED);
            assertThat(err.toString(UTF_8)).isEqualTo("plumeline: " + file + " is read-only; left as it is\n");
            assertThat(Files.readString(file)).isEqualTo(PLAN);
        }
    }

    @Test
    void keep_deviceOrMissingFile_isRefused() {
        assertThat(run("", "keep", "/dev/null")).isEqualTo(Outcome.REFUSED);
        assertThat(run("", "keep", folder.resolve("none").toString())).isEqualTo(Outcome.REFUSED);
        assertThat(run("", "keep", folder.toString())).isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8))
                .isEqualTo("plumeline: /dev/null is no file that can be written anew\n"
                        + "  Name a file, or - to have the plan printed.\n"
                        + "plumeline: " + folder + "/none is not there\n"
                        + "  See how its name is spelled and which folder you are in.\n"
                        + "plumeline: " + folder + " is a folder; a file is wanted\n"
                        + "  Name a file in it.\n");
    }
}
