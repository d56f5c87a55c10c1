package plumeline.clip;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacpp.BytePointer;

/// Samples of a sound as its frames come from a decoder, in whatever form, kept as floating-point numbers.
final class Decoded {
    private static final int FIRST_ROOM = 1 << 16;

    private final long most;
    private float[][] rows = new float[0][0];
    private int count;

    /// @param most how many samples of all channels together are taken at most
    Decoded(long most) {
        this.most = most;
    }

    int channels() {
        return rows.length;
    }

    float[][] rows() {
        float[][] cut = new float[rows.length][];
        for (int c = 0; c < rows.length; c++) {
            cut[c] = Arrays.copyOf(rows[c], count);
        }
        return cut;
    }

    void add(AVFrame frame) throws UnreadableClip {
        int channels = frame.ch_layout().nb_channels();
        if (rows.length == 0) {
            rows = new float[channels][FIRST_ROOM];
        }
        if (channels != rows.length) {
            throw new UnreadableClip(
                    "a clip whose sound changes from " + rows.length + " channels to " + channels,
                    "Have the mix that is delivered written into a WAV file, and name that.");
        }
        int more = frame.nb_samples();
        if ((long) channels * (count + (long) more) > most) {
            throw new UnreadableClip("a clip with more sound than is metered at once", "Cut it into parts.");
        }
        if (count + more > rows[0].length) {
            for (int c = 0; c < channels; c++) {
                rows[c] = Arrays.copyOf(rows[c], Math.max(2 * rows[c].length, count + more));
            }
        }
        boolean isPlanar = avutil.av_sample_fmt_is_planar(frame.format()) != 0;
        int each = avutil.av_get_bytes_per_sample(frame.format());
        for (int c = 0; c < channels; c++) {
            int step = isPlanar ? each : each * channels;
            BytePointer data = frame.extended_data(isPlanar ? c : 0);
            ByteBuffer bytes = data.capacity((long) step * more).asByteBuffer().order(ByteOrder.nativeOrder());
            int at = isPlanar ? 0 : c * each;
            for (int i = 0; i < more; i++) {
                rows[c][count + i] = sample(frame.format(), bytes, at + i * step);
            }
        }
        count += more;
    }

    private static float sample(int format, ByteBuffer bytes, int at) throws UnreadableClip {
        return switch (format) {
            case avutil.AV_SAMPLE_FMT_U8, avutil.AV_SAMPLE_FMT_U8P -> ((bytes.get(at) & 0xFF) - 128) * 0x1p-7F;
            case avutil.AV_SAMPLE_FMT_S16, avutil.AV_SAMPLE_FMT_S16P -> bytes.getShort(at) * 0x1p-15F;
            case avutil.AV_SAMPLE_FMT_S32, avutil.AV_SAMPLE_FMT_S32P -> bytes.getInt(at) * 0x1p-31F;
            case avutil.AV_SAMPLE_FMT_S64, avutil.AV_SAMPLE_FMT_S64P -> bytes.getLong(at) * 0x1p-63F;
            case avutil.AV_SAMPLE_FMT_FLT, avutil.AV_SAMPLE_FMT_FLTP -> bytes.getFloat(at);
            case avutil.AV_SAMPLE_FMT_DBL, avutil.AV_SAMPLE_FMT_DBLP -> (float) bytes.getDouble(at);
            default ->
                throw new UnreadableClip(
                        "a clip whose sound is in a form that isn't known here",
                        "Have its sound written into a WAV file, and name that.");
        };
    }
}
