package plumeline.art;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;

/// PNG and JPEG files.
final class RasterFile {
    /// Larger pictures aren't read, pixels in all.
    private static final long MOST_PIXELS = 200_000_000;

    private static final String ANEW = "Save it anew as a PNG.";

    private RasterFile() {}

    static boolean isOne(byte[] bytes) {
        return begins(bytes, 0x89, 'P', 'N', 'G') || begins(bytes, 0xff, 0xd8, 0xff);
    }

    private static boolean begins(byte[] bytes, int... with) {
        boolean isSo = bytes.length >= with.length;
        for (int i = 0; isSo && i < with.length; i++) {
            isSo = (bytes[i] & 0xff) == with[i];
        }
        return isSo;
    }

    /// Reads one; of a large one every second, third … row and column.
    static ArtFile read(byte[] bytes) {
        try (var in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                return new ArtFile.Refused("of a kind that isn't known here", ANEW);
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true, true);
                long width = reader.getWidth(0);
                long height = reader.getHeight(0);
                if (width * height > MOST_PIXELS) {
                    return new ArtFile.Refused(
                            width + " by " + height + " pixels", "Save it smaller: 2048 pixels across do.");
                }
                ImageReadParam how = reader.getDefaultReadParam();
                int every = (int) Math.max(1, Math.max(width, height) / (2 * Texels.MOST));
                how.setSourceSubsampling(every, every, 0, 0);
                BufferedImage image = reader.read(0, how);
                return new ArtFile.Read(Texels.of(image));
            } finally {
                reader.dispose();
            }
        } catch (IOException | RuntimeException e) {
            // The JDK's readers answer damage by exceptions of all kinds.
            return new ArtFile.Refused("damaged, or of a kind that isn't known here", ANEW);
        }
    }
}
