package plumeline.cut.cue;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import plumeline.plan.Plans;
import plumeline.solve.FilmAnswer;
import plumeline.solve.Solve;
import plumeline.tidy.Outside;
import plumeline.timeline.Timeline;

/// The cue sheet and the guide track of a film at 29.97, read back by readers that know nothing of the writers.
@Outside(
        source = "RFC 4180, section 2; W3C WebVTT, file structure; javax.sound.sampled of the JDK; projection by hand",
        place = "readers of the grammars, written for this test; pan = 2 f (x − x₀) / (depth · width)",
        kind = "standard")
final class CueSheetOutsideTest {
    /// The tin stands 100 mm to camera left and the camera slides 200 mm to the right; both deliveries are centred.
    private static final String PLAN = """
            plumeline: 1
            film: {title: Cues, rate: 29.97 fps, timecode: drop, tempo: 120 bpm, first_beat: 0.25 s}
            deliver: {square: {ratio: "1:1"}, wide: {ratio: "16:9"}}
            things:
              tin: {diameter: 40 mm, height: 96 mm, body: opaque}
              box: {width: 60 mm, height: 60 mm, depth: 60 mm}
            kit:
              cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 1920 px}, modes: [{rate: 29.97 fps}]}}
              lenses: {fifty: {focal_length: 50 mm}}
              machines: {slider: {travel: 600 mm, speed: 80 mm/s}}
            shots:
              slid:
                camera: {body: main, lens: fifty, at: [0 mm, -1000 mm, 48 mm], aim: ahead}
                place: {hero: {thing: tin, at: [-100 mm, 0 mm]}}
                moves: {slide: {machine: slider, carries: camera, by: [200 mm, 0 mm], in: 3 s, profile: even}}
              ramped:
                camera: {body: main, lens: fifty, at: [0 mm, -1000 mm, 48 mm], aim: ahead}
                place: {hero: {thing: tin, at: [150 mm, 0 mm]}, other: {thing: box, at: [-150 mm, 0 mm]}}
                speed: [[0 frames, 100 %], [30 frames, 100 %], [60 frames, 20 %], [89 frames, 20 %]]
            cut:
              - {shot: slid, frames: 90}
              - {shot: ramped, frames: 90}
            cues:
              - {sound: "pour, slow", sync: {shot: slid, when: 45 frames}, lead: 30 frames, lasts: 2.002 s, layer: wet}
              - {sound: 'a "soft" click --> on', sync: {shot: ramped, when: start}, lead: 0.2 s, lasts: 0.5 s, of: hero}
              - {sound: whoosh & air <low>, sync: {shot: ramped, when: 40 frames}, lead: 20 frames}
              - {sound: hiss, sync: {shot: slid, when: start}, lead: 3 frames, lasts: 1 s}
            """;

    private static final double BEHIND = 50 * 980 / 930.0;

    private static FilmAnswer film;
    private static Timeline timeline;

    @BeforeAll
    static void solve() {
        Plans.Reading reading = Plans.read(PLAN.getBytes(UTF_8), "p.yaml");
        assertThat(reading.problems()).isEmpty();
        film = Solve.film(reading.plan().orElseThrow());
        timeline = Timeline.of(film.plan());
    }

    /// Rows of fields: a field is plain, or in quotes in which a doubled quote stands for one; CRLF ends a row.
    private static List<List<String>> readCsv(String text) {
        List<List<String>> rows = new ArrayList<>();
        Pattern field = Pattern.compile("\\G(?:\"((?:[^\"]|\"\")*)\"|([^\",\r\n]*))(,|\r\n)");
        Matcher matcher = field.matcher(text);
        List<String> row = new ArrayList<>();
        int end = 0;
        while (end < text.length() && matcher.find()) {
            String quoted = matcher.group(1);
            row.add(quoted != null ? quoted.replace("\"\"", "\"") : matcher.group(2));
            if (!matcher.group(3).equals(",")) {
                rows.add(row);
                row = new ArrayList<>();
            }
            end = matcher.end();
        }
        assertThat(end).isEqualTo(text.length());
        return rows;
    }

