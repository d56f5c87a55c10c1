package plumeline.clip;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVIOContext;
import org.bytedeco.ffmpeg.avformat.AVOutputFormat;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avformat;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.Pointer;
import plumeline.quantity.FrameRate;
import plumeline.sound.Sound;

/// Writes a moving picture with its sound: H.264 (constrained baseline, 4:2:0) and AAC in an MP4 file whose index comes
/// first. Every frame stands at its exact time; the same pictures and sound give the same bytes.
///
/// Pictures come as sRGB display values and are tagged with BT.709 primaries, transfer and matrix, in limited range;
/// the code values are those of the display values.
///
/// Nothing is a film before [#finish]: whoever closes it earlier throws the file away.
public final class Movie implements AutoCloseable {
    private static final int MOST_PIXELS = 3840;
    private static final int LEAST_PIXELS = 16;

    private final Form form;
    private final AVFormatContext container = new AVFormatContext(null);
    private final AVIOContext io = new AVIOContext(null);
    private final AVPacket packet = avcodec.av_packet_alloc();
    private final PictureEncoder pictures;
    private final SoundEncoder sounds;
    private final Path file;
    private long frames;
    private boolean isFinished;

    /// What a film is like.
    ///
    /// @param width pixels across, even, 16 to 3840
    /// @param height pixels down, even, 16 to 3840
    /// @param rate frames a second; numerator and denominator below 2³¹
    /// @param timecode the label of its first frame, where its rate has timecode
    /// @param title what it is called
    public record Form(int width, int height, FrameRate rate, Optional<String> timecode, String title) {
        /// Checks the ranges.
        public Form {
            if (!isSide(width) || !isSide(height)) {
                throw new IllegalArgumentException("a film of " + width + " x " + height);
            }
            if (!isCounted(rate)) {
                throw new IllegalArgumentException("a film at " + rate.toText());
            }
        }

        /// Tells whether a picture may be so wide, or so high.
        ///
        /// @param pixels pixels
        /// @return true for even counts from 16 to 3840
        public static boolean isSide(int pixels) {
            return pixels >= LEAST_PIXELS && pixels <= MOST_PIXELS && pixels % 2 == 0;
        }

        /// Tells whether a film's file can count in a rate exactly.
        ///
        /// @param rate frames a second
        /// @return true where numerator and denominator are below 2³¹
        public static boolean isCounted(FrameRate rate) {
            return rate.numerator() <= Integer.MAX_VALUE && rate.denominator() <= Integer.MAX_VALUE;
        }
    }

    private Movie(Path file, Form form, Sound sound) throws IOException {
        this.file = file;
        this.form = form;
        avutil.av_log_set_level(avutil.AV_LOG_QUIET);
        Codecs.check(
                avformat.avformat_alloc_output_context2(container, new AVOutputFormat(new Pointer()), "mp4", null),
                "no film can be written here");
        container.flags(container.flags() | AVFormatContext.AVFMT_FLAG_BITEXACT);
        try {
            pictures = new PictureEncoder(form);
            try {
                sounds = new SoundEncoder(sound);
            } catch (IOException | RuntimeException e) {
                pictures.close();
                throw e;
            }
        } catch (IOException | RuntimeException e) {
            closeFile();
            throw e;
        }
    }

    /// Begins a film.
    ///
    /// @param file where it is written; what is there is lost
    /// @param form what it is like
    /// @param sound its sound, one channel or two, heard from its first frame on
    /// @return the film, to be filled
    /// @throws IOException where it can't be written, in a plain line
    public static Movie open(Path file, Form form, Sound sound) throws IOException {
        try {
            Movie movie = new Movie(file, form, sound);
            try {
                movie.begin();
            } catch (IOException | RuntimeException e) {
                movie.close();
                throw e;
            }
            return movie;
        } catch (LinkageError e) {
            throw new IOException("films can't be written here: there is no encoder for this system", e);
        }
    }

