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
import org.junit.jupiter.api.io.TempDir;
import plumeline.desk.Console;
import plumeline.desk.Outcome;

final class MovesCommandTest {
    /// 25 mm in a second at 25 fps: a millimetre a frame, five steps of 5 mm.
    private static final String PLAN = """
        plumeline: 1
        film: {rate: 25 fps, papers: in}
        things: {tin: {diameter: 76 mm, height: 96 mm}}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
          lenses: {fifty: {focal_length: 50 mm}}
          machines: {rail: {speed: 100 mm/s, resolution: 5 mm}, head: {speed: 20 deg/s}}
        shots:
          one:
            camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 48 mm], aim: hero}
            place: {hero: {thing: tin, at: [0 mm, 0 mm]}}
            moves: {slide: {machine: rail, by: [25 mm, 0 mm], in: 1 s}}
          two:
            camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 48 mm], aim: hero}
            place: {hero: {thing: tin, at: [0 mm, 0 mm]}}
            moves: {pan: {machine: head, by: 10 deg, in: 1 s}}
        """;

    private static final String HEAD =
            "shot,pass,move,axis,machine,kind,frame,captured,seconds,position,speed,unit\r\n";

    @TempDir
    private Path folder = Path.of("");

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private Outcome run(String input, String... words) {
        return Main.run(List.of(words), new Console(new ByteArrayInputStream(input.getBytes(UTF_8)), out, err));
    }

    @Test
    void moves_printsFramesThenSteps_inMillimetresWhateverThePapers() {
        assertThat(run(PLAN, "moves", "-", "--shot", "one")).isEqualTo(Outcome.ANSWERED);
        assertThat(err.size()).isZero();
        String text = out.toString(UTF_8);
        assertThat(text).startsWith(HEAD + "one,,slide,slide,rail,frame,0,0,0,0,25,mm\r\n");
        assertThat(text).contains("\r\none,,slide,slide,rail,frame,24,24,0.96,24,25,mm\r\n");
        assertThat(text).contains("\r\none,,slide,slide,rail,end,,,1,25,0,mm\r\n");
        assertThat(text).endsWith("\r\none,,slide,slide,rail,step,,,1,25,25,mm\r\n");
        assertThat(text.lines()).hasSize(1 + 25 + 1 + 5);
    }

    @Test
    void moves_saysWhatIsntInIt() {
        assertThat(run(PLAN, "moves", "-")).isEqualTo(Outcome.ANSWERED);
        assertThat(err.toString(UTF_8)).isEqualTo("two: pan has no step rows: write head's resolution\n");
        assertThat(out.toString(UTF_8).lines()).hasSize(1 + 25 + 1 + 5 + 25 + 1);
    }

    @Test
    void moves_writesAFileWhole() throws IOException {
        Path file = folder.resolve("keys.csv");
        Files.writeString(file, "old");
        assertThat(run(PLAN, "moves", "-", "--shot", "one", "--to", file.toString()))
                .isEqualTo(Outcome.ANSWERED);
        assertThat(out.toString(UTF_8)).isEqualTo(file + "\n");
        assertThat(Files.readString(file)).startsWith(HEAD).endsWith("step,,,1,25,25,mm\r\n");
        try (var there = Files.list(folder)) {
            assertThat(there).hasSize(1);
        }
    }

    @Test
    void moves_refusesAFolder_anUnknownShot_andAWrongPlan() {
        assertThat(run(PLAN, "moves", "-", "--to", folder.toString())).isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8)).contains("is a folder; a file is wanted there", "Name a file in it.");
        assertThat(run(PLAN, "moves", "-", "--shot", "tow")).isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8)).contains("the plan has no shot tow");
        assertThat(run(PLAN.replace("in: 1 s", "in: 1 mm"), "moves", "-")).isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8)).contains("2 problems; nothing was solved");
        assertThat(out.size()).isZero();
    }

    @Test
    void shotWithoutMoves_givesTheHeadAlone() {
        assertThat(run(KeepCommandTest.PLAN, "moves", "-")).isEqualTo(Outcome.ANSWERED);
        assertThat(out.toString(UTF_8)).isEqualTo(HEAD);
    }
}
