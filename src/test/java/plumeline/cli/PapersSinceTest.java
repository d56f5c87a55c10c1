package plumeline.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumeline.desk.Console;
import plumeline.desk.Outcome;

final class PapersSinceTest {
    private static final String PLAN = """
            plumeline: 1
            film: {title: Two jars, rate: 24 fps}
            things: {jar: {diameter: 60 mm, height: 80 mm}}
            kit:
              cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
              lenses: {macro: {focal_length: 100 mm}}
            shots:
              wide:
                camera: {body: main, lens: macro, at: [0 mm, free, 40 mm], aim: hero, f_number: 8}
                place: {hero: {thing: jar, at: [0 mm, 0 mm]}}
                frames: 24
                wants: [{fills: hero, height: 50 %}]
              still:
                camera: {body: main, lens: macro, at: [0 mm, -900 mm, 40 mm], aim: hero, f_number: 8}
                place: {hero: {thing: jar, at: [0 mm, 0 mm]}}
                frames: 24
                wants: [{sharp: hero}]
            """;

    @TempDir
    private Path folder = Path.of("");

    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private Outcome run(String... words) {
        Console console = new Console(
                new ByteArrayInputStream(new byte[0]),
                new PrintStream(new ByteArrayOutputStream(), true, UTF_8),
                new PrintStream(err, true, UTF_8));
        return Main.run(List.of(words), console);
    }

    private String write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    @Test
    void since_marksWhatChangedAndListsItOnTheCover() throws IOException {
        String before = write("before.yaml", PLAN);
        String now = write("now.yaml", PLAN.replace("height: 50 %", "height: 40 %"));
        assertThat(run("papers", now, "--since", before, "--to", folder.toString()))
                .isEqualTo(Outcome.ANSWERED);
        String page = Files.readString(folder.resolve("papers.html"));
        assertThat(page).contains("class=\"want changed\"");
        assertThat(page.replaceAll("</?span[^>]*>", ""))
                .contains("Changed since plan revision ", "fills hero height 40 %, was fills hero height 50 %.")
                .containsPattern("wide: camera\\.y −\\S*\\d+ mm")
                .doesNotContain("still: camera.");
    }

    @Test
    void sinceAPlanWithProblems_isRefusedByItsName() throws IOException {
        String before = write("before.yaml", PLAN.replace("rate: 24 fps", "rate: 24 mm"));
        String now = write("now.yaml", PLAN);
        assertThat(run("papers", now, "--since", before, "--to", folder.toString()))
                .isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8)).contains("before.yaml:2:");
        assertThat(folder.resolve("papers.html")).doesNotExist();
    }

    @Test
    void sinceAPlanWithoutTheShot_callsItNew() throws IOException {
        String before = write("before.yaml", PLAN.substring(0, PLAN.indexOf("  still:")));
        String now = write("now.yaml", PLAN);
        assertThat(run("papers", now, "--shot", "still", "--since", before, "--to", folder.toString()))
                .isEqualTo(Outcome.ANSWERED);
        assertThat(Files.readString(folder.resolve("papers.html"))).contains("still: a new shot.");
    }

    /// The film's want was judged over other shots than the one that is printed now.
    @Test
    void sinceAPlanWithoutTheShot_changesNoWantOfTheFilm() throws IOException {
        String film = "deliver: {wide: {ratio: \"16:9\"}}\nwants: [{inside: [wide]}]\n";
        String before = write("before.yaml", PLAN.substring(0, PLAN.indexOf("  still:")) + film);
        String now = write("now.yaml", PLAN + film);
        run("papers", now, "--shot", "still", "--since", before, "--to", folder.toString());
        assertThat(listed()).containsExactly("still: a new shot.");
        run("papers", now, "--shot", "wide", "--since", before, "--to", folder.toString());
        assertThat(listed()).isEmpty();
        run("papers", before, "--since", now, "--to", folder.toString());
        assertThat(listed()).containsExactly("still: no longer in the plan.");
    }

    /// The lens's nearest focus is printed nowhere by itself; what follows from it is.
    @Test
    void since_tellsReasonsWhereNothingElseChanged() throws IOException {
        String reaches = PLAN.replace("[{sharp: hero}]", "[{reaches: camera}]");
        String before =
                write("before.yaml", reaches.replace("100 mm}", "100 mm, nearest: 300 mm, f_numbers: [2, 22]}"));
        String now = write("now.yaml", reaches.replace("100 mm}", "100 mm, nearest: 450 mm, f_numbers: [2, 22]}"));
        run("papers", now, "--since", before, "--to", folder.toString());
        assertThat(listed())
                .isNotEmpty()
                .allMatch(line -> line.startsWith("still: "))
                .anyMatch(line -> line.contains("nearer still"));
    }

    /// What the cover lists.
    private List<String> listed() throws IOException {
        String page = Files.readString(folder.resolve("papers.html"));
        String list = page.contains("<ul class=\"changes\">")
                ? page.substring(page.indexOf("<ul class=\"changes\">")).split("</ul>", -1)[0]
                : "";
        return java.util.regex.Pattern.compile("<li[^>]*>(.*?)</li>")
                .matcher(list)
                .results()
                .map(item -> item.group(1).replaceAll("<[^>]*>", ""))
                .toList();
    }
}
