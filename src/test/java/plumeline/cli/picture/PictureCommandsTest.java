package plumeline.cli.picture;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.cli.Main;
import plumeline.desk.Console;
import plumeline.desk.Outcome;

/// `draft` and `still` in a folder.
final class PictureCommandsTest {
    private static final String PLAN = """
        plumeline: 1
        film: {title: Tea, rate: 25 fps}
        deliver:
          wide: {ratio: "3:2", size: [900 px, 600 px]}
          phone: {ratio: "9:16", size: [1080 px, 1920 px]}
        things: {tin: {diameter: 76 mm, height: 96 mm, label: {width: 40 mm, height: 40 mm, art: ART}}}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 24 mm, across: 3600 px}}}
          lenses: {fifty: {focal_length: 50 mm}}
        shots:
          still:
            camera: {body: main, lens: fifty, at: [0 mm, -900 mm, 59 mm], aim: hero}
            place: {hero: {thing: tin, at: [0 mm, 0 mm]}}
            frames: 10
            passes: {far: {place.hero.at: [0 mm, 200 mm]}}
        """;

    @TempDir
    private Path folder = Path.of("");

    private Path plan = Path.of("");
    private Path png = Path.of("");

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @BeforeEach
    void write() throws IOException {
        plan = folder.resolve("tea.yaml");
        png = folder.resolve("out.png");
        Files.writeString(plan, PLAN.replace("ART", "label.svg"));
        Files.writeString(
                folder.resolve("label.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'>"
                        + "<rect width='9' height='9' fill='#f00'/></svg>");
    }

    private Outcome run(String... words) {
        out.reset();
        err.reset();
        return Main.run(List.of(words), new Console(new ByteArrayInputStream(new byte[0]), out, err));
    }

    private Outcome draft(String... words) {
        var all = new ArrayList<>(List.of("draft", plan.toString(), "--out", png.toString()));
        all.addAll(List.of(words));
        return run(all.toArray(String[]::new));
    }

    private BufferedImage picture() throws IOException {
        return ImageIO.read(png.toFile());
    }

    @Test
    void draft_isWrittenAndSaysWhatWasAssumed() throws IOException {
        assertThat(draft()).as(err.toString(UTF_8)).isEqualTo(Outcome.ANSWERED);
        assertThat(picture().getWidth()).isEqualTo(480);
        assertThat(picture().getHeight()).isEqualTo(320);
        assertThat(out.toString(UTF_8))
                .startsWith(png + ": still at its start, 480 x 320 px, one ray a pixel, in ")
                .contains("No lamp is written: lit evenly from all round.\n")
                .contains("The finish of hero isn't written: drawn glossy.\n")
                .contains("No sensitivity is written: taken as ISO 800.\n");
        int middle = picture().getRGB(240, 160);
        assertThat(middle >> 16 & 255).as("the label's red").isGreaterThan(3 * (middle & 255));
    }

    @Test
    void draft_isTheSameByAnyNumberOfThreads() throws IOException {
        draft("--threads", "1");
        byte[] one = Files.readAllBytes(png);
        draft("--threads", "3");
        assertThat(Files.readAllBytes(png)).isEqualTo(one);
    }

    @Test
    void missingArt_leavesTheLabelBlankAndIsSaid() throws IOException {
        Files.writeString(plan, PLAN.replace("ART", "lost.png"));
        assertThat(draft()).isEqualTo(Outcome.ANSWERED);
        assertThat(err.toString(UTF_8))
                .contains(
                        "tea.yaml:6:90 things.tin.label.art is lost.png, which is not there; must be a PNG, JPEG or SVG"
                                + " file that can be read; the label is drawn blank")
                .contains("(P-ART-01, docs/problems.md)");
        int middle = picture().getRGB(240, 160);
        assertThat(middle >> 16 & 255).isCloseTo(middle & 255, within(12));
    }

    @Test
    void artThatPointsElsewhere_isRefused() throws IOException {
        Files.writeString(
                folder.resolve("label.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'><image href='a.png'/></svg>");
        assertThat(draft()).isEqualTo(Outcome.ANSWERED);
        assertThat(err.toString(UTF_8))
                .contains("label.svg, an SVG that points at something outside itself: a.png")
                .contains("P-ART-02");
    }

    @Test
    void parts_areListedBesideThePicture() throws IOException {
        assertThat(draft("--view", "parts", "--size", "60x40")).isEqualTo(Outcome.ANSWERED);
        String list = Files.readString(folder.resolve("out.json"));
        assertThat(list)
                .startsWith(
                        "{\"shot\":\"still\",\"real_seconds\":0.0,\"width\":60,\"height\":40,\"parts\":[{\"index\":0,"
                                + "\"name\":\"the table\",\"colour\":\"#")
                .contains("\"name\":\"hero\"");
        String colour = list.replaceAll("(?s).*\"hero\",\"colour\":\"#([0-9a-f]{6}).*", "$1");
        assertThat(picture().getRGB(30, 20) & 0xffffff).isEqualTo(Integer.parseInt(colour, 16));
        assertThat(out.toString(UTF_8)).contains("#" + colour + "  hero ");
        byte[] first = Files.readAllBytes(png);
        draft("--view", "parts", "--size", "60x40");
        assertThat(Files.readAllBytes(png)).isEqualTo(first);
        assertThat(draft("--view", "parts", "--mirrored", "--size", "60x40")).isEqualTo(Outcome.ANSWERED);
        assertThat(Files.readAllBytes(png)).isNotEqualTo(first);
    }

    @Test
    void delivery_isCutFromTheWholePicture() throws IOException {
        assertThat(draft("--delivery", "phone")).isEqualTo(Outcome.ANSWERED);
        assertThat(picture().getWidth()).isEqualTo(270);
        assertThat(picture().getHeight()).isEqualTo(480);
    }

    @Test
    void pass_isDrawn() throws IOException {
        draft();
        byte[] near = Files.readAllBytes(png);
        assertThat(draft("--pass", "far")).isEqualTo(Outcome.ANSWERED);
        assertThat(out.toString(UTF_8)).contains(": still (far) at its start");
        assertThat(Files.readAllBytes(png)).isNotEqualTo(near);
    }

    @Test
    void still_isDrawnUntilItIsCleanEnough() throws IOException {
        assertThat(run("still", plan.toString(), "--size", "45x30", "--noise", "4 %", "--out", png.toString()))
                .as(err.toString(UTF_8))
                .isEqualTo(Outcome.ANSWERED);
        assertThat(picture().getWidth()).isEqualTo(45);
        assertThat(out.toString(UTF_8)).containsPattern("45 x 30 px, [0-9]+ rays a pixel, noise [0-9.]+ %, in ");
        byte[] first = Files.readAllBytes(png);
        run("still", plan.toString(), "--size", "45x30", "--noise", "4 %", "--threads", "1", "--out", png.toString());
        assertThat(Files.readAllBytes(png)).isEqualTo(first);
    }

    @Test
    void stillOfTooFewRays_saysSo() {
        run(
                "still",
                plan.toString(),
                "--size",
                "45x30",
                "--noise",
                "0.001 %",
                "--samples",
                "4",
                "--out",
                png.toString());
        assertThat(out.toString(UTF_8)).contains("4 rays a pixel").contains("asked for: --samples ended it.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--at|20 frames|--at is 20 frames; must be start, end, a frame from 0 to 9, or a time from 0 s to"
                        + " 0.4 s",
                "--size|480|--size is 480; must be pixels across and down, 8 to 4096 each",
                "--size|9000x10|--size is 9000x10; must be pixels across and down, 8 to 4096 each",
                "--shot|stil|the plan has no shot stil; it has still",
                "--pass|near|the shot still has no pass near; it has far",
                "--delivery|tall|the plan has no delivery tall; it has wide, phone",
                "--view|heat|--view is heat; must be picture",
                "--threads|0|--threads is 0; must be a whole number from 1 to 256",
            })
    void slips_areRefused(String option, String value, String said) {
        assertThat(draft(option, value)).isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8)).contains(said);
        assertThat(png).doesNotExist();
    }

    @Test
    void noise_isAShare() {
        assertThat(run("still", plan.toString(), "--noise", "3 mm")).isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8)).contains("--noise is 3 mm; must be over 0 % and at most 100 %");
    }
}
