package plumeline.cli.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import plumeline.assemble.ReadCounter;
import plumeline.cli.OutsideTool;
import plumeline.clip.FilmProbe;
import plumeline.desk.Outcome;
import plumeline.tidy.Outside;

/// Animatics read back by programs that are not ours: frame count, rate, length, tags, sound, and the counters of every
/// frame.
@Outside(
        source = "Debian's ffmpeg and ffprobe, another build of the library than ours; labels counted here by hand",
        place = "run on each film",
        kind = "program")
final class AnimaticOutsideTest extends AnimaticTyped {
    private static final int WIDTH = 320;
    private static final int HEIGHT = 180;

    /// A film's rate as a plan has it, as a fraction, and how its labels count.
    private record Case(String rate, int above, int below, int labels, String film) {}

    /// A label counted one by one, drop-frame by its rule.
    private static List<String> labels(int perSecond, String start, int count) {
        boolean drops = start.indexOf(';') > 0;
        String[] parts = start.split("[:;]", -1);
        int[] now = new int[4];
        for (int i = 0; i < 4; i++) {
            now[i] = Integer.parseInt(parts[i]);
        }
        List<String> labels = new ArrayList<>();
        for (int n = 0; n < count; n++) {
            labels.add("%02d:%02d:%02d%s%02d".formatted(now[0], now[1], now[2], drops ? ";" : ":", now[3]));
            if (++now[3] == perSecond) {
                now[3] = 0;
                if (++now[2] == 60) {
                    now[2] = 0;
                    now[1]++;
                    now[3] = drops && now[1] % 10 != 0 ? 2 : 0;
                }
            }
        }
        return labels;
    }

    @Test
    void everyFrameCounts_atEveryRate() throws IOException {
        List<Case> cases = List.of(
                new Case("24 fps", 24, 1, 24, "starts: \"10:00:00:00\""),
                new Case("23.976 fps", 24_000, 1001, 24, "papers: mm"),
                new Case("29.97 fps", 30_000, 1001, 30, "timecode: drop, starts: \"00:00:59;00\""),
                new Case("25 fps", 25, 1, 25, "papers: mm"));
        List<String> starts = List.of("10:00:00:00", "01:00:00:00", "00:00:59;00", "01:00:00:00");
        int compared = 0;
        for (int i = 0; i < cases.size(); i++) {
            Case each = cases.get(i);
            Files.writeString(
                    plan,
                    PLAN.replace("film: {rate: 24 fps,", "film: {rate: " + each.rate() + ", " + each.film() + ","));
            assertThat(run("--size", WIDTH + "x" + HEIGHT, "--burn-in"))
                    .as(said())
                    .isEqualTo(Outcome.ANSWERED);
            Path file = folder.resolve("film.mp4");
            Map<String, String> shown = FilmProbe.track(file, "v:0");
            assertThat(shown)
                    .containsEntry("nb_read_frames", "50")
                    .containsEntry("avg_frame_rate", each.above() + "/" + each.below())
                    .containsEntry("r_frame_rate", each.above() + "/" + each.below())
                    .containsEntry("width", "" + WIDTH)
                    .containsEntry("height", "" + HEIGHT)
                    .containsEntry("color_primaries", "bt709")
                    .containsEntry("color_transfer", "bt709")
                    .containsEntry("color_space", "bt709")
                    .containsEntry("color_range", "tv")
                    .containsEntry("TAG:timecode", starts.get(i));
            long ticks = Long.parseLong(shown.get("time_base").substring(2));
            assertThat(Long.parseLong(shown.get("duration_ts")) * each.above()).isEqualTo(50L * each.below() * ticks);
            double seconds = 50.0 * each.below() / each.above();
            Map<String, String> heard = FilmProbe.track(file, "a:0");
            assertThat(Double.parseDouble(heard.get("duration")))
                    .isCloseTo(seconds, within((double) each.below() / each.above()));
            assertThat(Double.parseDouble(heard.get("start_time"))).isZero();
            assertThat(heard).containsEntry("channels", "2").containsEntry("sample_rate", "48000");
            compared += readCounters(file, WIDTH, HEIGHT, labels(each.labels(), starts.get(i), 50));
        }
        assertThat(compared).isEqualTo(200);
    }