    private static List<String> row(String sound) {
        return readCsv(CueSheet.of(film, timeline).csv()).stream()
                .filter(row -> row.get(1).startsWith(sound))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void csv_holdsEverySoundInOrder_withItsFramesLabelsAndSamples() {
        List<List<String>> rows = readCsv(CueSheet.of(film, timeline).csv());
        assertThat(rows).hasSize(5).allSatisfy(row -> assertThat(row).hasSize(19));
        assertThat(rows.stream().skip(1).map(row -> row.get(1)))
                .containsExactly("hiss", "pour, slow", "a \"soft\" click --> on", "whoosh & air <low>");
        // 30 000/1001 frames a second: frame n begins at 1601.6 n. The film begins at 01:00:00;00.
        assertThat(row("pour").subList(2, 15))
                .containsExactly(
                        "wet",
                        "slid",
                        "",
                        "hero",
                        "01:00:00;15",
                        "15",
                        "24024",
                        "01:00:01;15",
                        "45",
                        "72072",
                        "01:00:02;15",
                        "75",
                        "120120");
        // 0.2 s before frame 90 are 9600 samples, between two frames.
        assertThat(row("a ").subList(6, 15))
                .containsExactly(
                        "01:00:02;24",
                        "84",
                        String.valueOf(144_144 - 9600),
                        "01:00:03;00",
                        "90",
                        "144144",
                        "01:00:03;09",
                        "99",
                        String.valueOf(144_144 - 9600 + 24_000));
        // Heard until the entry ends; two things are there and none is named.
        assertThat(row("whoosh").subList(3, 6)).containsExactly("ramped", "", "");
        assertThat(row("whoosh").get(13)).isEqualTo("180");
        assertThat(row("hiss").subList(6, 9)).containsExactly("", "-3", "-4805");
        assertThat(rows.stream().map(List::getLast))
                .containsExactly("out_is", "written", "written", "written", "assumed");
        assertThat(CueSheet.of(film, timeline).notes())
                .containsExactly("The sound hiss begins 3 frames before the film, which lacks that part.");
    }

    /// By similar triangles: a square delivery is as wide as high, 20.25 mm of the sensor, which lies behind a lens
    /// that is focused on the tin's front at 0.98 m: at 50 · 980 / (980 − 50) mm.
    @Test
    void pan_followsTheThingOnTheScreen() {
        int compared = 0;
        for (String[] one : new String[][] {{"pour", "15", "15"}, {"pour", "45", "16"}, {"pour", "75", "17"}}) {
            double travelled = 200 * Double.parseDouble(one[1]) / 29.97 / 3;
            double pan = 100 * 2 * BEHIND * (-100 - travelled) / 1000 / 20.25;
            assertThat(Double.parseDouble(row(one[0]).get(Integer.parseInt(one[2]))))
                    .isCloseTo(Math.max(-100, pan), within(0.8));
            compared++;
        }
        assertThat(compared).isEqualTo(3);
        // Before its shot it is where it will be.
        String right = String.valueOf(Math.round(100 * 2 * BEHIND * 150 / 1000 / 20.25));
        assertThat(row("a ").subList(15, 18)).containsExactly(right, right, right);
        assertThat(row("whoosh").subList(15, 18)).containsExactly("0", "0", "0");
    }

    @Test
    void vtt_keepsToTheGrammar() {
        String text = CueSheet.of(film, timeline).webVtt();
        String[] blocks = text.split("\n\n");
        assertThat(blocks[0]).isEqualTo("WEBVTT");
        Pattern timing = Pattern.compile(
                "(\\d{2,}):([0-5]\\d):([0-5]\\d)\\.(\\d{3}) --> (\\d{2,}):([0-5]\\d):([0-5]\\d)" + "\\.(\\d{3})");
        long before = 0;
        for (int i = 1; i < blocks.length; i++) {
            String[] lines = blocks[i].strip().split("\n");
            assertThat(lines).hasSize(3);
            assertThat(lines[0]).doesNotContain("-->");
            Matcher matcher = timing.matcher(lines[1]);
            assertThat(matcher.matches()).as(lines[1]).isTrue();
            long begin = milliseconds(matcher, 1);
            long end = milliseconds(matcher, 5);
            assertThat(begin).isGreaterThanOrEqualTo(before);
            assertThat(end).isGreaterThan(begin);
            assertThat(lines[2]).doesNotContain("-->").doesNotContain("<").doesNotContain(">");
            assertThat(lines[2].replaceAll("&(amp|lt|gt);", "")).doesNotContain("&");
            before = begin;
        }
        assertThat(blocks).hasSize(5);
        assertThat(blocks[1]).contains("00:00:00.000 --> 00:00:00.900");
        // Sample 24024 is 500.5 ms; 120120 is 2502.5 ms: halves go up.
        assertThat(blocks[2]).contains("00:00:00.501 --> 00:00:02.503\npour, slow [wet]: slid, hero; sync 01:00:01;15");
    }

    private static long milliseconds(Matcher matcher, int from) {
        return ((Long.parseLong(matcher.group(from)) * 60 + Long.parseLong(matcher.group(from + 1))) * 60
                                + Long.parseLong(matcher.group(from + 2)))
                        * 1000
                + Long.parseLong(matcher.group(from + 3));
    }

    /// Read by the JDK: as long as the film, ticks at the cut, clicks on the beats, louder where it is faster.
    @Test
    void guide_hasWhatTheFilmHas() throws IOException, UnsupportedAudioFileException {
        byte[] file = GuideTrack.of(film, timeline).wav();
        double[] left;
        try (AudioInputStream in = AudioSystem.getAudioInputStream(new ByteArrayInputStream(file))) {
            assertThat(in.getFormat().getSampleSizeInBits()).isEqualTo(24);
            assertThat(in.getFormat().getSampleRate()).isEqualTo(48_000);
            assertThat(in.getFrameLength()).isEqualTo(180 / 5 * 8008);
            byte[] bytes = in.readAllBytes();
            left = new double[180 / 5 * 8008];
            for (int i = 0; i < left.length; i++) {
                int value = (bytes[6 * i] & 0xFF) | (bytes[6 * i + 1] & 0xFF) << 8 | bytes[6 * i + 2] << 16;
                left[i] = value / 8_388_608.0;
            }
        }
        // Beat 10 at 0.25 s + 5 s, within the slow part of the ramp.
        int beat = 12_000 + 10 * 24_000;
        assertThat(power(left, beat, beat + 960)).isGreaterThan(4 * power(left, beat - 4800, beat - 2400));
        // Between beats: the ramp while it is fast, against its end, a fifth as fast, where the cue is heard as well
        // and is
        // 4 dB louder: 0.4 / (1.4 / 25) = 7.
        double ratio = power(left, 158_500, 175_000) / power(left, 278_500, 287_000);
        assertThat(ratio).isBetween(4.0, 12.0);
        assertThat(GuideTrack.of(film, timeline).wav()).isEqualTo(file);
    }

    private static double power(double[] row, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += row[i] * row[i];
        }
        return sum / (to - from);
    }
}
