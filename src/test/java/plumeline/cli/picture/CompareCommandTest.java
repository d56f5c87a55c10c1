package plumeline.cli.picture;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumeline.cli.Main;
import plumeline.desk.Console;
import plumeline.desk.Outcome;
import plumeline.render.Pixels;
import plumeline.render.PngFile;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

final class CompareCommandTest {
    private static final String PLAN = """
        plumeline: 1
        film: {rate: 24 fps}
        things:
          can: {diameter: 66 mm, height: 122 mm}
          box: {width: 60 mm, depth: 40 mm, height: 100 mm}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
          lenses: {fifty: {focal_length: 50 mm}}
        shots:
          one:
            camera: {body: main, lens: fifty, at: [X mm, -900 mm, 160 mm], aim: first}
            place:
              first: {thing: can, at: [0 mm, 0 mm]}
              second: {thing: box, at: [-130 mm, 160 mm], turn: 20 deg}
              third: {thing: box, at: [120 mm, -140 mm]}
            wants: [{shown: [second, first], gap: 6 %}]
        """;

    @TempDir
    private Path folder = Path.of("");

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @BeforeEach
    void lay() throws IOException {
        Files.writeString(folder.resolve("film.yaml"), PLAN.replace("X mm", "0 mm"));
        Files.writeString(folder.resolve("moved.yaml"), PLAN.replace("X mm", "30 mm"));
        Files.write(folder.resolve("still.png"), PngFile.of(new Pixels(1920, 1080, new int[1920 * 1080])));
        Files.write(folder.resolve("square.png"), PngFile.of(new Pixels(100, 100, new int[100 * 100])));
    }

    private Outcome run(String plan, String still, String... more) {
        out.reset();
        err.reset();
        List<String> words = new ArrayList<>(List.of(
                "compare",
                folder.resolve(plan).toString(),
                folder.resolve(still).toString()));
        words.addAll(List.of(more));
        return Main.run(words, new Console(new ByteArrayInputStream(new byte[0]), out, err));
    }

    private JsonNode json() {
        return JsonMapper.shared().readTree(out.toString(UTF_8));
    }

    /// Where the places of another plan show, as a file of points.
    private Path pointsOf(String plan) throws IOException {
        assertThat(run(plan, "still.png", "--json")).isEqualTo(Outcome.ANSWERED);
        StringBuilder points = new StringBuilder("# as it was\n");
        for (JsonNode place : json().path("places")) {
            if (place.path("seen").asString().equals("yes")) {
                points.append(place.path("place").asString())
                        .append(' ')
                        .append(place.path("planned").path("x").path("value").asDouble())
                        .append(' ')
                        .append(place.path("planned").path("y").path("value").asDouble())
                        .append('\n');
            }
        }
        return Files.writeString(folder.resolve("points.txt"), points);
    }

    @Test
    void points_tellTheCamerasPlace_asJsonAndOnThePage() throws IOException {
        Path points = pointsOf("moved.yaml");
        Path page = folder.resolve("page.html");
        assertThat(run("film.yaml", "still.png", "--points", points.toString(), "--json", "--out", page.toString()))
                .isEqualTo(Outcome.ANSWERED);
        JsonNode alone = json().path("alone").get(0);
        assertThat(alone.path("only").asString()).isEqualTo("camera");
        JsonNode off = alone.path("marks").get(0).path("off");
        assertThat(off.path("value").asDouble()).isCloseTo(30, within(0.2));
        assertThat(off.path("unit").asString()).isEqualTo("mm");
        JsonNode mark = json().path("marks").get(0);
        assertThat(mark.path("mark").asString()).isEqualTo("camera.x");
        assertThat(mark.path("off").path("low").asDouble()).isLessThan(30);
        assertThat(mark.path("off").path("high").asDouble()).isGreaterThan(30);
        assertThat(mark.path("words").asString()).endsWith("too far right");
        assertThat(json().path("wants").get(0).path("planned").path("unit").asString())
                .isEqualTo("%");
        String html = Files.readString(page);
        assertThat(html).contains("the camera&#39;s place alone is off").contains("data:image/png;base64,");
        assertThat(html).doesNotContain("https:").doesNotContain("src=\"http").doesNotContain("<link");
    }

    @Test
    void withoutPoints_placesAreListed_andThePageIsWritten() throws IOException {
        Path page = folder.resolve("page.html");
        assertThat(run("film.yaml", "still.png", "--out", page.toString())).isEqualTo(Outcome.ANSWERED);
        assertThat(out.toString(UTF_8))
                .contains("  first.top.left ")
                .contains("  second.base.back_left ")
                .contains("turned away")
                .endsWith(page + "\n");
        assertThat(Files.readString(page)).contains("value=\"first.top.left\"").contains("id=\"command\"");
    }

    @Test
    void whatCannotBeCompared_isRefused() {
        assertThat(run("film.yaml", "square.png", "--json")).isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8)).contains("100 by 100 px").contains("16:9 (the whole picture)");
        assertThat(run("film.yaml", "film.yaml", "--json")).isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8)).contains("is neither a JPEG nor a PNG file");
        assertThat(run("film.yaml", "still.png", "--json", "--point", "first.top.left:1,2"))
                .isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8)).contains("--point first.top.left:1,2 is no point; must be NAME=X,Y");
        assertThat(run("film.yaml", "still.png", "--json", "--point", "first.top.lef=1,2"))
                .isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8))
                .contains("the nearest of 20 are first.top.left, first.top.right, ")
                .contains("Try first.top.left; without points, compare lists them all.");
        assertThat(run(
                        "film.yaml",
                        "still.png",
                        "--json",
                        "--point",
                        "first.top.left=1,2",
                        "second.top.front_left=3,4"))
                .isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8)).contains("2 places are clicked; three at least are wanted");
    }
}