    private static int readCounters(Path file, int width, int height, List<String> labels) {
        byte[] bright = FilmProbe.brightness(file);
        assertThat(bright).hasSize(width * height * labels.size());
        for (int frame = 0; frame < labels.size(); frame++) {
            int at = frame * width * height;
            assertThat(ReadCounter.lines((x, y) -> bright[at + y * width + x] & 255, width, height))
                    .as("%d x %d, frame %d", width, height, frame)
                    .containsExactly("%06d".formatted(frame), labels.get(frame));
        }
        return labels.size();
    }

    /// Narrow films too: the timecode is broken, then squares are single pixels, and still each is read.
    @Test
    void everyFrameCounts_atEverySize() throws IOException {
        int compared = 0;
        for (String size : List.of("64x36", "40x32", "64x114", "90x160", "90x50", "180x320", "180x102", "360x640")) {
            Path file = folder.resolve(size + ".mp4");
            assertThat(run("--size", size, "--burn-in", "--out", file.toString()))
                    .as(said())
                    .isEqualTo(Outcome.ANSWERED);
            int across = size.indexOf('x');
            int width = Integer.parseInt(size.substring(0, across));
            int height = Integer.parseInt(size.substring(across + 1));
            compared += readCounters(file, width, height, labels(24, "01:00:00:00", 50));
        }
        assertThat(compared).isEqualTo(400);
        assertThat(run("--size", "32x18", "--burn-in")).isEqualTo(Outcome.ANSWERED);
        assertThat(said()).contains("aren't burnt in: 32x18 is too small for them; 40x32 is the least.");
    }

    /// A clip as an overlay, in limited range with its black over the range's: taken off, nothing is lifted.
    @Test
    void overlayClip_isLaidByScreen_blackTakenOff() throws IOException {
        OutsideTool.run(
                OutsideTool.find("ffmpeg", "ffmpeg"),
                "-v",
                "error",
                "-f",
                "lavfi",
                "-i",
                "color=c=0x202020:s=64x36:r=24:d=1,format=yuv444p",
                "-colorspace",
                "bt709",
                "-color_range",
                "tv",
                "-vf",
                "scale=out_color_matrix=bt709:out_range=tv",
                "-c:v",
                "ffv1",
                folder.resolve("grey.mkv").toString());
        Files.writeString(plan, PLAN);
        assertThat(run("--size", "96x54", "--no-titles")).isEqualTo(Outcome.ANSWERED);
        double plain = mean(FilmProbe.brightness(folder.resolve("film.mp4")), 5);
        double lifted = withOverlay("0 %");
        assertThat(withOverlay("12.55 %, range: video")).isCloseTo(plain, within(1.0));
        assertThat(withOverlay("17.05 %")).isCloseTo(plain, within(1.0));
        double grey = 32 / 255.0;
        double below = (plain - 0) / 255;
        assertThat(lifted / 255).isCloseTo(1 - (1 - below) * (1 - grey), within(0.02));
        assertThat(lifted).isGreaterThan(plain + 4);
    }

    private double withOverlay(String black) throws IOException {
        Files.writeString(
                plan,
                PLAN + "overlays: [{overlay: grey, over: {shot: held, when: start}, file: grey.mkv, black: " + black
                        + "}]\n");
        assertThat(run("--size", "96x54", "--no-titles")).as(said()).isEqualTo(Outcome.ANSWERED);
        return mean(FilmProbe.brightness(folder.resolve("film.mp4")), 5);
    }

    private static double mean(byte[] bright, int frame) {
        double sum = 0;
        for (int i = 0; i < 96 * 54; i++) {
            sum += bright[frame * 96 * 54 + i] & 255;
        }
        return sum / (96 * 54);
    }
}
