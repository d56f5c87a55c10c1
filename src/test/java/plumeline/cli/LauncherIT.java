package plumeline.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import plumeline.assemble.ReadCounter;
import plumeline.clip.FilmProbe;

/// Runs `./plumeline` itself on a copy of the tree, in a folder with blanks in its name. Only the first two runs build.
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
final class LauncherIT {
    private static final Path ROOT = Path.of(System.getProperty("basedir", "")).toAbsolutePath();

    @TempDir
    private static Path folder = Path.of("");

    private static Path tree = Path.of("");

    private record Run(int status, String out, String err) {}

    @BeforeAll
    static void copyTree() throws IOException {
        tree = folder.resolve("a tree");
        for (String part : List.of("plumeline", "pom.xml", ".mvn", "scripts", "src/main", "examples")) {
            if (Files.exists(ROOT.resolve(part))) {
                copy(ROOT.resolve(part), tree.resolve(part));
            }
        }
    }

    @Test
    @Order(1)
    void firstRuns_twoAtOnce_buildOnceAndBothAnswer() throws Exception {
        Process one = start(tree, List.of(tree.resolve("plumeline").toString(), "--version"));
        Process other = start(tree, List.of(tree.resolve("plumeline").toString(), "--version"));
        Run first = finish(one);
        Run second = finish(other);
        assertThat(first.status()).as(first.err()).isZero();
        assertThat(second.status()).as(second.err()).isZero();
        assertThat(first.out()).startsWith("plumeline ").isEqualTo(second.out());
        assertThat(first.err() + second.err()).containsOnlyOnce("ready after");
    }

    @Test
    @Order(2)
    void changedSource_isBuiltAgain() throws Exception {
        Path source = tree.resolve("src/main/java/plumeline/desk/Outcome.java");
        Files.writeString(source, Files.readString(source) + "\n// changed\n");
        assertThat(run("--version").err()).contains("ready after");
    }

    @Test
    @Order(3)
    void upToDate_saysNothingOfABuild() throws Exception {
        Run run = run("help");
        assertThat(run.status()).isZero();
        assertThat(run.err()).isEmpty();
    }

    @Test
    @Order(3)
    void startUpCaches_wereMade() throws Exception {
        Path app = tree.resolve("target")
                .resolve(Files.readAllLines(tree.resolve("target/ready")).getFirst());
        assertThat(app.resolve("plumeline.aot")).isNotEmptyFile();
        assertThat(app.resolve("papers.aot")).isNotEmptyFile();
    }

    @Test
    @Order(3)
    void touchedSource_isNotBuiltAgain() throws Exception {
        Path source = tree.resolve("src/main/java/plumeline/desk/Outcome.java");
        Files.setLastModifiedTime(source, java.nio.file.attribute.FileTime.from(java.time.Instant.now()));
        assertThat(run("--version").err()).isEmpty();
    }

    /// Pictures are kept beside the plan: beside an example too.
    @Test
    @Order(3)
    void picturesBesideAnExample_buildNothing() throws Exception {
        Path kept = Files.createDirectories(tree.resolve("examples/fernhollow.pictures"))
                .resolve("one.png");
        Files.write(kept, new byte[] {1});
        assertThat(run("--version").err()).isEmpty();
    }

    @Test
    @Order(3)
    void wrongCommand_endsWithTwo() throws Exception {
        Run run = run("no-such-command");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("plumeline: there is no command no-such-command");
    }

    /// What draws pages isn't on the class path of every command.
    @Test
    @Order(3)
    void post_hasWhatItsPapersNeed() throws Exception {
        Path plan = folder.resolve("one.yaml");
        Files.writeString(plan, """
                plumeline: 1
                film: {rate: 24 fps}
                kit:
                  cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
                  lenses: {fifty: {focal_length: 50 mm}}
                shots: {one: {camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm]}}}
                cut: [{shot: one, frames: 24}]
                """);
        Run run = run("post", plan.toString());
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(folder.resolve("post/post.pdf")).isNotEmptyFile();
    }

    /// Drawn, counted, encoded: with what a launched program finds, and no more memory than it is given.
    @Test
    @Order(3)
    void animatic_isAFilm() throws Exception {
        Path film = folder.resolve("a film.mp4");
        Run run = run(
                "animatic",
                tree.resolve("examples/fernhollow.yaml").toString(),
                "--size",
                "96x54",
                "--samples",
                "1",
                "--burn-in",
                "--out",
                film.toString());
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.out()).isEqualTo(film + "\n");
        assertThat(FilmProbe.track(film, "v:0"))
                .containsEntry("nb_read_frames", "336")
                .containsEntry("avg_frame_rate", "24/1")
                .containsEntry("duration", "14.000000")
                .containsEntry("color_space", "bt709")
                .containsEntry("TAG:timecode", "01:00:00:00");
        assertThat(Double.parseDouble(FilmProbe.track(film, "a:0").get("duration")))
                .isBetween(14 - 1 / 24.0, 14 + 1 / 24.0);
        byte[] bright = FilmProbe.brightness(film);
        assertThat(bright).hasSize(96 * 54 * 336);
        for (int frame = 0; frame < 336; frame++) {
            int at = frame * 96 * 54;
            assertThat(ReadCounter.lines((x, y) -> bright[at + y * 96 + x] & 255, 96, 54))
                    .containsExactly("%06d".formatted(frame), "01:00:%02d:%02d".formatted(frame / 24, frame % 24));
        }
    }

    @Test
    @Order(3)
    void readerThatStops_leavesNothingOnStandardError() throws Exception {
        Run run = finish(start(tree, List.of("bash", "-c", "set -o pipefail; ./plumeline help | true")));
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.err()).isEmpty();
    }

    @Test
    @Order(3)
    void linkFromElsewhere_findsItsTree() throws Exception {
        Path link = Files.createSymbolicLink(folder.resolve("link"), Path.of("a tree/plumeline"));
        assertThat(finish(start(folder, List.of(link.toString(), "--version"))).status())
                .isZero();
    }

    @Test
    @Order(4)
    void movedTree_isNotBuiltAgain() throws Exception {
        Path moved = folder.resolve("moved");
        Files.move(tree, moved);
        tree = moved;
        Run run = run("--version");
        assertThat(run.status()).isZero();
        assertThat(run.err()).isEmpty();
    }

    private static Run run(String... words) throws Exception {
        var command = new ArrayList<>(List.of(tree.resolve("plumeline").toString()));
        command.addAll(List.of(words));
        return finish(start(folder, command));
    }

    private static Process start(Path in, List<String> command) throws IOException {
        return new ProcessBuilder(command)
                .directory(in.toFile())
                .redirectInput(new File("/dev/null"))
                .redirectErrorStream(false)
                .start();
    }

    private static Run finish(Process process) throws Exception {
        var err = new StringBuilder();
        Thread reader = Thread.ofVirtual().start(() -> err.append(readAll(process)));
        String out = new String(process.getInputStream().readAllBytes(), UTF_8);
        assertThat(process.waitFor(5, TimeUnit.MINUTES)).as("ended in time").isTrue();
        reader.join();
        return new Run(process.exitValue(), out, err.toString());
    }

    private static String readAll(Process process) {
        try {
            return new String(process.getErrorStream().readAllBytes(), UTF_8);
        } catch (IOException e) {
            return e.toString();
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        try (var paths = Files.walk(from)) {
            for (Path path : paths.toList()) {
                Path target = to.resolve(from.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(target);
                } else {
                    Files.createDirectories(target.getParent());
                    Files.copy(path, target, java.nio.file.StandardCopyOption.COPY_ATTRIBUTES);
                }
            }
        }
    }
}
