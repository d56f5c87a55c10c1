package plumeline.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumeline.desk.Console;
import plumeline.desk.Outcome;

/// `post` in a folder: what is written, what is read again, what is taken away, what is never lost.
final class PostCommandTest {
    private static final String PLAN = """
        plumeline: 1
        film: {title: Tea, rate: 25 fps, handles: 2}
        things: {tin: {diameter: 76 mm, height: 96 mm, body: opaque}}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 960 px}}}
          lenses: {fifty: {focal_length: 50 mm}}
        shots:
          hung:
            camera: {body: main, lens: fifty, at: [0 mm, -900 mm, 59 mm], aim: ahead}
            place: {hero: {thing: tin, at: [0 mm, 0 mm, 10 mm], lines: 1, line: {diameter: 0.4 mm}}}
            clip: {file: takes/a.mov}
        cut: [{shot: hung, frames: 6}]
        """;

    private static final String NOTES =
            "version,timecode,author,note,done,mood\r\nv1,01:00:00:03,Ada,softer,no,fine\r\n";

    @TempDir
    private Path folder = Path.of("");

    private Path plan = Path.of("");

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @BeforeEach
    void write() throws IOException {
        plan = folder.resolve("tea.yaml");
        Files.writeString(plan, PLAN);
    }

    private Outcome run(String... words) {
        out.reset();
        err.reset();
        return Main.run(List.of(words), new Console(new ByteArrayInputStream(new byte[0]), out, err));
    }

    private Path post(String name) {
        return folder.resolve("post").resolve(name);
    }

    @Test
    void everything_goesIntoPostBesideThePlan() throws IOException {
        assertThat(run("post", plan.toString())).isEqualTo(Outcome.ANSWERED);
        assertThat(out.toString(UTF_8)).isEqualTo(post("post.html") + "\n" + post("post.pdf") + "\n");
        for (String name : List.of("film.otio", "film.edl", "guide.wav", "moves.csv", "notes.csv", "moves/hung.glb")) {
            assertThat(post(name)).as(name).isNotEmptyFile();
        }
        assertThat(Files.readString(post("film.otio"))).contains("\"../takes/a.mov\"");
        assertThat(post("masks/hung/screen/0000005.png")).isNotEmptyFile();
        assertThat(post("masks/hung/screen/0000006.png")).doesNotExist();
    }

    @Test
    void fromAnotherFolder_takesAreFoundOverTheWayThere() throws IOException {
        Path other = folder.resolve("away/cut 1");
        assertThat(run("post", plan.toString(), "--to", other.toString())).isEqualTo(Outcome.ANSWERED);
        assertThat(Files.readString(other.resolve("film.otio"))).contains("\"../../takes/a.mov\"");
    }

    @Test
    void masksOfAnEarlierCut_areTakenAway_andNothingElse() throws IOException {
        run("post", plan.toString());
        Files.writeString(post("masks/hung/screen/mine.png"), "mine");
        Files.writeString(plan, PLAN.replace("frames: 6", "frames: 4"));
        assertThat(run("post", plan.toString())).isEqualTo(Outcome.ANSWERED);
        assertThat(err.toString(UTF_8)).contains("took away 8 files of an earlier run, unchanged since");
        assertThat(post("masks/hung/screen/0000003.svg")).exists();
        assertThat(post("masks/hung/screen/0000004.svg")).doesNotExist();
        assertThat(post("masks/hung/screen/mine.png")).exists();
    }

    private static final String SQUARE =
            "deliver: {square: {ratio: \"1:1\", length: 3 frames, cut: [{shot: hung," + " frames: 3}]}}\n";

    /// Without the line, and without the cut of its own, nothing of both is left; a list says what is.
    @Test
    void whatIsNoLongerMade_isTakenAway() throws IOException {
        Files.writeString(plan, PLAN + SQUARE);
        assertThat(run("post", plan.toString())).as(err.toString(UTF_8)).isEqualTo(Outcome.ANSWERED);
        assertThat(post("square.edl")).exists();
        assertThat(post("masks/hung/screen-square/0000002.png")).exists();
        Files.writeString(post("square.otio"), "mine now");
        Files.writeString(plan, PLAN.replace(", lines: 1, line: {diameter: 0.4 mm}", ""));
        assertThat(run("post", plan.toString())).isEqualTo(Outcome.ANSWERED);
        assertThat(err.toString(UTF_8)).contains("files of an earlier run, unchanged since");
        assertThat(post("square.edl")).doesNotExist();
        assertThat(post("masks")).doesNotExist();
        assertThat(post("square.otio")).hasContent("mine now");
        assertThat(post("film.edl")).exists();
        assertThat(post("notes.csv")).exists();
        List<String> list = Files.readAllLines(post(".plumeline-files"));
        assertThat(list).anyMatch(line -> line.matches("[0-9a-f]{64}  film\\.edl"));
        assertThat(list).noneMatch(line -> line.contains("square"));
        run("post", plan.toString());
        assertThat(err.toString(UTF_8)).doesNotContain("took away");
    }

