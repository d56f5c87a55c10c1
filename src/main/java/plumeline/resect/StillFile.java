package plumeline.resect;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/// What the head of a JPEG or PNG file says: how large its picture is as it is looked at, turned as its camera noted.
///
/// **Source:** ISO/IEC 10918-1 (JPEG), annex B.2; ISO/IEC 15948 (PNG), 11.2.2; CIPA DC-008 (Exif 2.32), 4.6.4, tag
/// 274 (Orientation): from 5 to 8 the picture lies on its side.
public sealed interface StillFile {
    /// A larger file isn't read, bytes.
    int MOST_BYTES = 64 << 20;

    /// It could be read.
    ///
    /// @param kind its media type: `image/jpeg` or `image/png`
    /// @param acrossPixels pixels across, as it is looked at
    /// @param downPixels pixels down
    record Read(String kind, int acrossPixels, int downPixels) implements StillFile {}

    /// It couldn't.
    ///
    /// @param given what it is instead
    record Refused(String given) implements StillFile {}

    /// Reads the head of a file.
    ///
    /// @param bytes the file
    /// @return what it says
    static StillFile of(byte[] bytes) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        try {
            if (bytes.length >= 8 && in.getLong(0) == 0x89504e470d0a1a0aL) {
                return sized("image/png", in.getInt(16), in.getInt(20));
            }
            if (bytes.length >= 2 && in.getShort(0) == (short) 0xffd8) {
                return jpeg(in.position(2));
            }
        } catch (BufferUnderflowException | IndexOutOfBoundsException e) {
            return new Refused("a picture that ends in its head");
        }
        return new Refused("neither a JPEG nor a PNG file");
    }

    private static StillFile sized(String kind, int across, int down) {
        return across > 0 && down > 0
                ? new Read(kind, across, down)
                : new Refused("a picture of " + across + " by " + down + " pixels");
    }

    private static StillFile jpeg(ByteBuffer in) {
        boolean isOnItsSide = false;
        while (true) {
            if ((in.get() & 0xff) != 0xff) {
                return new Refused("a damaged JPEG file");
            }
            int marker = in.get() & 0xff;
            while (marker == 0xff) {
                marker = in.get() & 0xff;
            }
            int length = Short.toUnsignedInt(in.getShort());
            ByteBuffer segment = in.slice(in.position(), length - 2);
            boolean isFrame = marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
            if (isFrame) {
                int down = Short.toUnsignedInt(segment.getShort(1));
                int across = Short.toUnsignedInt(segment.getShort(3));
                return isOnItsSide ? sized("image/jpeg", down, across) : sized("image/jpeg", across, down);
            }
            if (marker == 0xe1 && isExif(segment)) {
                isOnItsSide = isOnItsSide(segment.slice(6, segment.limit() - 6));
            }
            if (marker == 0xda || marker == 0xd9) {
                return new Refused("a JPEG file without a size");
            }
            in.position(in.position() + length - 2);
        }
    }

    private static boolean isExif(ByteBuffer segment) {
        byte[] head = new byte[Math.min(6, segment.limit())];
        segment.get(0, head);
        return new String(head, US_ASCII).equals("Exif\0\0");
    }

    /// What a camera noted of how it was held; damage there counts as upright.
    private static boolean isOnItsSide(ByteBuffer tiff) {
        try {
            tiff.order(tiff.getShort(0) == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
            int at = tiff.getInt(4);
            int count = Short.toUnsignedInt(tiff.getShort(at));
            for (int i = 0; i < count; i++) {
                int entry = at + 2 + 12 * i;
                if (Short.toUnsignedInt(tiff.getShort(entry)) == 274) {
                    int orientation = Short.toUnsignedInt(tiff.getShort(entry + 8));
                    return orientation >= 5 && orientation <= 8;
                }
            }
        } catch (IndexOutOfBoundsException e) {
            return false;
        }
        return false;
    }
}
