package plumeline.sound;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// What WAV files are read, which are refused and how, and that garbage does no harm.
final class WavTest {
    private static final List<Speaker> FIVE_ONE = Speaker.ofCount(6);

    /// A file of chunks: names and bodies by turns.
    private static byte[] file(String head, Object... chunks) {
        ByteBuffer out = ByteBuffer.allocate(4096).order(ByteOrder.LITTLE_ENDIAN);
        out.put(head.getBytes(ISO_8859_1)).putInt(0).put("WAVE".getBytes(ISO_8859_1));
        for (int i = 0; i < chunks.length; i += 2) {
            byte[] body = (byte[]) chunks[i + 1];
            out.put(((String) chunks[i]).getBytes(ISO_8859_1))
                    .putInt(body.length)
                    .put(body);
            if (body.length % 2 == 1) {
                out.put((byte) 0);
            }
        }
        byte[] bytes = new byte[out.position()];
        out.flip().get(bytes);
        ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).putInt(4, bytes.length - 8);
        return bytes;
    }

    private static byte[] format(int tag, int channels, int rate, int bits) {
        int each = (bits + 7) / 8;
        return ByteBuffer.allocate(16)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putShort((short) tag)
                .putShort((short) channels)
                .putInt(rate)
                .putInt(rate * channels * each)
                .putShort((short) (channels * each))
                .putShort((short) bits)
                .array();
    }

    private static Sound read(byte[] file) {
        return switch (Wav.read(ByteBuffer.wrap(file))) {
            case Wav.Reading.Read read -> read.sound();
            case Wav.Reading.Refused refused -> throw new AssertionError(refused);
        };
    }

    private static Wav.Reading.Refused refused(byte[] file) {
        return (Wav.Reading.Refused) Wav.read(ByteBuffer.wrap(file));
    }

    private static void claim(byte[] file, String chunk, int length) {
        int at = new String(file, ISO_8859_1).indexOf(chunk) + 4;
        ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN).putInt(at, length);
    }

    @Test
    void writtenAndRead_isTheSame_inBothForms_andTheSameBytes() {
        float[][] rows = new float[6][1000];
        Random chance = new Random(5);
        for (float[] row : rows) {
            for (int i = 0; i < row.length; i++) {
                row[i] = chance.nextInt(-1 << 23, 1 << 23) * 0x1p-23F;
            }
        }
        Sound sound = new HeldSound(96_000, FIVE_ONE, rows);
        for (byte[] file : List.of(Wav.write24(sound), Wav.writeFloat(sound))) {
            Sound again = read(file);
            assertThat(again.speakers()).isEqualTo(FIVE_ONE);
            assertThat(again.samplesPerSecond()).isEqualTo(96_000);
            assertThat(again.samples()).isEqualTo(1000);
            double[][] into = new double[6][990];
            again.read(10, 990, into);
            for (int c = 0; c < 6; c++) {
                for (int i = 0; i < 990; i++) {
                    assertThat(into[c][i]).isEqualTo(rows[c][i + 10]);
                }
            }
        }
        assertThat(Wav.write24(sound)).isEqualTo(Wav.write24(sound));
    }

    @Test
    void oddLengths_areFilled() {
        byte[] file = Wav.write24(new HeldSound(48_000, List.of(Speaker.CENTRE), new float[] {0.5F}));
        assertThat(file).hasSize(44 + 4);
        assertThat(read(file).samples()).isEqualTo(1);
    }

    @Test
    void otherChunks_arePassedOver_withAndWithoutTheirFilling() {
        byte[] list = "odd".getBytes(ISO_8859_1);
        byte[] file = file("RIFF", "LIST", list, "fmt ", format(1, 1, 48_000, 16), "cue ", list, "data", new byte[8]);
        assertThat(read(file).samples()).isEqualTo(4);
        String text = new String(file, ISO_8859_1);
        byte[] unfilled = text.replace("odd\0", "odd").getBytes(ISO_8859_1);
        assertThat(unfilled).hasSize(file.length - 2);
        assertThat(read(unfilled).samples()).isEqualTo(4);
    }

    @Test
    void longFiles_takeTheirLengthFromDs64() {
        byte[] ds64 = ByteBuffer.allocate(28)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putLong(100)
                .putLong(6)
                .putLong(3)
                .array();
        byte[] file = file("RF64", "ds64", ds64, "fmt ", format(1, 1, 48_000, 16), "data", new byte[10]);
        claim(file, "data", -1);
        assertThat(read(file).samples()).isEqualTo(3);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -1})
    void lengthsThatCantBe_meanToTheEnd(int claimed) {
        byte[] file = file("RIFF", "fmt ", format(1, 2, 48_000, 16), "data", new byte[20]);
        claim(file, "data", claimed);
        assertThat(read(file).samples()).isEqualTo(5);
    }

    @Test
    void refusals_sayWhatIsThere() {
        assertThat(refused(new byte[0]))
                .isEqualTo(new Wav.Reading.Refused(Wav.Kind.OTHER_FILE, "nothing: it is empty"));
        assertThat(refused("ID3 something else".getBytes(ISO_8859_1)).kind()).isEqualTo(Wav.Kind.OTHER_FILE);
        byte[] cut = file("RIFF", "fmt ", format(1, 2, 48_000, 16), "data", new byte[20]);
        claim(cut, "data", 4000);
        assertThat(refused(cut))
                .isEqualTo(new Wav.Reading.Refused(
                        Wav.Kind.CUT_SHORT, "sound of 4000 bytes by its head, of which 20 are there"));
        assertThat(refused(file("RIFF", "fmt ", format(0x55, 2, 48_000, 16), "data", new byte[20])))
                .isEqualTo(new Wav.Reading.Refused(
                        Wav.Kind.COMPRESSED, "sound that is compressed or coded, format 85 (MP3)"));
        assertThat(refused(file("RIFF", "fmt ", format(1, 0, 48_000, 16), "data", new byte[20]))
                        .kind())
                .isEqualTo(Wav.Kind.DAMAGED);
        assertThat(refused(file("RIFF", "fmt ", format(1, 2, 0, 16), "data", new byte[20]))
                        .found())
                .isEqualTo("2 channels of 0 samples a second");
        assertThat(refused(file("RIFF", "fmt ", format(3, 2, 48_000, 24), "data", new byte[20]))
                        .kind())
                .isEqualTo(Wav.Kind.DAMAGED);
        assertThat(refused(file("RIFF", "data", new byte[20])).found()).isEqualTo("sound without a format before it");
        assertThat(refused(file("RIFF", "fmt ", format(1, 2, 48_000, 16))).kind())
                .isEqualTo(Wav.Kind.CUT_SHORT);
        byte[] odd = ByteBuffer.allocate(8)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putFloat(1)
                .putFloat(Float.NaN)
                .array();
        assertThat(refused(file("RIFF", "fmt ", format(3, 1, 48_000, 32), "data", odd))
                        .found())
                .isEqualTo("a sample that is no number, the 2. of all");
    }

    @Test
    void places_comeFromTheMask_orAreTakenAsUsual() {
        Wav.Reading.Read plain = (Wav.Reading.Read)
                Wav.read(ByteBuffer.wrap(file("RIFF", "fmt ", format(1, 6, 48_000, 16), "data", new byte[24])));
        assertThat(plain.places()).isEqualTo(Wav.Places.USUAL);
        assertThat(plain.sound().speakers()).isEqualTo(FIVE_ONE);
        byte[] sides = Wav.write24(
                new HeldSound(48_000, List.of(Speaker.LEFT, Speaker.SIDE_LEFT, Speaker.SIDE_RIGHT), new float[3][4]));
        Wav.Reading.Read told = (Wav.Reading.Read) Wav.read(ByteBuffer.wrap(sides));
        assertThat(told.places()).isEqualTo(Wav.Places.TOLD);
        assertThat(told.sound().speakers()).containsExactly(Speaker.LEFT, Speaker.SIDE_LEFT, Speaker.SIDE_RIGHT);
        assertThat(Speaker.ofMask(3, 3)).containsExactly(Speaker.LEFT, Speaker.RIGHT, Speaker.PLACELESS);
    }

    @Test
    void garbage_isReadOrRefused_neverThrown() {
        Random chance = new Random(9);
        byte[] good = file(
                "RF64",
                "ds64",
                new byte[28],
                "LIST",
                new byte[3],
                "fmt ",
                format(1, 2, 48_000, 24),
                "data",
                new byte[60]);
        for (int n = 0; n < 20_000; n++) {
            byte[] file = java.util.Arrays.copyOf(good, chance.nextInt(good.length + 1));
            for (int k = chance.nextInt(6); k > 0 && file.length > 0; k--) {
                file[chance.nextInt(file.length)] = (byte) chance.nextInt(256);
            }
            if (Wav.read(ByteBuffer.wrap(file)) instanceof Wav.Reading.Read(Sound sound, Wav.Places _)) {
                int count = (int) Math.min(4, sound.samples());
                sound.read(
                        sound.samples() - count,
                        count,
                        new double[sound.speakers().size()][count]);
            }
        }
    }
}
