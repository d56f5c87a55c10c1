package plumeline.post;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import plumeline.cut.review.FilmClock;
import plumeline.cut.review.ReviewNotes;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.solve.FilmAnswer;
import plumeline.solve.Solve;
import plumeline.timeline.Timeline;

/// Everything that post opens of one film with a line, an overlay, titles, a cut-down and a take.
final class PostTest {
    private static final String PLAN = """
            plumeline: 1
            film: {title: "Tea, loose", rate: 25 fps, frames: 60, tempo: 125 bpm, handles: 4 frames}
            deliver:
              wide: {ratio: "16:9", size: [1920 px, 1080 px]}
              short: {ratio: "1:1", size: [1080 px, 1080 px], length: 1 s, cut: [{shot: hung, frames: 25, from: 5}]}
              later: {ratio: "9:16", size: [1080 px, 1920 px], length: 2 s}
            things: {tin: {diameter: 76 mm, height: 96 mm, body: opaque}}
            kit:
              cameras:
                main:
                  sensor: {width: 36 mm, height: 20.25 mm, across: 1920 px}
                  modes: [{rate: 25 fps}, {rate: 50 fps}]
              lenses: {fifty: {focal_length: 50 mm}}
              machines: {slider: {travel: 600 mm, speed: 80 mm/s}}
            shots:
              hung:
                camera: {body: main, lens: fifty, at: [0 mm, -900 mm, 59 mm], aim: ahead, rate: 50 fps,
                  shutter: 180 deg}
                place: {hero: {thing: tin, at: [0 mm, 0 mm, 10 mm], lines: 1, line: {diameter: 0.4 mm}}}
                moves: {slide: {machine: slider, carries: camera, by: [20 mm, 0 mm], in: 1 s, profile: smooth}}
                speed: [[0 frames, 100 %], [10 frames, 100 %], [30 frames, 50 %]]
                clip: {file: takes/t3.mov, reel: T3, starts: "10:00:00:00", go: 10, frames: 200 frames}
              still:
                camera: {body: main, lens: fifty, at: [0 mm, -900 mm, 59 mm], aim: ahead}
                place: {hero: {thing: tin, at: [0 mm, 0 mm]}}
            cut:
              - {shot: hung, frames: 36, from_beat: 1}
              - {shot: still, frames: 24, from_beat: 4, reframe: {wide: [{at: 0, scale: 80 %}, {at: 23, scale: 100 %}]}}
            overlays: [{overlay: steam, over: {shot: still, when: start}, black: 6 %, range: video}]
            cues:
              - {sound: whoosh, sync: {shot: hung, when: 20 frames}, lead: 5 frames, of: hero}
              - {sound: fizz, sync: {shot: hung, when: 55 frames}}
            titles: {hung: {en: Loose leaves, de: Lose Blätter}, still: {en: Tea}}
            """;

    private static FilmAnswer film;

    @BeforeAll
    static void solve() {
        Plans.Reading reading = Plans.read(PLAN.getBytes(UTF_8), "p.yaml");
        assertThat(reading.problems()).isEmpty();
        film = Solve.film(reading.plan().orElseThrow());
    }

    private static Map<String, byte[]> files(Post post) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        post.forEach(file -> {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            try {
                file.content().writeTo(out);
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
            assertThat(files.put(file.name(), out.toByteArray()))
                    .as(file.name())
                    .isNull();
        });
        assertThat((long) files.size()).isEqualTo(post.count());
        return files;
    }

    private static Post post(Optional<ReviewNotes> notes) {
        return Post.of(film, notes, "../");
    }

    @Test
    void everyFile_isThereOnce_andTheSameEachTime() {
        Map<String, byte[]> first = files(post(Optional.empty()));
        assertThat(first)
                .containsKeys(
                        "film.otio",
                        "film.edl",
                        "short.otio",
                        "short.edl",
                        "moves.csv",
                        "moves/hung.glb",
                        "moves/still.glb",
                        "masks/hung/lines.csv",
                        "masks/hung/screen/0000000.png",
                        "masks/hung/screen-short/0000000.svg",
                        "notes.csv",
                        "post.html",
                        "post.pdf");
        Map<String, byte[]> again = files(post(Optional.empty()));
        assertThat(again.keySet()).isEqualTo(first.keySet());
        first.forEach((name, bytes) -> assertThat(again.get(name)).as(name).isEqualTo(bytes));
    }

