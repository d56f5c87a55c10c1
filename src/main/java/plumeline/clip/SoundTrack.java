package plumeline.clip;

import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_AUDIO;

import java.nio.file.Path;
import java.util.List;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVChannelLayout;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avformat;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacpp.Pointer;
import plumeline.clip.Clips.Reading;
import plumeline.sound.HeldSound;
import plumeline.sound.Speaker;

/// The one track of sound in a clip's file, opened.
final class SoundTrack implements AutoCloseable {
    private static final String AS_WAV = "Have its sound written into a WAV file, and name that.";

    private final AVFormatContext container = avformat.avformat_alloc_context();
    private final AVPacket packet = avcodec.av_packet_alloc();
    private final AVFrame frame = avutil.av_frame_alloc();
    private final AVCodecContext decoder;
    private final int track;

    SoundTrack(Path file) throws UnreadableClip {
        avutil.av_log_set_level(avutil.AV_LOG_QUIET);
        try {
            open(file);
            track = find();
            decoder = ClipFile.decoder(
                    container.streams(track),
                    new UnreadableClip("a clip whose sound is in a form that isn't known here", AS_WAV));
        } catch (UnreadableClip | RuntimeException e) {
            closeFile();
            throw e;
        }
    }

    private void open(Path file) throws UnreadableClip {
        if (!ClipFile.open(container, file, ClipFile.SOUNDS)) {
            throw new UnreadableClip("which is no WAV file and no clip that can be read here", AS_WAV);
        }
    }

    private int find() throws UnreadableClip {
        int found = -1;
        int count = 0;
        for (int i = 0; i < container.nb_streams(); i++) {
            AVStream stream = container.streams(i);
            if (stream.codecpar().codec_type() == AVMEDIA_TYPE_AUDIO) {
                found = found < 0 ? i : found;
                count++;
            } else {
                stream.discard(avcodec.AVDISCARD_ALL);
            }
        }
        if (count == 0) {
            throw new UnreadableClip("a clip without sound", "Name the file that holds the mix.");
        }
        if (count > 1) {
            throw new UnreadableClip(
                    "a clip with " + count + " tracks of sound, of which none is said to be the mix",
                    "Have the mix that is delivered written into a WAV file, and name that.");
        }
        return found;
    }

    Reading decode(long mostSamples) throws UnreadableClip {
        Decoded decoded = new Decoded(mostSamples);
        while (avformat.av_read_frame(container, packet) >= 0) {
            if (packet.stream_index() == track && avcodec.avcodec_send_packet(decoder, packet) >= 0) {
                receive(decoded);
            }
            avcodec.av_packet_unref(packet);
        }
        // A packet of nothing tells the decoder that there are no more.
        avcodec.avcodec_send_packet(decoder, new AVPacket(new Pointer()));
        receive(decoded);
        int rate = decoder.sample_rate();
        if (decoded.channels() == 0 || rate <= 0) {
            throw new UnreadableClip("a clip whose sound holds nothing that can be decoded", AS_WAV);
        }
        return new Reading.Read(new HeldSound(rate, speakers(decoded.channels()), decoded.rows()));
    }

    private void receive(Decoded decoded) throws UnreadableClip {
        while (avcodec.avcodec_receive_frame(decoder, frame) >= 0) {
            decoded.add(frame);
            avutil.av_frame_unref(frame);
        }
    }

    private List<Speaker> speakers(int channels) {
        AVChannelLayout layout = decoder.ch_layout();
        boolean isTold = layout.order() == avutil.AV_CHANNEL_ORDER_NATIVE && layout.nb_channels() == channels;
        return isTold ? Speaker.ofMask(layout.u_mask(), channels) : Speaker.ofCount(channels);
    }

    @Override
    public void close() {
        avcodec.avcodec_free_context(decoder);
        closeFile();
    }

    private void closeFile() {
        avutil.av_frame_free(frame);
        avcodec.av_packet_free(packet);
        avformat.avformat_close_input(container);
    }
}
