package plumeline.assemble;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.nio.ByteBuffer;
import java.util.Optional;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import plumeline.render.Pixels;
import plumeline.render.PngFile;

/// A picture as the bytes of a PNG file that says which picture it is: whoever finds one can tell whether it is whole
/// and still the right one.
///
/// It reads what it writes and no other form: chunks in one order, each with its sum, rows by the one above.
///
/// **Source:** ISO/IEC 15948 (PNG), clauses 5, 9 (filter type 2), 11.3.4.3.
public final class KeptPicture {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final int HEAD = 13;
    private static final int ROUND_CHUNK = 12;
    private static final String NOTE = "plumeline ";
    private static final int FROM_ABOVE = 2;

    private KeptPicture() {}

    /// Writes a picture.
    ///
    /// @param picture the picture
    /// @param key what decided it
    /// @return a PNG file's bytes
    public static byte[] write(Pixels picture, PictureKey key) {
        return PngFile.of(picture, NOTE + key.hex());
    }

    /// Reads a picture that was written here.
    ///
    /// @param file a file's bytes
    /// @param key what has to have decided it
    /// @return the picture; empty where it is cut short, damaged, another one, or from elsewhere
    public static Optional<Pixels> read(byte[] file, PictureKey key) {
        ByteBuffer in = ByteBuffer.wrap(file);
        if (in.remaining() < SIGNATURE.length || !in.slice(0, SIGNATURE.length).equals(ByteBuffer.wrap(SIGNATURE))) {
            return Optional.empty();
        }
        in.position(SIGNATURE.length);
        Optional<ByteBuffer> head = find(in, "IHDR");
        Optional<ByteBuffer> word = head.flatMap(_ -> find(in, "sRGB")).flatMap(_ -> find(in, "tEXt"));
        Optional<ByteBuffer> data = word.flatMap(_ -> find(in, "IDAT"));
        Optional<ByteBuffer> end = data.flatMap(_ -> find(in, "IEND"));
        boolean isIt = end.isPresent()
                && !in.hasRemaining()
                && head.get().remaining() == HEAD
                && ISO_8859_1.decode(word.get()).toString().equals("Comment\0" + NOTE + key.hex());
        return isIt ? unpacked(head.get().getInt(), head.get().getInt(), data.get()) : Optional.empty();
    }

    /// The next chunk, where it has a name and its sum is right.
    private static Optional<ByteBuffer> find(ByteBuffer in, String name) {
        if (in.remaining() < ROUND_CHUNK) {
            return Optional.empty();
        }
        int length = in.getInt();
        if (length < 0 || length > in.remaining() - 8) {
            return Optional.empty();
        }
        CRC32 sum = new CRC32();
        sum.update(in.slice(in.position(), 4 + length));
        byte[] word = new byte[4];
        in.get(word);
        ByteBuffer data = in.slice(in.position(), length);
        in.position(in.position() + length);
        boolean isRight = in.getInt() == (int) sum.getValue() && new String(word, ISO_8859_1).equals(name);
        return isRight ? Optional.of(data) : Optional.empty();
    }

    private static Optional<Pixels> unpacked(int width, int height, ByteBuffer data) {
        if (width < 1 || height < 1 || (long) width * height > Integer.MAX_VALUE / 4) {
            return Optional.empty();
        }
        int stride = 1 + 3 * width;
        byte[] rows = new byte[stride * height];
        Inflater inflater = new Inflater();
        try {
            inflater.setInput(data);
            if (inflater.inflate(rows) != rows.length || !ends(inflater)) {
                return Optional.empty();
            }
        } catch (DataFormatException e) {
            return Optional.empty();
        } finally {
            inflater.end();
        }
        return pixels(width, height, rows);
    }

    private static Optional<Pixels> pixels(int width, int height, byte[] rows) {
        int stride = 1 + 3 * width;
        int[] packed = new int[width * height];
        for (int y = 0; y < height; y++) {
            if (rows[y * stride] != FROM_ABOVE) {
                return Optional.empty();
            }
            for (int x = 0; x < width; x++) {
                int at = y * stride + 1 + 3 * x;
                int above = y == 0 ? 0 : packed[(y - 1) * width + x];
                packed[y * width + x] = ((above >> 16) + rows[at] & 255) << 16
                        | ((above >> 8) + rows[at + 1] & 255) << 8
                        | above + rows[at + 2] & 255;
            }
        }
        return Optional.of(new Pixels(width, height, packed));
    }

    private static boolean ends(Inflater inflater) throws DataFormatException {
        return inflater.finished() || inflater.inflate(new byte[1]) == 0 && inflater.finished();
    }
}