    /// Whatever a list says, nothing outside the folder goes, nothing by a link, and nothing with other bytes.
    @Test
    void aListThatWasTamperedWith_takesNothingElseAway() throws IOException {
        run("post", plan.toString());
        Path outside = folder.resolve("outside.txt");
        Files.writeString(outside, "");
        Files.createDirectory(folder.resolve("far"));
        Files.writeString(folder.resolve("far/a.txt"), "");
        Files.createSymbolicLink(post("near"), folder.resolve("far"));
        Files.createSymbolicLink(post("link.txt"), outside);
        Files.writeString(post("own.txt"), "own");
        String empty = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855  ";
        StringBuilder list = new StringBuilder("no line\n");
        for (String name : List.of(
                "../outside.txt", outside.toString(), "near/a.txt", "link.txt", "own.txt", "gone.txt", ".", "")) {
            list.append(empty).append(name).append('\n');
        }
        Files.writeString(post(".plumeline-files"), list);
        assertThat(run("post", plan.toString())).isEqualTo(Outcome.ANSWERED);
        assertThat(err.toString(UTF_8)).doesNotContain("took away");
        assertThat(outside).exists();
        assertThat(folder.resolve("far/a.txt")).exists();
        assertThat(post("link.txt")).exists();
        assertThat(post("own.txt")).exists();
    }

    @Test
    void notes_areReadFromAFile_andThenFromTheFolder() throws IOException {
        Path notes = folder.resolve("seen.csv");
        Files.writeString(notes, NOTES);
        assertThat(run("post", plan.toString(), "--notes", notes.toString())).isEqualTo(Outcome.ANSWERED);
        String landed = Files.readString(post("notes.csv"));
        assertThat(landed).contains("v1,01:00:00:03,Ada,softer,no,hung,,3,00:00:00:03,fine");
        Files.writeString(post("notes.csv"), landed.replace("softer,no", "softer,yes"));
        assertThat(run("post", plan.toString())).isEqualTo(Outcome.ANSWERED);
        assertThat(Files.readString(post("notes.csv"))).isEqualTo(landed.replace("softer,no", "softer,yes"));
        assertThat(Files.readString(notes)).isEqualTo(NOTES);
    }

    /// Another reviewer's file comes to those that are there; nobody's note is lost.
    @Test
    void notesOfSeveral_areKeptTogether() throws IOException {
        Path ada = folder.resolve("ada.csv");
        Path bo = folder.resolve("bo.csv");
        Files.writeString(ada, NOTES);
        Files.writeString(bo, NOTES.replace("Ada,softer", "Bo,brighter"));
        run("post", plan.toString(), "--notes", ada.toString());
        assertThat(run("post", plan.toString(), "--notes", bo.toString())).isEqualTo(Outcome.ANSWERED);
        assertThat(Files.readString(post("notes.csv"))).contains("Ada,softer", "Bo,brighter");
        run("post", plan.toString(), "--notes", bo.toString());
        assertThat(Files.readString(post("notes.csv")).lines()).hasSize(3);
    }

    @Test
    void notesThatCantBeRead_areSaidByTheirPlace_andStayAsTheyAre() throws IOException {
        run("post", plan.toString());
        String wrong = NOTES.replace("01:00:00:03", "01:00:00:25").replace(",no,", ",perhaps,");
        Files.writeString(post("notes.csv"), wrong);
        Files.delete(post("film.edl"));
        assertThat(run("post", plan.toString())).isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8))
                .contains("notes.csv:2:")
                .contains("timecode is 01:00:00:25")
                .contains("done is perhaps")
                .endsWith("nothing was written\n");
        assertThat(Files.readString(post("notes.csv"))).isEqualTo(wrong);
        assertThat(post("film.edl")).doesNotExist();
    }

    @Test
    void notesWithoutACut_areRefused() throws IOException {
        Files.writeString(plan, PLAN.replaceAll("cut:.*\n", ""));
        Path notes = folder.resolve("seen.csv");
        Files.writeString(notes, NOTES);
        assertThat(run("post", plan.toString(), "--notes", notes.toString())).isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8)).contains("review notes can't be read: the plan has no cut");
        assertThat(run("post", plan.toString())).isEqualTo(Outcome.ANSWERED);
        assertThat(err.toString(UTF_8)).contains("The plan has no cut: write which shots follow each other");
    }

    @Test
    void aPlanWithProblems_writesNothing() throws IOException {
        Files.writeString(plan, PLAN.replace("handles: 2", "handles: 2, frames: 9"));
        assertThat(run("post", plan.toString())).isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8)).contains("P-CUT-07");
        assertThat(folder.resolve("post")).doesNotExist();
    }
}
