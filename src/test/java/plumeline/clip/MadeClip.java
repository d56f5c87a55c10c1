package plumeline.clip;

import java.nio.file.Path;
import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVIOContext;
import org.bytedeco.ffmpeg.avformat.AVOutputFormat;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avformat;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacpp.FloatPointer;
import org.bytedeco.javacpp.Pointer;
import org.bytedeco.javacpp.ShortPointer;

/// Clips for tests, encoded by the codec library itself.
public final class MadeClip {
    private MadeClip() {}

    /// Writes rows of samples into a clip: AAC where the name ends in mp4, else 16-bit samples; one track each time.
    public static Path write(Path file, int rate, int tracks, float[]... rows) {
        boolean isAac = file.toString().endsWith(".mp4");
        avutil.av_log_set_level(avutil.AV_LOG_QUIET);
        AVFormatContext out = new AVFormatContext(null);
        check(avformat.avformat_alloc_output_context2(out, new AVOutputFormat(new Pointer()), null, file.toString()));
        AVCodec codec = avcodec.avcodec_find_encoder(isAac ? avcodec.AV_CODEC_ID_AAC : avcodec.AV_CODEC_ID_PCM_S16LE);
        AVCodecContext[] contexts = new AVCodecContext[tracks];
        for (int t = 0; t < tracks; t++) {
            AVCodecContext context = avcodec.avcodec_alloc_context3(codec);
            context.sample_rate(rate);
            context.sample_fmt(isAac ? avutil.AV_SAMPLE_FMT_FLTP : avutil.AV_SAMPLE_FMT_S16);
            avutil.av_channel_layout_default(context.ch_layout(), rows.length);
            context.bit_rate(192_000);
            context.flags(context.flags() | avcodec.AV_CODEC_FLAG_GLOBAL_HEADER);
            check(avcodec.avcodec_open2(context, codec, new AVDictionary()));
            AVStream stream = avformat.avformat_new_stream(out, codec);
            stream.time_base().num(1).den(rate);
            check(avcodec.avcodec_parameters_from_context(stream.codecpar(), context));
            contexts[t] = context;
        }
        AVIOContext io = new AVIOContext(null);
        check(avformat.avio_open(io, file.toString(), avformat.AVIO_FLAG_WRITE));
        out.pb(io);
        check(avformat.avformat_write_header(out, new AVDictionary()));
        for (int t = 0; t < tracks; t++) {
            encode(contexts[t], out, t, rows);
            avcodec.avcodec_free_context(contexts[t]);
        }
        check(avformat.av_write_trailer(out));
        avformat.avio_closep(io);
        avformat.avformat_free_context(out);
        return file;
    }

    private static void encode(AVCodecContext context, AVFormatContext out, int track, float[]... rows) {
        boolean isAac = context.frame_size() > 0;
        int size = isAac ? context.frame_size() : 4096;
        AVFrame frame = avutil.av_frame_alloc();
        AVPacket packet = avcodec.av_packet_alloc();
        for (int at = 0; at < rows[0].length; at += size) {
            int count = Math.min(size, rows[0].length - at);
            frame.nb_samples(count).format(context.sample_fmt()).sample_rate(context.sample_rate());
            avutil.av_channel_layout_copy(frame.ch_layout(), context.ch_layout());
            check(avutil.av_frame_get_buffer(frame, 0));
            for (int c = 0; c < rows.length; c++) {
                for (int i = 0; i < count; i++) {
                    if (isAac) {
                        new FloatPointer(frame.extended_data(c)).put(i, rows[c][at + i]);
                    } else {
                        new ShortPointer(frame.extended_data(0))
                                .put((long) i * rows.length + c, (short) Math.round(rows[c][at + i] * 32_767));
                    }
                }
            }
            frame.pts(at);
            check(avcodec.avcodec_send_frame(context, frame));
            drain(context, out, track, packet);
            avutil.av_frame_unref(frame);
        }
        check(avcodec.avcodec_send_frame(context, new AVFrame(new Pointer())));
        drain(context, out, track, packet);
        avcodec.av_packet_free(packet);
        avutil.av_frame_free(frame);
    }

    private static void drain(AVCodecContext context, AVFormatContext out, int track, AVPacket packet) {
        while (avcodec.avcodec_receive_packet(context, packet) >= 0) {
            avcodec.av_packet_rescale_ts(
                    packet, context.time_base(), out.streams(track).time_base());
            packet.stream_index(track);
            check(avformat.av_interleaved_write_frame(out, packet));
        }
    }

    private static void check(int status) {
        if (status < 0) {
            byte[] text = new byte[200];
            avutil.av_strerror(status, text, text.length);
            throw new AssertionError(new String(text, java.nio.charset.StandardCharsets.UTF_8));
        }
    }
}
