package plumeline.clip;

import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_VIDEO;

import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.Optional;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avformat;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.ffmpeg.global.swscale;
import org.bytedeco.ffmpeg.swscale.SwsContext;
import org.bytedeco.ffmpeg.swscale.SwsFilter;
import org.bytedeco.javacpp.DoublePointer;
import org.bytedeco.javacpp.Pointer;
import plumeline.quantity.FrameRate;

/// The pictures of a clip, or a single picture, opened. Frames are read in order; to go back begins anew.
public final class PictureTrack implements AutoCloseable {
    private static final String AS_OTHER = "Have it written as H.264 in an MP4 file, or as a PNG file, and name that.";
    private static final int BYTES = 4;

    private AVFormatContext container = avformat.avformat_alloc_context();
    private final AVPacket packet = avcodec.av_packet_alloc();
    private final AVFrame frame = avutil.av_frame_alloc();
    private final AVFrame shown = avutil.av_frame_alloc();
    private final Path file;
    private final int track;
    private AVCodecContext decoder;
    private Optional<SwsContext> scaler = Optional.empty();
    private long next;
    private long frames = -1;
    private boolean isDrained;

    /// What a clip's pictures are like.
    ///
    /// @param width pixels across
    /// @param height pixels down
    /// @param rate frames a second, as its file has it; 1 for a single picture
    /// @param primaries the tag of its primaries, as the standards' tables name it, such as `bt709` or `unknown`
    /// @param transfer the tag of its transfer
    /// @param matrix the tag of its matrix
    /// @param range `tv` for limited range, `pc` for full; of what isn't tagged, as its form usually has it
    public record Facts(
            int width, int height, FrameRate rate, String primaries, String transfer, String matrix, String range) {
        /// Tells whether its codes leave room above and below what is shown.
        ///
        /// @return true for limited range
        public boolean isLimited() {
            return range.equals("tv");
        }
    }

    PictureTrack(Path file) throws UnreadableClip {
        this.file = file;
        avutil.av_log_set_level(avutil.AV_LOG_QUIET);
        decoder = new AVCodecContext(new Pointer());
        try {
            track = open();
        } catch (UnreadableClip | RuntimeException e) {
            close();
            throw e;
        }
    }

    private int open() throws UnreadableClip {
        if (!ClipFile.open(container, file, ClipFile.PICTURES)) {
            throw new UnreadableClip("which is no clip and no picture that can be read here", AS_OTHER);
        }
        int found = find();
        decoder = ClipFile.decoder(
                container.streams(found),
                new UnreadableClip("a clip whose pictures are in a form that isn't known here", AS_OTHER));
        return found;
    }

    private int find() throws UnreadableClip {
        int found = -1;
        for (int i = 0; i < container.nb_streams(); i++) {
            AVStream stream = container.streams(i);
            boolean isPicture = stream.codecpar().codec_type() == AVMEDIA_TYPE_VIDEO
                    && (stream.disposition() & avformat.AV_DISPOSITION_ATTACHED_PIC) == 0;
            if (isPicture && found < 0) {
                found = i;
            } else {
                stream.discard(avcodec.AVDISCARD_ALL);
            }
        }
        if (found < 0) {
            throw new UnreadableClip("a clip without pictures", "Name the file that holds the pictures.");
        }
        return found;
    }

    /// Tells what its pictures are like.
    ///
    /// @return the facts
    public Facts facts() {
        AVStream stream = container.streams(track);
        AVRational rate = stream.avg_frame_rate().num() > 0 ? stream.avg_frame_rate() : stream.r_frame_rate();
        boolean isRated = rate.num() > 0 && rate.den() > 0;
        boolean isLimited = stream.codecpar().color_range() == avutil.AVCOL_RANGE_MPEG
                || stream.codecpar().color_range() == avutil.AVCOL_RANGE_UNSPECIFIED && !isFull();
        return new Facts(
                decoder.width(),
                decoder.height(),
                isRated ? new FrameRate(rate.num(), rate.den()) : new FrameRate(1, 1),
                avutil.av_color_primaries_name(stream.codecpar().color_primaries())
                        .getString(),
                avutil.av_color_transfer_name(stream.codecpar().color_trc()).getString(),
                avutil.av_color_space_name(stream.codecpar().color_space()).getString(),
                isLimited ? "tv" : "pc");
    }

    /// Whether its codes are red, green and blue themselves.
    private boolean hasNoMatrix() {
        long flags = avutil.av_pix_fmt_desc_get(decoder.pix_fmt()).flags();
        return (flags & (avutil.AV_PIX_FMT_FLAG_RGB | avutil.AV_PIX_FMT_FLAG_PAL)) != 0;
    }

    private boolean isFull() {
        return hasNoMatrix()
                || decoder.pix_fmt() == avutil.AV_PIX_FMT_YUVJ420P
                || decoder.pix_fmt() == avutil.AV_PIX_FMT_YUVJ422P
                || decoder.pix_fmt() == avutil.AV_PIX_FMT_YUVJ444P
                || decoder.pix_fmt() == avutil.AV_PIX_FMT_GRAY8;
    }

