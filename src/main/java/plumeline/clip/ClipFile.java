package plumeline.clip;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Path;
import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVInputFormat;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avformat;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.Pointer;
import org.bytedeco.javacpp.PointerPointer;

/// A clip's file, opened; no other file is.
final class ClipFile {
    /// The containers that are opened: none of them names other files or addresses to be fetched.
    static final String SOUNDS = "aac,ac3,aiff,amr,ape,asf,avi,caf,eac3,flac,flv,matroska,webm,mov,mp4,m4a,3gp,3g2,mj2,"
            + "mp3,mpeg,mpegts,mxf,ogg,tta,w64,wav,wv";

    /// Those with pictures, and single pictures.
    static final String PICTURES =
            "apng,asf,avi,flv,gif,h264,hevc,ivf,matroska,webm,mov,mp4,m4a,3gp,3g2,mj2,mpeg,mpegts,mxf,ogg,png_pipe,"
                    + "jpeg_pipe,tiff_pipe,webp_pipe,bmp_pipe,exr_pipe";

    private ClipFile() {}

    /// Opens a file; a failing library frees the container.
    ///
    /// @return false where it can't be read
    static boolean open(AVFormatContext container, Path file, String containers) {
        AVDictionary options = new AVDictionary();
        avutil.av_dict_set(options, "protocol_whitelist", "file", 0);
        avutil.av_dict_set(options, "format_whitelist", containers, 0);
        int status;
        try (BytePointer name = new BytePointer("file:" + file.toAbsolutePath(), UTF_8)) {
            status = avformat.avformat_open_input(container, name, new AVInputFormat(new Pointer()), options);
        }
        avutil.av_dict_free(options);
        return status >= 0 && avformat.avformat_find_stream_info(container, new PointerPointer<>(new Pointer())) >= 0;
    }

    /// Opens the decoder of a stream.
    static AVCodecContext decoder(AVStream stream, UnreadableClip otherwise) throws UnreadableClip {
        AVCodec codec = avcodec.avcodec_find_decoder(stream.codecpar().codec_id());
        AVCodecContext context = avcodec.avcodec_alloc_context3(codec);
        boolean isOpen = codec != null
                && avcodec.avcodec_parameters_to_context(context, stream.codecpar()) >= 0
                && avcodec.avcodec_open2(context, codec, new AVDictionary()) >= 0;
        if (!isOpen) {
            avcodec.avcodec_free_context(context);
            throw otherwise;
        }
        return context;
    }
}
