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

    /// What moves leaves nothing behind: no code is far off what was drawn, however strong the colour.
    @Test
    void saturatedRed_leavesNoStreaks() throws IOException {
        Path file = MadeMovie.write(
                folder.resolve("red.mp4"), new FrameRate(24, 1), FRAMES, Optional.empty(), MadeMovie::red);
        byte[] codes = FilmProbe.codes(file);
        int size = MadeMovie.WIDTH * MadeMovie.HEIGHT;
        assertThat(codes).hasSize(size * 3 / 2 * FRAMES);
        int compared = 0;
        for (int frame = 0; frame < FRAMES; frame++) {
            double[][] drawn = planes(MadeMovie.red(frame));
            int at = frame * size * 3 / 2;
            double sum = 0;
            for (double[] plane : drawn) {
                for (double wanted : plane) {
                    double off = Math.abs((codes[at++] & 255) - wanted);
                    assertThat(off).as("frame %d", frame).isLessThan(17);
                    sum += off;
                }
            }
            assertThat(sum / (size * 1.5)).as("frame %d", frame).isLessThan(1);
            compared++;
        }
        assertThat(compared).isEqualTo(FRAMES);
    }

    /// Codes by ITU-R BT.709, colour differences at the left of their two pixels, between their two rows.
    private static double[][] planes(int[] packed) {
        int across = MadeMovie.WIDTH;
        double[][] planes = {new double[packed.length], new double[packed.length / 4], new double[packed.length / 4]};
        for (int i = 0; i < packed.length; i++) {
            double red = (packed[i] >> 16 & 255) / 255.0;
            double green = (packed[i] >> 8 & 255) / 255.0;
            double blue = (packed[i] & 255) / 255.0;
            double bright = 0.2126 * red + 0.7152 * green + 0.0722 * blue;
            planes[0][i] = 16 + 219 * bright;
            int x = i % across;
            int row = i / across / 2 * (across / 2);
            for (int to = -1; to <= 1; to++) {
                // An edge pixel counts for the one beyond it.
                int even = x + to < 0 ? 0 : x + to;
                if (even % 2 == 0 && even < across) {
                    double share = (to == 0 ? 2 : 1) / 8.0;
                    planes[1][row + even / 2] += share * 224 * (blue - bright) / 1.8556;
                    planes[2][row + even / 2] += share * 224 * (red - bright) / 1.5748;
                }
            }
        }
        for (int i = 0; i < packed.length / 4; i++) {
            planes[1][i] += 128;
            planes[2][i] += 128;
        }
        return planes;
    }
}
