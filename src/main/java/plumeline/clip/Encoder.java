package plumeline.clip;

import java.io.IOException;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;

/// What makes packets of pictures or of sound.
sealed interface Encoder permits PictureEncoder, SoundEncoder {
    AVCodecContext context();

    /// Takes the next packet that is ready; false where there is none.
    boolean receive(AVPacket packet) throws IOException;
}
