package plumeline.desk;

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
import plumeline.answer.Beside;
import plumeline.cli.Main;
import plumeline.clip.MadeClip;
import plumeline.light.WrittenLamp;
import plumeline.sound.HeldSound;
import plumeline.sound.Speaker;
import plumeline.sound.Wav;

/// Files that a question names are found from its own folder.
final class FilesBesideTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    private Path folder;

    @BeforeEach
    void writeALamp() throws IOException {
        Files.createDirectories(folder.resolve("lamps"));
        Files.write(
                folder.resolve("lamps/key.ies"),
                WrittenLamp.bytes(WrittenLamp.round().lm63(List.of(0.0))));
    }

    private Outcome ask(String file) throws IOException {
        Path question = folder.resolve("ask.yaml");
        Files.writeString(question, text(file));
        return run(question.toString(), "");
    }

    private static String text(String file) {
        return "light: {file: " + file + "}\ndistance: 2 m\niso: 800\nf_number: 4\nrate: 25 fps\n";
    }

    private Outcome run(String question, String input) {
        out.reset();
        err.reset();
        var console = new Console(new ByteArrayInputStream(input.getBytes(UTF_8)), out, err);
        return Main.run(List.of("ask", "exposure", question), console);
    }

    private void checkAnswered(Outcome outcome) {
        assertThat(outcome).as(err.toString(UTF_8)).isEqualTo(Outcome.ANSWERED);
        assertThat(out.toString(UTF_8)).contains("illuminance         250 lx");
    }

    private void checkRefused(Outcome outcome, String... said) {
        assertThat(outcome).isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8)).contains("ask.yaml:1:15 light.file is ").contains(said);
    }

    @Test
    void relativeNames_areFoundFromTheQuestionsFolder_absoluteOnesAsTheyAre() throws IOException {
        checkAnswered(ask("lamps/key.ies"));
        checkAnswered(ask("../" + folder.getFileName() + "/lamps/key.ies"));
        checkAnswered(ask("\"" + folder.resolve("lamps/key.ies") + "\""));
    }

    @Test
    void aQuestionTypedIn_namesFilesFromTheCurrentFolder() {
        Path here = Path.of("").toAbsolutePath().relativize(folder.toAbsolutePath());
        checkAnswered(run("-", text("\"" + here.resolve("lamps/key.ies") + "\"")));
        assertThat(run("-", text("lamps/key.ies"))).isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8)).contains("it is looked for from the current folder.");
    }

    @Test
    void aNameWithoutFolder_isOfTheFilesOwn() throws Refusal {
        Beside.File missing = FilesBeside.of("film.yaml").find("no such.png", 9);
        assertThat(((Beside.File.Absent) missing).attempt())
                .isEqualTo("See how it is spelled; it is looked for from the folder of film.yaml.");
    }

    @Test
    void whatIsNoFile_isRefused() throws IOException {
        checkRefused(ask("lamps/kye.ies"), "lamps/kye.ies, which is not there", "it is looked for from " + folder);
        checkRefused(ask("lamps"), "lamps, a folder");
        checkRefused(ask("\" \""), "a file without a name");
        Files.write(folder.resolve("empty.ies"), new byte[0]);
        checkRefused(ask("empty.ies"), "empty.ies, in whose line 1 is: nothing");
    }

    @Test
    void noMoreIsRead_thanIsWanted() throws Refusal {
        Beside beside = FilesBeside.of(folder.resolve("ask.yaml").toString());
        Beside.File file = beside.find("lamps/key.ies", 10);
        assertThat(file).isInstanceOf(Beside.File.There.class);
        assertThat(((Beside.File.There) file).toArray()).asString(UTF_8).isEqualTo("IESNA:LM-6");
    }

    private Outcome askLoudness(String file) throws IOException {
        Path question = folder.resolve("ask.yaml");
        Files.writeString(question, "file: " + file + "\ntarget: -20 LUFS\nwithin: 1 LU\n");
        out.reset();
        err.reset();
        var console = new Console(new ByteArrayInputStream(new byte[0]), out, err);
        return Main.run(List.of("ask", "loudness", question.toString()), console);
    }

    private static float[] tone() {
        float[] row = new float[96_000];
        for (int i = 0; i < row.length; i++) {
            row[i] = (float) (0.1 * Math.sin(2 * Math.PI * 1000 * i / 48_000));
        }
        return row;
    }

    @Test
    void soundsOfClips_areDecoded_andThoseOfWavFilesRead() throws IOException {
        float[] row = tone();
        MadeClip.write(folder.resolve("mix.mp4"), 48_000, 1, row, row);
        Files.write(
                folder.resolve("mix.wav"),
                Wav.write24(new HeldSound(48_000, List.of(Speaker.LEFT, Speaker.RIGHT), row, row)));
        for (String name : List.of("mix.mp4", "mix.wav")) {
            assertThat(askLoudness(name)).as(err.toString(UTF_8)).isEqualTo(Outcome.ANSWERED);
            assertThat(out.toString(UTF_8)).startsWith("loudness: holds\n  integrated       -20 LUFS\n");
        }
    }

    @Test
    void soundsThatCantBeHad_areRefused() throws IOException {
        assertThat(askLoudness("mix.mov")).isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8)).contains("ask.yaml:1:7 file is mix.mov, which is not there");
        Files.writeString(folder.resolve("notes.mov"), "no clip");
        assertThat(askLoudness("notes.mov")).isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8))
                .contains("ask.yaml:1:7 file is notes.mov, which is no WAV file and no clip that can be read here; must"
                        + " be a WAV file, or a clip with one track of sound");
        MadeClip.write(folder.resolve("two.mov"), 48_000, 2, tone());
        assertThat(askLoudness("two.mov")).isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8)).contains("two.mov, a clip with 2 tracks of sound");
        Files.write(
                folder.resolve("cut.wav"),
                java.util.Arrays.copyOf(Wav.write24(new HeldSound(48_000, List.of(Speaker.CENTRE), tone())), 500));
        assertThat(askLoudness("cut.wav")).isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8)).contains("of which 456 are there");
    }
}
