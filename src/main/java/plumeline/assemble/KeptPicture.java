package plumeline.assemble;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.Optional;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;
import plumeline.render.Pixels;

/// A picture as the bytes of a PNG file that says which picture it is: whoever finds one can tell whether it is whole and
/// still the right one.
///
/// Rows are told by how each pixel differs from the one before it. The same picture gives the same bytes.
///
/// **Source:** ISO/IEC 15948 (PNG), clauses 5, 9 (filter type 1), 11 (tEXt with the keyword Comment; sRGB).
public final class KeptPicture {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final int FROM_LEFT = 1;
    private static final int QUICK = 3;
    private static final int HEAD = 13;
    private static final int ROUND_CHUNK = 12;
    private static final String WORD = "Comment\0plumeline ";
    private static final int RELATIVE = 1;

    private KeptPicture() {}

    /// Writes a picture.
    ///
    /// @param picture the picture
    /// @param key what decided it, in letters of ISO 8859-1; may be empty
    /// @return a PNG file's bytes
    public static byte[] write(Pixels picture, String key) {
        byte[] packed = packed(picture);
        ByteArrayOutputStream out = new ByteArrayOutputStream(packed.length + 200);
        out.writeBytes(SIGNATURE);
        chunk(
                out,
                "IHDR",
                ByteBuffer.allocate(HEAD)
                        .putInt(picture.width())
                        .putInt(picture.height())
                        .put(new byte[] {8, 2, 0, 0, 0})
                        .array());
        chunk(out, "sRGB", new byte[] {RELATIVE});
        if (!key.isEmpty()) {
            chunk(out, "tEXt", (WORD + key).getBytes(ISO_8859_1));
        }
        chunk(out, "IDAT", packed);
        chunk(out, "IEND", new byte[0]);
        return out.toByteArray();
    }

    private static byte[] packed(Pixels picture) {
        int stride = 1 + 3 * picture.width();
        byte[] rows = new byte[stride * picture.height()];
        for (int y = 0; y < picture.height(); y++) {
            int at = y * stride;
            rows[at++] = FROM_LEFT;
            int before = 0;
            for (int x = 0; x < picture.width(); x++) {
                int pixel = picture.at(x, y);
                for (int shift = 16; shift >= 0; shift -= 8) {
                    rows[at++] = (byte) ((pixel >> shift) - (before >> shift));
                }
                before = pixel;
            }
        }
        Deflater deflater = new Deflater(QUICK);
        try {
            deflater.setInput(rows);
            deflater.finish();
            byte[] block = new byte[1 << 16];
            ByteArrayOutputStream out = new ByteArrayOutputStream(rows.length / 2);
            while (!deflater.finished()) {
                out.write(block, 0, deflater.deflate(block));
            }
            return out.toByteArray();
        } finally {
            deflater.end();
        }
    }

    private static void chunk(ByteArrayOutputStream out, String name, byte[] data) {
        CRC32 sum = new CRC32();
        sum.update(name.getBytes(ISO_8859_1));
        sum.update(data);
        out.writeBytes(ByteBuffer.allocate(4).putInt(data.length).array());
        out.writeBytes(name.getBytes(ISO_8859_1));
        out.writeBytes(data);
        out.writeBytes(ByteBuffer.allocate(4).putInt((int) sum.getValue()).array());
    }

    /// Reads a picture that was written here.
    ///
    /// @param file a file's bytes
    /// @param key what has to have decided it
    /// @return the picture; empty where it is cut short, damaged, another one, or from elsewhere
    public static Optional<Pixels> read(byte[] file, String key) {
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
                && ISO_8859_1.decode(word.get()).toString().equals(WORD + key);
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
        int[] packed = new int[width * height];
        for (int y = 0; y < height; y++) {
            int red = 0;
            int green = 0;
            int blue = 0;
            int at = y * stride + 1;
            for (int x = 0; x < width; x++) {
                red = red + rows[at++] & 255;
                green = green + rows[at++] & 255;
                blue = blue + rows[at++] & 255;
                packed[y * width + x] = red << 16 | green << 8 | blue;
            }
        }
        return Optional.of(new Pixels(width, height, packed));
    }

    private static boolean ends(Inflater inflater) throws DataFormatException {
        return inflater.finished() || inflater.inflate(new byte[1]) == 0 && inflater.finished();
    }
}
