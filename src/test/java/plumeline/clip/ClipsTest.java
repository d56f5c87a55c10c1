package plumeline.clip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumeline.sound.Level;
import plumeline.sound.Loudness;
import plumeline.sound.Sound;
import plumeline.sound.Speaker;

/// Clips that the codec library has made are read as the samples that went in.
final class ClipsTest {
    private static final long MOST = 1 << 24;

    @TempDir
    Path folder;

    private static float[] tone(int count, double hertz, double peak) {
        float[] row = new float[count];
        for (int i = 0; i < count; i++) {
            row[i] = (float) (peak * Math.sin(2 * Math.PI * hertz * i / 48_000));
        }
        return row;
    }

    private static Sound read(Path file) {
        return switch (Clips.sound(file, MOST)) {
            case Clips.Reading.Read(Sound sound) -> sound;
            case Clips.Reading.Refused refused -> throw new AssertionError(refused);
        };
    }

    private static String refused(Path file) {
        return ((Clips.Reading.Refused) Clips.sound(file, MOST)).given();
    }

    @Test
    void aacInMp4_isAsLoudAsWhatWentIn() {
        float[] row = tone(96_000, 997, 0.1);
        Sound sound = read(MadeClip.write(folder.resolve("mix ü.mp4"), 48_000, 1, row, row));
        assertThat(sound.samplesPerSecond()).isEqualTo(48_000);
        assertThat(sound.speakers()).containsExactly(Speaker.LEFT, Speaker.RIGHT);
        assertThat(sound.samples()).isBetween(96_000L, 96_000L + 1024);
        Level.At loud = (Level.At) Loudness.of(sound).integrated();
        assertThat(loud.decibels()).isEqualTo(-20, within(0.2));
    }

    @Test
    void samplesInMov_areTheSame() {
        float[] left = tone(5000, 440, 0.5);
        float[] right = tone(5000, 3000, 0.25);
        Sound sound = read(MadeClip.write(folder.resolve("mix.mov"), 48_000, 1, left, right));
        assertThat(sound.samples()).isEqualTo(5000);
        double[][] rows = new double[2][5000];
        sound.read(0, 5000, rows);
        for (int i = 0; i < 5000; i++) {
            assertThat(rows[0][i]).isEqualTo(left[i], within(5e-5));
            assertThat(rows[1][i]).isEqualTo(right[i], within(5e-5));
        }
    }

    @Test
    void surroundInMov_keepsItsPlaces() {
        float[][] rows = new float[6][4800];
        rows[3] = tone(4800, 60, 0.5);
        Sound sound = read(MadeClip.write(folder.resolve("mix.mov"), 48_000, 1, rows));
        assertThat(sound.speakers().get(3)).isEqualTo(Speaker.LOW);
        assertThat(sound.speakers()).hasSize(6);
    }

    @Test
    void refusals_sayWhatIsThere() throws IOException {
        Path text = Files.writeString(folder.resolve("notes.mp4"), "not a clip at all\n".repeat(20));
        assertThat(refused(text)).isEqualTo("which is no WAV file and no clip that can be read here");
        assertThat(refused(Files.createFile(folder.resolve("empty.mov"))))
                .isEqualTo("which is no WAV file and no clip that can be read here");
        float[] row = tone(5000, 440, 0.5);
        assertThat(refused(MadeClip.write(folder.resolve("two.mov"), 48_000, 2, row)))
                .isEqualTo("a clip with 2 tracks of sound, of which none is said to be the mix");
        Path long1 = MadeClip.write(folder.resolve("long.mov"), 48_000, 1, row, row);
        assertThat(((Clips.Reading.Refused) Clips.sound(long1, 9999)).given())
                .isEqualTo("a clip with more sound than is metered at once");
    }

    /// A playlist would have other files or addresses fetched.
    @Test
    void playlists_areNotFollowed() throws IOException {
        float[] row = tone(5000, 440, 0.5);
        Path inner = MadeClip.write(folder.resolve("inner.mov"), 48_000, 1, row);
        Path list = Files.writeString(
                folder.resolve("list.m3u8"),
                "#EXTM3U\n#EXT-X-TARGETDURATION:1\n#EXTINF:1,\n" + inner + "\n#EXT-X-ENDLIST\n");
        assertThat(refused(list)).isEqualTo("which is no WAV file and no clip that can be read here");
        Path concat = Files.writeString(folder.resolve("list.txt"), "ffconcat version 1.0\nfile inner.mov\n");
        assertThat(refused(concat)).isEqualTo("which is no WAV file and no clip that can be read here");
    }

    @Test
    void damagedClips_areReadAsFarAsTheyGo_orRefused() throws IOException {
        byte[] good = Files.readAllBytes(MadeClip.write(folder.resolve("mix.mp4"), 48_000, 1, tone(20_000, 997, 0.1)));
        Random chance = new Random(3);
        for (int n = 0; n < 60; n++) {
            byte[] bytes = java.util.Arrays.copyOf(good, 40 + chance.nextInt(good.length - 40));
            for (int k = 0; k < 3; k++) {
                bytes[chance.nextInt(bytes.length)] = (byte) chance.nextInt(256);
            }
            Path file = Files.write(folder.resolve("damaged.mp4"), bytes);
            assertThat(Clips.sound(file, MOST)).isNotNull();
        }
    }
}