    private void begin() throws IOException {
        AVStream shown =
                stream(Codecs.rational(form.rate().denominator(), form.rate().numerator()));
        Codecs.check(
                avcodec.avcodec_parameters_from_context(shown.codecpar(), pictures.context()),
                "pictures can't be written");
        shown.avg_frame_rate(
                Codecs.rational(form.rate().numerator(), form.rate().denominator()));
        shown.r_frame_rate(shown.avg_frame_rate());
        AVStream heard = stream(Codecs.rational(1, sounds.samplesPerSecond()));
        Codecs.check(
                avcodec.avcodec_parameters_from_context(heard.codecpar(), sounds.context()), "sound can't be written");
        form.timecode().ifPresent(label -> tag(shown, "timecode", label));
        AVDictionary title = container.metadata() == null ? new AVDictionary() : container.metadata();
        avutil.av_dict_set(title, "title", form.title(), 0);
        container.metadata(title);
        try (BytePointer name = new BytePointer("file:" + file.toAbsolutePath(), UTF_8)) {
            container.url(new BytePointer(avutil.av_strdup(name)));
            check(avformat.avio_open(io, name, avformat.AVIO_FLAG_WRITE));
        }
        container.pb(io);
        AVDictionary options = new AVDictionary();
        avutil.av_dict_set(options, "movflags", "+faststart", 0);
        long ticks = ticks();
        avutil.av_dict_set(options, "video_track_timescale", Long.toString(ticks), 0);
        avutil.av_dict_set(options, "movie_timescale", Long.toString(common(ticks)), 0);
        int status = avformat.avformat_write_header(container, options);
        avutil.av_dict_free(options);
        check(status);
    }

    private AVStream stream(org.bytedeco.ffmpeg.avutil.AVRational base) throws IOException {
        AVStream stream = avformat.avformat_new_stream(container, null);
        if (stream == null) {
            throw new IOException("no film can be written here");
        }
        stream.time_base(base);
        return stream;
    }

    private static void tag(AVStream stream, String key, String value) {
        AVDictionary tags = stream.metadata() == null ? new AVDictionary() : stream.metadata();
        avutil.av_dict_set(tags, key, value, 0);
        stream.metadata(tags);
    }

    /// Ticks a second in which every frame begins at a whole one: the rate's numerator, or so many of it that it is
    /// fine enough for players.
    private long ticks() {
        long ticks = form.rate().numerator();
        while (ticks < 10_000) {
            ticks *= 10;
        }
        return ticks;
    }

    /// Ticks in which lengths of pictures and sound are both whole, where there are any.
    private long common(long ticks) {
        long rate = sounds.samplesPerSecond();
        long both =
                ticks / BigInteger.valueOf(ticks).gcd(BigInteger.valueOf(rate)).longValue() * rate;
        return both <= Integer.MAX_VALUE ? both : ticks;
    }

    /// Adds a frame.
    ///
    /// @param packed a number a pixel, `red · 65536 + green · 256 + blue`, rows from the top; it isn't kept
    /// @throws IOException where it can't be written
    public void add(int[] packed) throws IOException {
        pictures.encode(packed, frames++);
        drain(pictures, 0);
        addSound(sampleAt(frames));
    }

    /// The sample up to which sound belongs to so many frames.
    private long sampleAt(long count) {
        return BigInteger.valueOf(count)
                .multiply(BigInteger.valueOf(form.rate().denominator()))
                .multiply(BigInteger.valueOf(sounds.samplesPerSecond()))
                .divide(BigInteger.valueOf(form.rate().numerator()))
                .longValueExact();
    }

    private void addSound(long past) throws IOException {
        while (sounds.encode(past)) {
            drain(sounds, 1);
        }
    }

    private void drain(Encoder encoder, int track) throws IOException {
        while (encoder.receive(packet)) {
            packet.stream_index(track);
            avcodec.av_packet_rescale_ts(
                    packet,
                    encoder.context().time_base(),
                    container.streams(track).time_base());
            check(avformat.av_interleaved_write_frame(container, packet));
        }
    }

    /// Completes the film: what is left of its sound, then the index.
    ///
    /// @throws IOException where it can't be written
    public void finish() throws IOException {
        pictures.end();
        drain(pictures, 0);
        addSound(Long.MAX_VALUE);
        sounds.end();
        drain(sounds, 1);
        check(avformat.av_write_trailer(container));
        check(io.error());
        check(avformat.avio_closep(io));
        isFinished = true;
    }

    /// Lets go of everything; a film that isn't finished is no film.
    @Override
    public void close() {
        pictures.close();
        sounds.close();
        if (!isFinished && !io.isNull()) {
            avformat.avio_closep(io);
        }
        closeFile();
    }

    private void closeFile() {
        avcodec.av_packet_free(packet);
        container.pb(new AVIOContext(new Pointer()));
        avformat.avformat_free_context(container);
    }

    private void check(int status) throws IOException {
        Codecs.check(status, file + " can't be written");
    }

    /// Lists the tags of what is written, as the standards' tables name them.
    ///
    /// @return primaries, transfer, matrix, range
    public static List<String> colourTags() {
        return List.of("bt709", "bt709", "bt709", "tv");
    }
}
