package plumeline.clip;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.bytedeco.ffmpeg.global.avutil;

/// What all that talks to the codec library needs.
final class Codecs {
    private static final int MOST_TEXT = 200;

    private Codecs() {}

    /// Throws what the library says went wrong.
    ///
    /// @param status below 0 for what failed
    /// @param what what couldn't be done, as a line begins
    static void check(int status, String what) throws IOException {
        if (status < 0) {
            throw new IOException(what + ": " + text(status));
        }
    }

    private static String text(int status) {
        byte[] bytes = new byte[MOST_TEXT];
        avutil.av_strerror(status, bytes, bytes.length);
        int end = 0;
        while (end < bytes.length && bytes[end] != 0) {
            end++;
        }
        return new String(bytes, 0, end, UTF_8);
    }

    /// A fraction of whole numbers below 2³¹.
    static AVRational rational(long above, long below) {
        return new AVRational().num(Math.toIntExact(above)).den(Math.toIntExact(below));
    }
}