    /// Counts the frames, where its file doesn't tell by reading all of them.
    ///
    /// @return how many can be decoded
    public long countFrames() {
        if (frames < 0) {
            long at = next;
            while (decode()) {
                next++;
            }
            frames = next;
            rewind();
            skipTo(at);
        }
        return frames;
    }

    /// Finds a frame.
    ///
    /// @param number from 0
    /// @return a number a pixel, `red · 65536 + green · 256 + blue`, rows from the top; empty past the last
    public Optional<int[]> find(long number) {
        if (number < next) {
            rewind();
        }
        if (number < 0 || !skipTo(number) || !decode()) {
            return Optional.empty();
        }
        next++;
        return Optional.of(packed());
    }

    private boolean skipTo(long number) {
        while (next < number) {
            if (!decode()) {
                return false;
            }
            next++;
        }
        return true;
    }

    /// Begins anew: not all that can be read can be looked through.
    private void rewind() {
        avcodec.avcodec_free_context(decoder);
        avformat.avformat_close_input(container);
        container = avformat.avformat_alloc_context();
        try {
            if (open() != track) {
                throw new IllegalStateException("pictures moved within " + file);
            }
        } catch (UnreadableClip e) {
            throw new IllegalStateException(file + " changed while it was read", e);
        }
        isDrained = false;
        next = 0;
    }

    /// Decodes the next frame; false where there is none.
    private boolean decode() {
        while (true) {
            avutil.av_frame_unref(frame);
            if (avcodec.avcodec_receive_frame(decoder, frame) >= 0) {
                return true;
            }
            if (isDrained) {
                return false;
            }
            boolean isThere = avformat.av_read_frame(container, packet) >= 0;
            if (!isThere) {
                // A packet of nothing tells the decoder that there are no more.
                avcodec.avcodec_send_packet(decoder, new AVPacket(new Pointer()));
                isDrained = true;
            } else {
                if (packet.stream_index() == track) {
                    avcodec.avcodec_send_packet(decoder, packet);
                }
                avcodec.av_packet_unref(packet);
            }
        }
    }

    private int[] packed() {
        int width = frame.width();
        int height = frame.height();
        avutil.av_frame_unref(shown);
        shown.format(avutil.AV_PIX_FMT_BGRA).width(width).height(height);
        avutil.av_frame_get_buffer(shown, 0);
        swscale.sws_scale(scaler(), frame.data(), frame.linesize(), 0, height, shown.data(), shown.linesize());
        int step = shown.linesize(0);
        ByteBuffer bytes = shown.data(0).capacity((long) step * height).asByteBuffer();
        int[] packed = new int[width * height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int at = y * step + BYTES * x;
                packed[y * width + x] =
                        (bytes.get(at + 2) & 255) << 16 | (bytes.get(at + 1) & 255) << 8 | bytes.get(at) & 255;
            }
        }
        return packed;
    }

    private SwsContext scaler() {
        if (scaler.isEmpty()) {
            SwsContext made = swscale.sws_getContext(
                    frame.width(),
                    frame.height(),
                    frame.format(),
                    frame.width(),
                    frame.height(),
                    avutil.AV_PIX_FMT_BGRA,
                    swscale.SWS_BILINEAR | swscale.SWS_ACCURATE_RND | swscale.SWS_FULL_CHR_H_INT | swscale.SWS_BITEXACT,
                    new SwsFilter(new Pointer()),
                    new SwsFilter(new Pointer()),
                    new DoublePointer(new Pointer()));
            scaler = Optional.of(made);
            if (hasNoMatrix()) {
                return made;
            }
            // What isn't tagged: by its size, as players take it.
            int matrix = frame.colorspace() == avutil.AVCOL_SPC_UNSPECIFIED
                    ? frame.height() >= 576 ? swscale.SWS_CS_ITU709 : swscale.SWS_CS_ITU601
                    : frame.colorspace();
            swscale.sws_setColorspaceDetails(
                    made,
                    swscale.sws_getCoefficients(matrix),
                    facts().isLimited() ? 0 : 1,
                    swscale.sws_getCoefficients(swscale.SWS_CS_ITU709),
                    1,
                    0,
                    1 << 16,
                    1 << 16);
        }
        return scaler.get();
    }

    @Override
    public void close() {
        scaler.ifPresent(swscale::sws_freeContext);
        scaler = Optional.empty();
        if (!decoder.isNull()) {
            avcodec.avcodec_free_context(decoder);
        }
        avutil.av_frame_free(shown);
        avutil.av_frame_free(frame);
        avcodec.av_packet_free(packet);
        avformat.avformat_close_input(container);
    }

    @Override
    public String toString() {
        return "pictures of " + file;
    }
}
