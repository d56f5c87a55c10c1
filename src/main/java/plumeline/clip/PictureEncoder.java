package plumeline.clip;

import java.io.IOException;
import java.nio.ByteBuffer;
import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacpp.Pointer;

/// Encodes pictures as H.264, one thread, no frame left out, each by itself. Told by what changed since the one before,
/// the encoder leaves blocks as they were where they differ less than their neighbours do: streaks stay behind what
/// moves, 86 codes off where colour is strong (`MovieOutsideTest`).
final class PictureEncoder implements Encoder {
    private static final int FINEST = 12;
    private static final int COARSEST = 22;

    /// Bits a second for each pixel of a second: more than pictures of sets need, so that the coarsest step decides.
    private static final double BITS_PER_PIXEL = 0.6;

    private static final int EACH_BY_ITSELF = 1;
    private static final long LEAST_BITS = 2_000_000;
    private static final long MOST_BITS = 80_000_000;

    private final AVCodecContext context;
    private final AVFrame frame = avutil.av_frame_alloc();
    private final Planes planes;

    PictureEncoder(Movie.Form form) throws IOException {
        AVCodec codec = avcodec.avcodec_find_encoder_by_name("libopenh264");
        if (codec == null) {
            throw new IOException("films can't be written here: there is no encoder of H.264");
        }
        planes = new Planes(form.width(), form.height());
        context = avcodec.avcodec_alloc_context3(codec);
        context.width(form.width())
                .height(form.height())
                .pix_fmt(avutil.AV_PIX_FMT_YUV420P)
                .color_primaries(avutil.AVCOL_PRI_BT709)
                .color_trc(avutil.AVCOL_TRC_BT709)
                .colorspace(avutil.AVCOL_SPC_BT709)
                .color_range(avutil.AVCOL_RANGE_MPEG)
                .chroma_sample_location(avutil.AVCHROMA_LOC_LEFT)
                .thread_count(1)
                .qmin(FINEST)
                .qmax(COARSEST)
                .bit_rate(bits(form))
                .gop_size(EACH_BY_ITSELF);
        context.time_base(Codecs.rational(form.rate().denominator(), form.rate().numerator()));
        context.framerate(Codecs.rational(form.rate().numerator(), form.rate().denominator()));
        context.flags(context.flags() | avcodec.AV_CODEC_FLAG_GLOBAL_HEADER | avcodec.AV_CODEC_FLAG_BITEXACT);
        AVDictionary options = new AVDictionary();
        avutil.av_dict_set(options, "profile", "constrained_baseline", 0);
        avutil.av_dict_set(options, "rc_mode", "quality", 0);
        avutil.av_dict_set(options, "allow_skip_frames", "0", 0);
        int status = avcodec.avcodec_open2(context, codec, options);
        avutil.av_dict_free(options);
        if (status < 0) {
            close();
        }
        Codecs.check(status, "pictures of " + form.width() + " x " + form.height() + " can't be encoded");
        frame.format(avutil.AV_PIX_FMT_YUV420P).width(form.width()).height(form.height());
        frame.color_range(avutil.AVCOL_RANGE_MPEG).colorspace(avutil.AVCOL_SPC_BT709);
        Codecs.check(avutil.av_frame_get_buffer(frame, 0), "pictures can't be encoded");
    }

    private static long bits(Movie.Form form) {
        double pixels = (double) form.width() * form.height() * form.rate().framesPerSecond();
        return (long) Math.clamp(pixels * BITS_PER_PIXEL, LEAST_BITS, MOST_BITS);
    }

    @Override
    public AVCodecContext context() {
        return context;
    }

    void encode(int[] packed, long number) throws IOException {
        planes.fill(packed);
        Codecs.check(avutil.av_frame_make_writable(frame), "pictures can't be encoded");
        for (int plane = 0; plane < 3; plane++) {
            int step = frame.linesize(plane);
            int rows = planes.rows(plane);
            int width = planes.width(plane);
            ByteBuffer out = frame.data(plane).capacity((long) step * rows).asByteBuffer();
            for (int y = 0; y < rows; y++) {
                out.put(y * step, planes.bytes(plane), y * width, width);
            }
        }
        frame.pts(number);
        Codecs.check(avcodec.avcodec_send_frame(context, frame), "pictures can't be encoded");
    }

    void end() throws IOException {
        Codecs.check(avcodec.avcodec_send_frame(context, new AVFrame(new Pointer())), "pictures can't be encoded");
    }

    @Override
    public boolean receive(AVPacket packet) throws IOException {
        int status = avcodec.avcodec_receive_packet(context, packet);
        if (status == avutil.AVERROR_EAGAIN() || status == avutil.AVERROR_EOF()) {
            return false;
        }
        Codecs.check(status, "pictures can't be encoded");
        packet.duration(1);
        return true;
    }

    void close() {
        avutil.av_frame_free(frame);
        avcodec.avcodec_free_context(context);
    }
}
