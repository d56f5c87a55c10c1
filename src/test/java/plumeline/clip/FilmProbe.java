package plumeline.clip;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumeline.cli.OutsideTool;

/// A film as programs that are not ours read it.
public final class FilmProbe {
    private FilmProbe() {}

    /// What a track is like, and its file: names as the program prints them, tags as `TAG:name`. Frames are counted by
    /// decoding them.
    ///
    /// @param track `v:0` or `a:0`
    public static Map<String, String> track(Path file, String track) {
        byte[] out = OutsideTool.run(
                OutsideTool.find("ffprobe", "ffmpeg"),
                "-v",
                "error",
                "-count_frames",
                "-select_streams",
                track,
                "-show_entries",
                "stream:stream_tags:format=duration:format_tags",
                "-of",
                "default=noprint_wrappers=1",
                file.toString());
        Map<String, String> values = new LinkedHashMap<>();
        for (String line : new String(out, UTF_8).split("\n")) {
            int at = line.indexOf('=');
            values.putIfAbsent(line.substring(0, at), line.substring(at + 1));
        }
        return values;
    }

    /// Every frame decoded: red, green and blue a pixel.
    public static byte[] colours(Path file) {
        return pixels(file, "rgb24", "-sws_flags", "accurate_rnd+full_chroma_int");
    }

    /// Every frame decoded: a byte of brightness a pixel.
    public static byte[] brightness(Path file) {
        return pixels(file, "gray");
    }

    /// Every frame decoded as it was encoded: a plane of brightness, one of blue differences, one of red.
    public static byte[] codes(Path file) {
        return pixels(file, "yuv420p");
    }

    private static byte[] pixels(Path file, String form, String... options) {
        List<String> words = new ArrayList<>(List.of("-v", "error", "-i", file.toString()));
        words.addAll(List.of(options));
        words.addAll(List.of("-f", "rawvideo", "-pix_fmt", form, "-"));
        return OutsideTool.run(OutsideTool.find("ffmpeg", "ffmpeg"), words.toArray(String[]::new));
    }
}
