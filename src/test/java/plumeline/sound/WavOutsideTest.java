package plumeline.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.List;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;
import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

/// Files that are written here are read by the JDK's own reader, and its files here.
@Outside(source = "javax.sound.sampled of the JDK", place = "AudioSystem", kind = "program")
final class WavOutsideTest {
    private static final float[] LEFT = {0, 0.5F, -0.5F, 0.999F, -1, 1, 0.1F};
    private static final float[] RIGHT = {0, -0.25F, 0.25F, 1.5F, -2, 1e-7F, -0.1F};

    @Test
    void written_isReadByTheJdk() throws IOException, UnsupportedAudioFileException {
        byte[] file = Wav.write24(new HeldSound(48_000, List.of(Speaker.LEFT, Speaker.RIGHT), LEFT, RIGHT));
        int compared = 0;
        try (AudioInputStream in = AudioSystem.getAudioInputStream(new ByteArrayInputStream(file))) {
            AudioFormat format = in.getFormat();
            assertThat(format.getSampleRate()).isEqualTo(48_000);
            assertThat(format.getSampleSizeInBits()).isEqualTo(24);
            assertThat(format.getChannels()).isEqualTo(2);
            assertThat(format.isBigEndian()).isFalse();
            assertThat(in.getFrameLength()).isEqualTo(7);
            byte[] bytes = in.readAllBytes();
            for (int i = 0; i < 7; i++) {
                for (int c = 0; c < 2; c++) {
                    int at = 6 * i + 3 * c;
                    int value = (bytes[at] & 0xFF) | (bytes[at + 1] & 0xFF) << 8 | bytes[at + 2] << 16;
                    double clipped = Math.clamp(c == 0 ? LEFT[i] : RIGHT[i], -1.0, 1 - 0x1p-23);
                    assertThat(value / 8_388_608.0).isEqualTo(clipped, within(0.5001 / 8_388_608));
                    compared++;
                }
            }
        }
        assertThat(compared).isEqualTo(14);
    }

    @Test
    void writtenByTheJdk_isRead() throws IOException {
        int compared = 0;
        for (int bits : new int[] {8, 16, 24, 32}) {
            boolean signed = bits > 8;
            AudioFormat format = new AudioFormat(44_100, bits, 2, signed, false);
            byte[] raw = new byte[5 * 2 * bits / 8];
            for (int i = 0; i < raw.length; i++) {
                raw[i] = (byte) (37 * i + 11);
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            AudioSystem.write(
                    new AudioInputStream(new ByteArrayInputStream(raw), format, 5), AudioFileFormat.Type.WAVE, out);
            Wav.Reading.Read read = (Wav.Reading.Read) Wav.read(ByteBuffer.wrap(out.toByteArray()));
            assertThat(read.sound().samplesPerSecond()).isEqualTo(44_100);
            assertThat(read.sound().samples()).isEqualTo(5);
            double[][] rows = new double[2][5];
            read.sound().read(0, 5, rows);
            for (int i = 0; i < 10; i++) {
                long value = 0;
                for (int b = bits / 8 - 1; b >= 0; b--) {
                    value = value << 8 | raw[i * bits / 8 + b] & 0xFF;
                }
                long half = 1L << bits - 1;
                long centred = signed ? (value >= half ? value - 2 * half : value) : value - half;
                assertThat(rows[i % 2][i / 2]).isEqualTo((double) centred / half);
                compared++;
            }
        }
        assertThat(compared).isEqualTo(40);
    }

    @Test
    void floatingSamples_ofTheJdk_areRead() throws IOException {
        ByteBuffer raw = ByteBuffer.allocate(6 * 4).order(java.nio.ByteOrder.LITTLE_ENDIAN);
        float[] values = {0, 1.5F, -2.25F, 0.1F, -0.1F, 1e-6F};
        for (float each : values) {
            raw.putFloat(each);
        }
        AudioFormat format = new AudioFormat(AudioFormat.Encoding.PCM_FLOAT, 96_000, 32, 1, 4, 96_000, false);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        AudioSystem.write(
                new AudioInputStream(new ByteArrayInputStream(raw.array()), format, 6), AudioFileFormat.Type.WAVE, out);
        Wav.Reading.Read read = (Wav.Reading.Read) Wav.read(ByteBuffer.wrap(out.toByteArray()));
        double[][] rows = new double[1][6];
        read.sound().read(0, 6, rows);
        for (int i = 0; i < 6; i++) {
            assertThat(rows[0][i]).isEqualTo(values[i]);
        }
        assertThat(read.sound().speakers()).containsExactly(Speaker.CENTRE);
    }
}
