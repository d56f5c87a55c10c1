package plumeline.render;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/// A picture as a PNG file: 8 bits a channel, and a mark that its colours are sRGB's. Each row is told by how it
/// differs from the one above.
///
/// **Source:** ISO/IEC 15948 (PNG), clauses 5, 9 (filter type 2), 11.3.3.5 and 11.3.4.3.
public final class PngFile {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final int UP = 2;
    private static final int EFFORT = 6;

    /// For what is kept for a while only.
    private static final int QUICK = 3;

    private static final String KEYWORD = "Comment";

    private PngFile() {}

    /// Writes one.
    ///
    /// @param picture the picture
    /// @return the file's bytes
    public static byte[] of(Pixels picture) {
        return file(picture, new byte[0], EFFORT);
    }

    /// Writes one with a note in it, quickly.
    ///
    /// @param picture the picture
    /// @param note plain letters; who reads the file finds them under `Comment`
    /// @return the file's bytes
    public static byte[] of(Pixels picture, String note) {
        return file(picture, (KEYWORD + '\0' + note).getBytes(StandardCharsets.ISO_8859_1), QUICK);
    }

    private static byte[] file(Pixels picture, byte[] note, int effort) {
        byte[] packed = packed(picture, effort);
        int noted = note.length == 0 ? 0 : note.length + 12;
        ByteBuffer png = ByteBuffer.allocate(SIGNATURE.length + 25 + 13 + noted + 12 + packed.length + 12);
        png.put(SIGNATURE);
        byte[] head = ByteBuffer.allocate(13)
                .putInt(picture.width())
                .putInt(picture.height())
                .put(new byte[] {8, 2, 0, 0, 0})
                .array();
        chunk(png, "IHDR", head);
        chunk(png, "sRGB", new byte[] {0});
        if (note.length > 0) {
            chunk(png, "tEXt", note);
        }
        chunk(png, "IDAT", packed);
        chunk(png, "IEND", new byte[0]);
        return png.array();
    }

    private static byte[] packed(Pixels picture, int effort) {
        byte[] row = new byte[1 + 3 * picture.width()];
        row[0] = UP;
        byte[] some = new byte[1 << 16];
        var out = new ByteArrayOutputStream();
        Deflater deflater = new Deflater(effort);
        try {
            for (int y = 0; y < picture.height(); y++) {
                for (int x = 0; x < picture.width(); x++) {
                    int now = picture.at(x, y);
                    int above = y == 0 ? 0 : picture.at(x, y - 1);
                    for (int i = 0; i < 3; i++) {
                        int shift = 16 - 8 * i;
                        row[1 + 3 * x + i] = (byte) ((now >> shift) - (above >> shift));
                    }
                }
                deflater.setInput(row);
                if (y == picture.height() - 1) {
                    deflater.finish();
                }
                while (y == picture.height() - 1 ? !deflater.finished() : !deflater.needsInput()) {
                    out.write(some, 0, deflater.deflate(some));
                }
            }
        } finally {
            deflater.end();
        }
        return out.toByteArray();
    }

    private static void chunk(ByteBuffer png, String name, byte[] data) {
        byte[] type = name.getBytes(StandardCharsets.US_ASCII);
        CRC32 crc = new CRC32();
        crc.update(type);
        crc.update(data);
        png.putInt(data.length).put(type).put(data).putInt((int) crc.getValue());
    }
}
