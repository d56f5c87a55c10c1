package plumeline.draw.time;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.sketch.Drawing;
import plumeline.solve.Solve;
import plumeline.timeline.Timeline;

/// The ruler has every entry, beat and sound of a film, on its own sheet.
final class TimelineRulerTest {
    private static final String PLAN = """
            plumeline: 1
            film: {rate: 24 fps%s}
            kit:
              cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
              lenses: {fifty: {focal_length: 50 mm}}
            shots:
              rise:
                camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], rate: 96 fps}
                speed: [[0 frames, 100 %%], [24 frames, 100 %%],
                  [48 frames, 25 %%], [58 frames, 25 %%], [72 frames, -50 %%], [96 frames, 0 %%]]
              wait:
                camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm]}
                passes: {warm: {}, cool: {camera.f_number: 4}}
            cut: [{shot: rise, frames: 120}, {shot: wait, pass: cool, frames: 30},
              {shot: wait, frames: %d, alternate: [warm, cool], each: 6}]
            """;

    private static final Pattern TEXT = Pattern.compile("<text[^>]*>(.*?)</text>", Pattern.DOTALL);

    private static List<Drawing> draw(String film, int last, Heard... heard) {
        Plan plan = Plans.read(PLAN.formatted(film, last).getBytes(UTF_8), "p.yaml")
                .plan()
                .orElseThrow();
        return TimelineRuler.draw(Solve.film(plan), Timeline.of(plan), List.of(heard));
    }

    private static List<String> words(Drawing drawing) {
        List<String> words = new ArrayList<>();
        Matcher matcher = TEXT.matcher(drawing.toSvg());
        while (matcher.find()) {
            words.add(matcher.group(1).replaceAll("<[^>]*>", "").replace("\u00a0", " "));
        }
        return words;
    }

    @Test
    void rows_areWholeBars_andTogetherTheFilm() {
        List<Drawing> drawings = draw(", tempo: 120 bpm", 300);
        assertThat(drawings)
                .extracting(Drawing::id)
                .containsExactly("timeline.film.0", "timeline.film.144", "timeline.film.288", "timeline.film.432");
        assertThat(drawings.getLast().title()).isEqualTo("Frames 432 to 449 of the film");
        String all = drawings.stream().flatMap(d -> words(d).stream()).collect(Collectors.joining("|"));
        for (int beat = 1; beat <= 37; beat++) {
            assertThat("|" + all + "|").contains("|" + beat + "|");
        }
        assertThat(words(drawings.getFirst())).contains("1", "1 rise", "100 %", "25 %", "−50 %", "0 %", "0 s");
        assertThat(words(drawings.get(1))).contains("from frame 144, 01:00:06:00", "3 wait: warm/cool");
    }

    @Test
    void withoutMusic_rowsAreSeconds() {
        List<Drawing> drawings = draw("", 42);
        assertThat(drawings).extracting(Drawing::id).containsExactly("timeline.film.0", "timeline.film.144");
        assertThat(words(drawings.getFirst())).doesNotContain("1");
    }

    @Test
    void sounds_standWhereTheyAre_andEveryLetterIsOnTheSheet() {
        List<Drawing> drawings = draw(
                ", tempo: 120 bpm", 60, new Heard("whoosh", 100, 119, 130), new Heard("a long low hum", 0, 0, 210));
        assertThat(words(drawings.get(0))).contains("whoosh", "a long low hum");
        assertThat(words(drawings.get(1))).contains("a long low hum").doesNotContain("whoosh");
        Pattern places = Pattern.compile("<text[^>]* x=\"([0-9.]+)\" y=\"([0-9.]+)\"");
        int letters = 0;
        for (Drawing drawing : drawings) {
            Matcher place = places.matcher(drawing.toSvg());
            while (place.find()) {
                assertThat(Double.parseDouble(place.group(1))).isBetween(0.0, 700.0);
                assertThat(Double.parseDouble(place.group(2))).isBetween(0.0, (double) drawing.heightPixels());
                letters++;
            }
        }
        assertThat(letters).isGreaterThan(40);
    }

    /// A tin in the middle of each entry's picture; what stands beside the picture isn't drawn over its edge.
    @Test
    void entries_showTheirFirstFrame_asFarAsThePictureGoes() {
        String text = PLAN.formatted("", 90)
                .replace("kit:", "things: {tin: {diameter: 76 mm, height: 96 mm, body: opaque}}\nkit:")
                .replace(
                        "  wait:\n    camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm]}",
                        "  wait:\n    camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], aim: ahead}\n"
                                + "    place: {hero: {thing: tin, at: [200 mm, 0 mm]}}");
        Plan plan = Plans.read(text.getBytes(UTF_8), "p.yaml").plan().orElseThrow();
        String svg = TimelineRuler.draw(Solve.film(plan), Timeline.of(plan), List.of())
                .get(1)
                .toSvg();
        String pictures = svg.substring(svg.indexOf("pictures"), svg.indexOf("speed\""));
        Matcher frame = Pattern.compile("<rect x=\"([0-9.]+)\"[^>]* width=\"([0-9.]+)\"")
                .matcher(pictures);
        assertThat(frame.find()).isTrue();
        double right = Double.parseDouble(frame.group(1)) + Double.parseDouble(frame.group(2));
        Matcher tin = Pattern.compile("<path d=\"M([^Z]*)Z\"").matcher(pictures);
        assertThat(tin.find()).isTrue();
        double most = Pattern.compile("([0-9.]+) [0-9.]+")
                .matcher(tin.group(1))
                .results()
                .mapToDouble(spot -> Double.parseDouble(spot.group(1)))
                .max()
                .orElseThrow();
        assertThat(most).isCloseTo(right, org.assertj.core.data.Offset.offset(0.02));
    }

    /// A quarter of a second is narrower than a picture: the entries after it keep theirs.
    @Test
    void anEntryNarrowerThanItsPicture_hasNone() {
        String text = PLAN.formatted("", 24).replace("cut: [", "cut: [{shot: wait, frames: 6}, ");
        Plan plan = Plans.read(text.getBytes(UTF_8), "p.yaml").plan().orElseThrow();
        Drawing row = TimelineRuler.draw(Solve.film(plan), Timeline.of(plan), List.of())
                .getFirst();
        String svg = row.toSvg();
        String pictures = svg.substring(svg.indexOf("pictures"), svg.indexOf("speed\""));
        assertThat(Pattern.compile("<rect ").matcher(pictures).results().count())
                .isEqualTo(1);
        assertThat(words(row)).contains("2 rise");
    }

    /// A minute is drawn in ten rows, whatever its shots.
    @Test
    void aMinute_isAsManyRowsAsItTakes() {
        assertThat(draw("", 24 * 60 - 150)).hasSize(10);
    }
}
