package plumeline.cut.cue;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.plan.Plans;
import plumeline.solve.FilmAnswer;
import plumeline.solve.Solve;
import plumeline.timeline.Laid;
import plumeline.timeline.Timeline;

/// Sounds at the film's edges, and things that the camera doesn't see.
final class CueSheetTest {
    private static FilmAnswer solved(String film, String shots, String cues) {
        String text = """
                plumeline: 1
                film: {%s}
                things: {box: {width: 60 mm, height: 60 mm, depth: 60 mm}}
                kit:
                  cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 1920 px}}}
                  lenses: {fifty: {focal_length: 50 mm}}
                shots:
                """.formatted(film) + shots + "cues:\n" + cues;
        Plans.Reading reading = Plans.read(text.getBytes(UTF_8), "p.yaml");
        return Solve.film(reading.plan()
                .orElseThrow(
                        () -> new AssertionError(reading.problems().getFirst().toText())));
    }

    private static CueSheet sheet(FilmAnswer film) {
        return CueSheet.of(film, Timeline.of(film.plan()));
    }

    private static final String CAMERA = "camera: {body: main, lens: fifty, at: [0 mm, -1000 mm, 30 mm], aim: ahead}";

    @Test
    void aSoundThatIsOverBeforeTheFilm_isDropped_andOneThatReachesIntoItHasNoLabelBeforeIt() {
        FilmAnswer film = solved(
                "rate: 24 fps, starts: \"00:00:00:00\"",
                "  one: {" + CAMERA + "}\ncut: [{shot: one, frames: 48}]\n",
                "  - {sound: early, sync: {shot: one, when: start}, lead: 60 frames, lasts: 12 frames}\n"
                        + "  - {sound: tail, sync: {shot: one, when: start}, lead: 60 frames, lasts: 72 frames}\n");
        assertThat(sheet(film).csv().lines().skip(1))
                .containsExactly("1,tail,,one,,,,-60,-120000,00:00:00:00,0,0,00:00:00:12,12,24000,0,0,0,written");
        assertThat(Laid.listLost(film.plan(), Timeline.of(film.plan())))
                .containsExactly("The sound early isn't in the film: it is over before the first frame.");
    }

    /// What is behind the lens is heard from the side it stands on, the camera being level or on its side.
    @Test
    void aThingBehindTheLens_isAtTheEdgeOfItsSide() {
        String place =
                ", place: {left: {thing: box, at: [-80 mm, -1500 mm]}, right: {thing: box, at: [80 mm, -1500 mm]},"
                        + " behind: {thing: box, at: [0 mm, -1500 mm]}, beside: {thing: box, at: [-300 mm, -1000 mm]}}";
        FilmAnswer film = solved(
                "rate: 24 fps",
                "  one: {" + CAMERA + place + "}\ncut: [{shot: one, frames: 24}]\n",
                List.of("left", "right", "behind", "beside").stream()
                        .map(name -> "  - {sound: s" + name + ", sync: {shot: one, when: start}, lasts: 1 s, of: "
                                + name + "}\n")
                        .reduce("", String::concat));
        assertThat(sheet(film).rows())
                .extracting(
                        row -> row.thing() + " " + Math.round(100 * row.sync().pan()))
                .containsExactly("left -100", "right 100", "behind 0", "beside -100");
    }

    /// The shot itself is cut to, and one of its passes has the thing elsewhere.
    @Test
    void aCutToAShotWithPasses_pansByTheShotItself() {
        FilmAnswer film = solved(
                "rate: 24 fps",
                "  one: {" + CAMERA + ", place: {hero: {thing: box, at: [100 mm, 0 mm]}},"
                        + " passes: {other: {place.hero.at: [-100 mm, 0 mm]}}}\n"
                        + "cut: [{shot: one, frames: 24}, {shot: one, frames: 24, pass: other}]\n",
                "  - {sound: click, sync: {shot: one, when: start}, lasts: 1 s}\n");
        assertThat(sheet(film).rows().getFirst().sync().pan()).isPositive();
    }
}