    /// 50 frames a second of real time at 25: of the first 10 screen frames 20, then fewer; GO at the take's tenth
    /// frame.
    @Test
    void lists_goIntoTheTakeThatIsNamed() {
        String edl = new String(files(post(Optional.empty())).get("film.edl"), UTF_8);
        assertThat(edl)
                .contains("TITLE: Tea, loose")
                .contains("* FROM FILE: takes/t3.mov")
                .contains("M2   T3 ");
        assertThat(edl).contains("10:00:00:10 ");
        String otio = new String(files(post(Optional.empty())).get("film.otio"), UTF_8);
        assertThat(otio).contains("../takes/t3.mov");
    }

    @Test
    void whatIsMissing_isSaid() {
        List<String> missing = post(Optional.empty()).listMissing();
        assertThat(missing)
                .anyMatch(line -> line.startsWith("The take still is missing"))
                .contains(
                        "later is to be 2 s long, and which shots it takes isn't written: write deliver.later.cut, a"
                                + " list like the film's.",
                        "The sound fizz isn't in the film, which doesn't show the instant of hung that it meets.",
                        "The title over still isn't written in de.",
                        "In wide a border shows at frame 36 (still): the picture is scaled to 80 % there. Scale it up,"
                                + " or move and turn it less.")
                .anyMatch(line -> line.contains("steam has no file"));
    }

    @Test
    void papers_tellWhatToOpenAndHowTheOverlayLies() {
        String page = new String(files(post(Optional.empty())).get("post.html"), UTF_8)
                .replaceAll("<[^>]*>", "")
                .replace("\u00a0", " ")
                .replace("&#39;", "'");
        assertThat(page)
                .contains("Open in this order", "film.otio", "masks/hung/", "What is missing")
                .contains(
                        "first (x − b)/(1 − b), which makes 46.8 % of 50 %, then the screen blend",
                        "b = 6 % of video range", "from frame 36 (01:00:01:11)")
                .contains("Timeline of short", "Without hero, hero's line")
                .contains("Reframed: at frame 36 scaled to 80 %")
                .contains("frames 0 to 35 from 01:00:00:00, from beat 1, a ramp: 100 %, 50 %");
    }

    @Test
    void notes_comeBackWithWhereTheyLand() {
        Plan plan = film.plan();
        FilmClock clock = FilmClock.find(plan, Timeline.of(plan)).orElseThrow();
        String text = "version,timecode,author,note,done\r\nv1,01:00:01:13,Ada,\"softer, please\",no\r\n";
        ReviewNotes notes =
                ReviewNotes.read(text.getBytes(UTF_8), "n.csv", clock).notes().orElseThrow();
        String csv = new String(files(post(Optional.of(notes))).get("notes.csv"), UTF_8);
        assertThat(csv).contains("v1,01:00:01:13,Ada,\"softer, please\",no,still,,2,");
    }

    @Test
    void anOverlayThatTheFilmCutsOff_isSaid() {
        Plan plan = Plans.read(
                        PLAN.replace("black: 6 %", "black: 6 %, frames: 40").getBytes(UTF_8), "p.yaml")
                .plan()
                .orElseThrow();
        assertThat(Post.of(Solve.film(plan), Optional.empty(), "").listMissing())
                .contains("The overlay steam is cut off by 16 frames where the film ends.");
    }

    @Test
    void aCropOverThePicturesEdge_isSaid() {
        String text = PLAN.replace("  still:\n", "  still:\n    crop: {wide: [10 %, 0 %]}\n")
                .replaceAll("reframe: .*}", "pass: x}")
                .replace(", pass: x}", "}");
        Plan plan = Plans.read(text.getBytes(UTF_8), "p.yaml").plan().orElseThrow();
        assertThat(Post.of(Solve.film(plan), Optional.empty(), "").listMissing())
                .contains("In wide a border shows at frame 36 (still): its crop goes over the picture's edge. Move the"
                        + " crop, or scale it up.");
    }

    @Test
    void withoutACut_theRestIsThereAndTheLackIsSaid() {
        String text = PLAN.replaceAll("(?s)\ncut:.*?\noverlays", "\noverlays").replace(", frames: 60", "");
        Plan plan = Plans.read(text.getBytes(UTF_8), "p.yaml").plan().orElseThrow();
        Post post = Post.of(Solve.film(plan), Optional.empty(), "");
        assertThat(files(post))
                .containsKeys("moves.csv", "post.pdf", "short.edl")
                .doesNotContainKey("film.edl");
        assertThat(post.listMissing()).anyMatch(line -> line.startsWith("The plan has no cut"));
    }
}
