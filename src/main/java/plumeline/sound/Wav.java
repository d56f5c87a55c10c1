package plumeline.sound;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.List;
import java.util.Locale;

/// WAV files, read and written.
///
/// Read are samples as whole numbers of 8 to 32 bits and as floating-point numbers of 32 or 64 bits, in RIFF files and
/// in the long ones that follow from them (RF64, BW64), whatever other chunks stand in them. A length that can't be,
/// as programs leave it that write to a pipe (0 or all ones), means: to the end of the file.
///
/// **Source:** the RIFF form of IBM and Microsoft (1991) with WAVE_FORMAT_EXTENSIBLE; EBU Tech 3306 for RF64, all from
/// memory; read by other programs in the tests.
public final class Wav {
    private static final int HEAD = 12;
    private static final int CHUNK = 8;
    private static final int PLAIN_FORMAT = 16;
    private static final int EXTENSIBLE_FORMAT = 40;
    private static final int BYTES_24 = 3;
    private static final double FULL_SCALE_24 = 1 << 23;
    private static final int BLOCK = 1 << 14;
    private static final long UNKNOWN = 0xFFFF_FFFFL;

    /// What a file turned out to be.
    public sealed interface Reading {
        /// A sound.
        ///
        /// @param sound its samples, which stay in the file's bytes
        /// @param places whether the file says where its channels are heard from
        record Read(Sound sound, Places places) implements Reading {}

        /// Nothing that can be read.
        ///
        /// @param kind what is wrong with it
        /// @param found what is there instead, as it follows "is" or "in it is"
        record Refused(Kind kind, String found) implements Reading {}
    }

    /// Where a file says that its channels are heard from.
    public enum Places {
        /// It says so itself, or has one channel or two.
        TOLD,
        /// It has more and doesn't say; they are taken as usual.
        USUAL
    }

    /// What is wrong with a file.
    public enum Kind {
        /// It is no WAV file.
        OTHER_FILE,
        /// It ends before its sound does.
        CUT_SHORT,
        /// It holds sound in a form that has to be decoded.
        COMPRESSED,
        /// What it says of itself can't be.
        DAMAGED
    }

    private Wav() {}

    /// Tells whether bytes begin as a WAV file does.
    ///
    /// @param bytes a file's first twelve bytes or more
    /// @return true where they do
    public static boolean isOne(ByteBuffer bytes) {
        return bytes.remaining() >= HEAD
                && List.of("RIFF", "RF64", "BW64").contains(word(bytes, 0))
                && word(bytes, 8).equals("WAVE");
    }

    /// Reads a file.
    ///
    /// @param file all of it, from the buffer's position on; not to be changed any more
    /// @return its sound, or why there is none
    public static Reading read(ByteBuffer file) {
        ByteBuffer bytes = file.slice().order(ByteOrder.LITTLE_ENDIAN);
        if (!isOne(bytes)) {
            return new Reading.Refused(
                    Kind.OTHER_FILE, bytes.remaining() == 0 ? "nothing: it is empty" : "no WAV file's head");
        }
        return new WavWalk(bytes).read();
    }

    static String word(ByteBuffer bytes, int at) {
        byte[] four = new byte[4];
        bytes.get(bytes.position() + at, four);
        return new String(four, ISO_8859_1);
    }

    /// Writes a sound as whole numbers of 24 bits, rounded to the nearest, halves up; what is over full scale is
    /// clipped. The same sound gives the same bytes.
    ///
    /// @param sound the sound, shorter than 2 GiB as a file
    /// @return the file
    public static byte[] write24(Sound sound) {
        int channels = sound.speakers().size();
        ByteBuffer out = begin(sound, BYTES_24, 1);
        double[][] rows = new double[channels][BLOCK];
        for (long first = 0; first < sound.samples(); first += BLOCK) {
            int count = (int) Math.min(BLOCK, sound.samples() - first);
            sound.read(first, count, rows);
            for (int i = 0; i < count; i++) {
                for (double[] row : rows) {
                    int value = (int)
                            Math.clamp(Math.floor(row[i] * FULL_SCALE_24 + 0.5), -FULL_SCALE_24, FULL_SCALE_24 - 1);
                    out.put((byte) value).put((byte) (value >> 8)).put((byte) (value >> 16));
                }
            }
        }
        return end(out);
    }

    /// Writes a sound as floating-point numbers of 32 bits, which hold what is over full scale too.
    ///
    /// @param sound the sound, shorter than 2 GiB as a file
    /// @return the file
    public static byte[] writeFloat(Sound sound) {
        int channels = sound.speakers().size();
        ByteBuffer out = begin(sound, Float.BYTES, 3);
        double[][] rows = new double[channels][BLOCK];
        for (long first = 0; first < sound.samples(); first += BLOCK) {
            int count = (int) Math.min(BLOCK, sound.samples() - first);
            sound.read(first, count, rows);
            for (int i = 0; i < count; i++) {
                for (double[] row : rows) {
                    out.putFloat((float) row[i]);
                }
            }
        }
        return end(out);
    }

    /// The head of a file, up to its samples.
    private static ByteBuffer begin(Sound sound, int bytesEach, int tag) {
        int channels = sound.speakers().size();
        boolean isPlain = channels <= 2;
        int format = isPlain ? PLAIN_FORMAT : EXTENSIBLE_FORMAT;
        int data = Math.toIntExact(sound.samples() * channels * bytesEach);
        int all = Math.addExact(HEAD + CHUNK + format + CHUNK, Math.addExact(data, data & 1));
        ByteBuffer out = ByteBuffer.allocate(all).order(ByteOrder.LITTLE_ENDIAN);
        put(out, "RIFF").putInt(all - CHUNK);
        put(out, "WAVE");
        put(out, "fmt ").putInt(format);
        out.putShort((short) (isPlain ? tag : 0xFFFE)).putShort((short) channels);
        out.putInt(sound.samplesPerSecond()).putInt(sound.samplesPerSecond() * channels * bytesEach);
        out.putShort((short) (channels * bytesEach)).putShort((short) (8 * bytesEach));
        if (!isPlain) {
            out.putShort((short) 22).putShort((short) (8 * bytesEach)).putInt((int) Speaker.mask(sound.speakers()));
            out.putShort((short) tag).put(WavWalk.subformatEnd());
        }
        return put(out, "data").putInt(data);
    }

    private static ByteBuffer put(ByteBuffer out, String word) {
        return out.put(word.getBytes(ISO_8859_1));
    }

    private static byte[] end(ByteBuffer out) {
        byte[] all = new byte[out.capacity()];
        out.get(0, all);
        return all;
    }

    /// Whether a length that a file gives can't be one.
    static boolean isUnknown(long length) {
        return length == UNKNOWN;
    }

    /// A count of bytes as messages say it.
    static String bytes(long count) {
        return String.format(Locale.ROOT, "%d %s", count, count == 1 ? "byte" : "bytes");
    }
}
