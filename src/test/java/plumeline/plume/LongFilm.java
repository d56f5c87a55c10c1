package plumeline.plume;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.zip.CRC32;

/// A film whose frames are 64 MB long each, all but the last one of nothing that could be unpacked; made as
/// `docs/ink-files.md` says, and never there all at once.
final class LongFilm implements DyeFilm.Source {
    private static final int PACKED = 64 << 20;
    private static final int FRAME = 24 + PACKED;

    private final byte[] head;
    private final int frames;
    private final byte[] last;
    private final byte[] one = new byte[FRAME];

    /// @param head how the film begins
    /// @param frames how many long frames it has
    /// @param last the last frame and the end
    LongFilm(byte[] head, int frames, byte[] last) {
        this.head = head;
        this.frames = frames;
        this.last = last;
    }

    @Override
    public long size() {
        return lastAt() + last.length;
    }

    private long lastAt() {
        return head.length + (long) frames * FRAME;
    }

    @Override
    public ByteBuffer read(long at, int length) {
        if (at < head.length) {
            return slice(head, at, length);
        }
        if (at >= lastAt()) {
            return slice(last, at - lastAt(), length);
        }
        ByteBuffer frame = ByteBuffer.wrap(one);
        frame.putInt((int) ((at - head.length) / FRAME)).position(16).putInt(PACKED);
        if (length > 24) {
            var sum = new CRC32();
            sum.update(one, 0, 20);
            sum.update(one, 24, PACKED);
            frame.putInt(20, (int) sum.getValue());
        }
        return slice(one, (at - head.length) % FRAME, length);
    }

    private static ByteBuffer slice(byte[] bytes, long at, int length) {
        return at == 0 && length == bytes.length
                ? ByteBuffer.wrap(bytes)
                : ByteBuffer.wrap(Arrays.copyOfRange(bytes, (int) at, (int) at + length));
    }
}
