package plumeline.clip;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumeline.quantity.FrameRate;
import plumeline.tidy.Outside;

/// Films read by a program that is not ours: counts, rates, lengths, tags, and every frame's picture.
@Outside(
        source = "Debian's ffmpeg and ffprobe, another build of the library than ours",
        place = "run on each film",
        kind = "program")
final class MovieOutsideTest {
    private static final int FRAMES = 50;

    @TempDir
    Path folder;

    @Test
    void everyRate_isExact() throws IOException {
        List<FrameRate> rates = List.of(
                new FrameRate(24, 1),
                new FrameRate(24_000, 1001),
                new FrameRate(25, 1),
                new FrameRate(30_000, 1001),
                new FrameRate(50, 1),
                new FrameRate(60_000, 1001),
                new FrameRate(25, 2),
                new FrameRate(12_345_679, 500_000));
        int compared = 0;
        for (FrameRate rate : rates) {
            Path file = MadeMovie.write(folder.resolve("film.mp4"), rate, FRAMES, Optional.empty());
            Map<String, String> shown = FilmProbe.track(file, "v:0");
            String text = rate.numerator() + "/" + rate.denominator();
            assertThat(shown).containsEntry("avg_frame_rate", text).containsEntry("nb_read_frames", "" + FRAMES);
            assertThat(shown).containsEntry("start_pts", "0");
            long ticks = Long.parseLong(shown.get("time_base").substring(2));
            assertThat(Long.parseLong(shown.get("duration_ts")) * rate.numerator())
                    .as("length at %s", text)
                    .isEqualTo(FRAMES * rate.denominator() * ticks);
            Map<String, String> heard = FilmProbe.track(file, "a:0");
            double seconds = rate.secondsOf(FRAMES);
            assertThat(Double.parseDouble(heard.get("duration"))).isBetween(seconds - 1e-3, seconds + 1e-3);
            assertThat(Double.parseDouble(heard.get("start_time"))).isZero();
            compared++;
        }
        assertThat(compared).isEqualTo(8);
    }

    @Test
    void tags_areSaid() throws IOException {
        Path file = MadeMovie.write(
                folder.resolve("film.mp4"), new FrameRate(30_000, 1001), 10, Optional.of("09:59:58;12"));
        Map<String, String> shown = FilmProbe.track(file, "v:0");
        assertThat(shown)
                .containsEntry("codec_name", "h264")
                .containsEntry("profile", "Constrained Baseline")
                .containsEntry("pix_fmt", "yuv420p")
                .containsEntry("color_range", "tv")
                .containsEntry("color_space", "bt709")
                .containsEntry("color_transfer", "bt709")
                .containsEntry("color_primaries", "bt709")
                .containsEntry("chroma_location", "left")
                .containsEntry("TAG:timecode", "09:59:58;12")
                .containsEntry("TAG:title", "Walk ü");
    }

    @Test
    void everyFrame_isThePictureThatWentIn() throws IOException {
        Path file = MadeMovie.write(folder.resolve("film.mp4"), new FrameRate(24, 1), FRAMES, Optional.empty());
        byte[] out = FilmProbe.colours(file);
        int size = MadeMovie.WIDTH * MadeMovie.HEIGHT;
        assertThat(out).hasSize(3 * size * FRAMES);
        int compared = 0;
        for (int frame = 0; frame < FRAMES; frame++) {
            int[] picture = MadeMovie.picture(frame);
            double sum = 0;
            for (int i = 0; i < size; i++) {
                for (int c = 0; c < 3; c++) {
                    int is = out[3 * (frame * size + i) + c] & 255;
                    sum += Math.abs(is - (picture[i] >> 16 - 8 * c & 255));
                }
            }
            assertThat(sum / (3 * size)).as("frame %d", frame).isLessThan(1.5);
            compared++;
        }
        assertThat(compared).isEqualTo(FRAMES);
    }
}
