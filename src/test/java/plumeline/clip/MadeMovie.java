package plumeline.clip;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import plumeline.quantity.FrameRate;
import plumeline.sound.HeldSound;
import plumeline.sound.SampleGrid;
import plumeline.sound.Sound;
import plumeline.sound.Speaker;

/// Films for tests: a block that walks over a ramp of greys between three fields of colour.
final class MadeMovie {
    static final int WIDTH = 320;
    static final int HEIGHT = 180;

    private MadeMovie() {}

    static int[] picture(int frame) {
        int[] packed = new int[WIDTH * HEIGHT];
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                packed[y * WIDTH + x] = pixel(x, y, frame);
            }
        }
        return packed;
    }

    private static int pixel(int x, int y, int frame) {
        if (y >= 60 && y < 100 && x >= 8 * frame % 280 && x < 8 * frame % 280 + 40) {
            return 0xFFFFFF;
        }
        if (y >= 120) {
            return x < 106 ? 0xC03020 : x < 212 ? 0x30A040 : 0x2840B0;
        }
        return 0x010101 * (x * 255 / (WIDTH - 1));
    }

    /// Full red before black and blue: a disc that walks, and thin slanted lines that walk faster.
    static int[] red(int frame) {
        int[] packed = new int[WIDTH * HEIGHT];
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                double from = Math.hypot(x - 96 - 2.3 * frame, y - 90) / 72;
                boolean isLine = Math.floorMod(Math.round(x - 0.7 * y - 3 * frame), 97) < 3;
                int blue = y < 30 ? x * 255 / (WIDTH - 1) : 0;
                packed[y * WIDTH + x] = isLine
                        ? 0xFF0000
                        : from < 1
                                ? (int) (255 * Math.min(1, 1.3 - from)) << 16 | (int) (20 * (1 - from)) << 8 | blue
                                : (x < 40 ? 255 : x * 200 / WIDTH) << 16 | blue;
            }
        }
        return packed;
    }

    private static Sound tone(FrameRate rate, long frames) {
        int samples = (int) new SampleGrid(48_000, rate).sample(frames);
        float[] row = new float[samples];
        for (int i = 0; i < samples; i++) {
            row[i] = (float) (0.1 * Math.sin(2 * Math.PI * 997 * i / 48_000));
        }
        return new HeldSound(48_000, List.of(Speaker.LEFT, Speaker.RIGHT), row, row);
    }

    static Path write(Path file, FrameRate rate, int frames, Optional<String> timecode) throws IOException {
        return write(file, rate, frames, timecode, MadeMovie::picture);
    }

    static Path write(Path file, FrameRate rate, int frames, Optional<String> timecode, IntFunction<int[]> pictures)
            throws IOException {
        var form = new Movie.Form(WIDTH, HEIGHT, rate, timecode, "Walk ü");
        try (Movie movie = Movie.open(file, form, tone(rate, frames))) {
            for (int i = 0; i < frames; i++) {
                movie.add(pictures.apply(i));
            }
            movie.finish();
        }
        return file;
    }
}
