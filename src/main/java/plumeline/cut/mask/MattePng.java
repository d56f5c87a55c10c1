package plumeline.cut.mask;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.CRC32;
import plumeline.geom.Point;

/// A mask as a matte picture: 8-bit grey, white where to paint out, black elsewhere; its edges hard, every touched
/// pixel white. Rows are told by how they differ from the row above, so that a picture costs what its edges cost.
///
/// **Source:** ISO/IEC 15948 (PNG), clauses 5 and 9 (filter type 2), 11.
final class MattePng {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final int UP = 2;
    private static final int TO_WHITE = 255;
    private static final int TO_BLACK = 1;

    private MattePng() {}

    static byte[] of(ClipSize size, List<MaskFrame.Patches> patches) {
        SpanRows rows = new SpanRows(size);
        for (MaskFrame.Patches strand : patches) {
            for (List<Point> corners : strand.corners()) {
                rows.add(corners);
            }
        }
        RunDeflate data = new RunDeflate();
        int[] above = {};
        for (int row = 0; row < rows.count(); row++) {
            int[] turns = rows.turns(row);
            data.run(UP, 1);
            differ(data, above, turns, size.acrossPixels());
            above = turns;
        }
        byte[] packed = data.end();
        ByteBuffer png = ByteBuffer.allocate(SIGNATURE.length + 25 + 12 + packed.length + 12);
        png.put(SIGNATURE);
        byte[] head = ByteBuffer.allocate(13)
                .putInt(size.acrossPixels())
                .putInt(size.downPixels())
                .put(new byte[] {8, 0, 0, 0, 0})
                .array();
        chunk(png, "IHDR", head);
        chunk(png, "IDAT", packed);
        chunk(png, "IEND", new byte[0]);
        return png.array();
    }

    /// A row less the one above it, between all places where either turns.
    private static void differ(RunDeflate data, int[] above, int[] now, int acrossPixels) {
        int at = 0;
        int i = 0;
        int j = 0;
        while (at < acrossPixels) {
            int next = Math.min(i < above.length ? above[i] : acrossPixels, j < now.length ? now[j] : acrossPixels);
            boolean wasIn = i % 2 == 1;
            boolean isIn = j % 2 == 1;
            data.run(wasIn == isIn ? 0 : isIn ? TO_WHITE : TO_BLACK, next - at);
            at = next;
            while (i < above.length && above[i] == at) {
                i++;
            }
            while (j < now.length && now[j] == at) {
                j++;
            }
        }
    }

    private static void chunk(ByteBuffer png, String name, byte[] data) {
        byte[] type = name.getBytes(StandardCharsets.US_ASCII);
        CRC32 crc = new CRC32();
        crc.update(type);
        crc.update(data);
        png.putInt(data.length).put(type).put(data).putInt((int) crc.getValue());
    }
}
