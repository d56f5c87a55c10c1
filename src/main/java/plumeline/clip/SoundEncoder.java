package plumeline.clip;

import java.io.IOException;
import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacpp.FloatPointer;
import org.bytedeco.javacpp.Pointer;
import plumeline.sound.Sound;

/// Encodes a sound as AAC (low complexity), piece by piece.
final class SoundEncoder implements Encoder {
    private static final long BITS_PER_SECOND = 192_000;

    private final Sound sound;
    private final AVCodecContext context;
    private final AVFrame frame = avutil.av_frame_alloc();
    private final double[][] rows;
    private long done;

    SoundEncoder(Sound sound) throws IOException {
        int channels = sound.speakers().size();
        if (channels > 2) {
            throw new IllegalArgumentException("a film's sound has one channel or two, not " + channels);
        }
        AVCodec codec = avcodec.avcodec_find_encoder(avcodec.AV_CODEC_ID_AAC);
        if (codec == null) {
            throw new IOException("films can't be written here: there is no encoder of AAC");
        }
        this.sound = sound;
        context = avcodec.avcodec_alloc_context3(codec);
        context.sample_rate(sound.samplesPerSecond())
                .sample_fmt(avutil.AV_SAMPLE_FMT_FLTP)
                .bit_rate(BITS_PER_SECOND)
                .thread_count(1);
        context.time_base(Codecs.rational(1, sound.samplesPerSecond()));
        avutil.av_channel_layout_default(context.ch_layout(), channels);
        context.flags(context.flags() | avcodec.AV_CODEC_FLAG_GLOBAL_HEADER | avcodec.AV_CODEC_FLAG_BITEXACT);
        int status = avcodec.avcodec_open2(context, codec, new AVDictionary());
        if (status < 0) {
            close();
        }
        Codecs.check(status, "sound at " + sound.samplesPerSecond() + " Hz can't be encoded");
        rows = new double[channels][context.frame_size()];
    }

    @Override
    public AVCodecContext context() {
        return context;
    }

    int samplesPerSecond() {
        return sound.samplesPerSecond();
    }

    /// Encodes a piece, where one begins before a sample.
    ///
    /// @return false where none does
    boolean encode(long past) throws IOException {
        int count = (int) Math.min(context.frame_size(), sound.samples() - done);
        if (count == 0 || done >= past) {
            return false;
        }
        sound.read(done, count, rows);
        avutil.av_frame_unref(frame);
        frame.nb_samples(count).format(context.sample_fmt()).sample_rate(context.sample_rate());
        avutil.av_channel_layout_copy(frame.ch_layout(), context.ch_layout());
        Codecs.check(avutil.av_frame_get_buffer(frame, 0), "sound can't be encoded");
        for (int c = 0; c < rows.length; c++) {
            FloatPointer out = new FloatPointer(frame.extended_data(c));
            for (int i = 0; i < count; i++) {
                out.put(i, (float) rows[c][i]);
            }
        }
        frame.pts(done);
        Codecs.check(avcodec.avcodec_send_frame(context, frame), "sound can't be encoded");
        done += count;
        return true;
    }

    void end() throws IOException {
        Codecs.check(avcodec.avcodec_send_frame(context, new AVFrame(new Pointer())), "sound can't be encoded");
    }

    @Override
    public boolean receive(AVPacket packet) throws IOException {
        int status = avcodec.avcodec_receive_packet(context, packet);
        if (status == avutil.AVERROR_EAGAIN() || status == avutil.AVERROR_EOF()) {
            return false;
        }
        Codecs.check(status, "sound can't be encoded");
        return true;
    }

    void close() {
        avutil.av_frame_free(frame);
        avcodec.avcodec_free_context(context);
    }
}
