package plumeline.clip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumeline.quantity.FrameRate;

/// Films that are written read back as what went in.
final class MovieTest {
    private static final FrameRate FILM = new FrameRate(24_000, 1001);

    @TempDir
    Path folder;

    private static PictureTrack open(Path file) {
        return switch (Clips.pictures(file)) {
            case Clips.Opening.Open(PictureTrack track) -> track;
            case Clips.Opening.Refused refused -> throw new AssertionError(refused);
        };
    }

    /// Mean and largest difference of channels, away from edges.
    private static double difference(int[] a, int[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            for (int shift = 0; shift <= 16; shift += 8) {
                sum += Math.abs((a[i] >> shift & 255) - (b[i] >> shift & 255));
            }
        }
        return sum / (3 * a.length);
    }

    @Test
    void frames_comeBackInTheirPlaces_withTheirColours() throws IOException {
        Path file = MadeMovie.write(folder.resolve("walk ü.mp4"), FILM, 40, Optional.of("01:00:00:00"));
        try (PictureTrack track = open(file)) {
            assertThat(track.facts())
                    .isEqualTo(new PictureTrack.Facts(320, 180, FILM, "bt709", "bt709", "bt709", "tv"));
            assertThat(track.countFrames()).isEqualTo(40);
            for (int number : new int[] {0, 1, 7, 39, 3, 3, 20}) {
                int[] read = track.find(number).orElseThrow();
                assertThat(difference(read, MadeMovie.picture(number)))
                        .as("frame %d", number)
                        .isLessThan(1.5);
                assertThat(difference(read, MadeMovie.picture(number + 1))).isGreaterThan(2);
            }
            assertThat(track.find(40)).isEmpty();
            int[] fields = track.find(5).orElseThrow();
            for (int[] place : new int[][] {{50, 0xC03020}, {160, 0x30A040}, {270, 0x2840B0}}) {
                int is = fields[150 * 320 + place[0]];
                for (int shift = 0; shift <= 16; shift += 8) {
                    assertThat(is >> shift & 255)
                            .isBetween((place[1] >> shift & 255) - 3, (place[1] >> shift & 255) + 3);
                }
            }
        }
        plumeline.sound.Sound sound = ((Clips.Reading.Read) Clips.sound(file, 1 << 24)).sound();
        assertThat(sound.samples()).isBetween(80_080L, 80_080L + 2048);
    }

    @Test
    void sameFilm_hasTheSameBytes() throws IOException {
        Path one = MadeMovie.write(folder.resolve("1.mp4"), FILM, 12, Optional.empty());
        Path two = MadeMovie.write(folder.resolve("2.mp4"), FILM, 12, Optional.empty());
        assertThat(Files.mismatch(one, two)).isEqualTo(-1);
    }

    @Test
    void indexComesFirst() throws IOException {
        String bytes = Files.readString(
                MadeMovie.write(folder.resolve("1.mp4"), FILM, 5, Optional.empty()),
                java.nio.charset.StandardCharsets.ISO_8859_1);
        assertThat(bytes.indexOf("moov")).isPositive().isLessThan(bytes.indexOf("mdat"));
    }

    @Test
    void fullDisk_isOnePlainLine() {
        Path full = Path.of("/dev/full");
        if (Files.exists(full)) {
            assertThatThrownBy(() -> MadeMovie.write(full, FILM, 60, Optional.empty()))
                    .isInstanceOf(IOException.class)
                    .hasMessage("/dev/full can't be written: No space left on device");
        }
        assertThatThrownBy(() -> MadeMovie.write(folder.resolve("no/where.mp4"), FILM, 2, Optional.empty()))
                .isInstanceOf(IOException.class)
                .hasMessageEndingWith("where.mp4 can't be written: No such file or directory");
    }

    @Test
    void form_refusesOddSidesAndEndlessRates() {
        assertThatThrownBy(() -> new Movie.Form(321, 180, FILM, Optional.empty(), ""))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(Movie.Form.isSide(8)).isFalse();
        assertThat(Movie.Form.isCounted(new FrameRate(23_976_024L * 1000, 1_000_003)))
                .isFalse();
    }

    @Test
    void whatIsNoPicture_isRefused() throws IOException {
        Path text = Files.writeString(folder.resolve("notes.png"), "no picture\n".repeat(30));
        assertThat(((Clips.Opening.Refused) Clips.pictures(text)).given())
                .isEqualTo("which is no clip and no picture that can be read here");
        float[] row = new float[5000];
        Path sound = MadeClip.write(folder.resolve("sound.mov"), 48_000, 1, row);
        assertThat(((Clips.Opening.Refused) Clips.pictures(sound)).given()).isEqualTo("a clip without pictures");
    }

    @Test
    void singlePicture_isOneFrame_exact() throws IOException {
        var image = new java.awt.image.BufferedImage(31, 17, java.awt.image.BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < 31 * 17; i++) {
            image.setRGB(i % 31, i / 31, i * 7919);
        }
        Path file = folder.resolve("still.png");
        javax.imageio.ImageIO.write(image, "png", file.toFile());
        try (PictureTrack track = open(file)) {
            assertThat(track.countFrames()).isEqualTo(1);
            assertThat(track.facts().isLimited()).isFalse();
            int[] read = track.find(0).orElseThrow();
            for (int i = 0; i < read.length; i++) {
                assertThat(read[i]).isEqualTo(image.getRGB(i % 31, i / 31) & 0xFFFFFF);
            }
        }
    }
}
