package plumeline.cli.picture;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumeline.clip.Movie;
import plumeline.desk.Arguments;
import plumeline.desk.Refusal;
import plumeline.desk.Usage;

/// How finely pictures are drawn, as options say it.
///
/// @param size their size, where it is given
/// @param samples rays a pixel
/// @param seed draws their places
/// @param threads how many work
record PictureOptions(Optional<Size> size, int samples, long seed, int threads) {
    static final int SAMPLES = 4;
    private static final int MOST_SAMPLES = 4096;
    private static final Pattern PAIR = Pattern.compile("([0-9]{1,5})[xX×]([0-9]{1,5})");

    /// Pixels across and down.
    record Size(int width, int height) {}

    /// The options themselves.
    static List<Usage.Option> options(String size) {
        return List.of(
                Usage.valued("--size", "WxH", size),
                Usage.valued("--samples", "N", "Follows so many rays a pixel; else " + SAMPLES + "."),
                Usage.valued("--seed", "N", "Takes other chance; else 1."),
                PictureChoice.threads());
    }

    static PictureOptions read(Arguments given) throws Refusal {
        return new PictureOptions(
                size(given),
                (int) PictureChoice.whole(given, "--samples", 1, MOST_SAMPLES, SAMPLES),
                PictureChoice.whole(given, "--seed", 1, Integer.MAX_VALUE, 1),
                PictureChoice.threads(given));
    }

    private static Optional<Size> size(Arguments given) throws Refusal {
        Optional<String> text = given.findValue("--size");
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Matcher pair = PAIR.matcher(text.get().strip());
        if (pair.matches()) {
            Size size = new Size(Integer.parseInt(pair.group(1)), Integer.parseInt(pair.group(2)));
            if (isSide(size.width()) && isSide(size.height())) {
                return Optional.of(size);
            }
        }
        throw new Refusal(
                "--size is " + text.get() + "; must be two even numbers from 16 to 3840 with an x between",
                "Give such as --size 640x360.");
    }

    private static boolean isSide(int pixels) {
        return Movie.Form.isSide(pixels);
    }

    /// What tells files of pictures apart beside their size.
    String name() {
        return samples + "-" + seed;
    }
}
