package plumeline.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/// Small pictures that must not move, one step a channel at most; what one must show is told in the folder's INDEX.md.
///
/// A picture that moved is written to `target/golden` beside the one that was expected and their difference, with a
/// page to look at. `-Dgolden.update=true` puts the new ones in place: one test at a time, and look at them.
final class Golden {
    static final int SIDE = 256;
    private static final Path KEPT = Path.of("src/test/resources/golden");
    private static final Path MOVED = Path.of("target/golden");

    private Golden() {}

    static void check(String name, BufferedImage actual) throws IOException {
        assertThat(Math.max(actual.getWidth(), actual.getHeight()))
                .as("a golden picture is small")
                .isLessThanOrEqualTo(SIDE);
        Path kept = KEPT.resolve(name + ".png");
        if (Boolean.getBoolean("golden.update")) {
            Files.createDirectories(kept.getParent());
            ImageIO.write(actual, "png", kept.toFile());
            return;
        }
        assertThat(kept).as("the golden picture; see INDEX.md beside it").exists();
        BufferedImage expected = ImageIO.read(kept.toFile());
        BufferedImage difference = difference(expected, actual);
        int most = most(difference);
        if (most > 1) {
            report(name, expected, actual, difference);
        }
        assertThat(most).as(name + " moved: see target/golden/index.html").isLessThanOrEqualTo(1);
    }

    private static BufferedImage difference(BufferedImage expected, BufferedImage actual) {
        int wide = Math.max(expected.getWidth(), actual.getWidth());
        int high = Math.max(expected.getHeight(), actual.getHeight());
        BufferedImage difference = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < high; y++) {
            for (int x = 0; x < wide; x++) {
                difference.setRGB(x, y, apart(at(expected, x, y), at(actual, x, y)));
            }
        }
        return difference;
    }

    /// A pixel; beyond a picture's edge one that no picture holds.
    private static int at(BufferedImage picture, int x, int y) {
        return x < picture.getWidth() && y < picture.getHeight() ? picture.getRGB(x, y) : 0xFF00FF;
    }

    private static int apart(int one, int other) {
        int all = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            all |= Math.abs((one >> shift & 0xFF) - (other >> shift & 0xFF)) << shift;
        }
        return all;
    }

    private static int most(BufferedImage difference) {
        int most = 0;
        for (int y = 0; y < difference.getHeight(); y++) {
            for (int x = 0; x < difference.getWidth(); x++) {
                int here = difference.getRGB(x, y);
                most = Math.max(most, Math.max(here >> 16 & 0xFF, Math.max(here >> 8 & 0xFF, here & 0xFF)));
            }
        }
        return most;
    }

    private static void report(String name, BufferedImage expected, BufferedImage actual, BufferedImage difference)
            throws IOException {
        String file = name.replace('/', '-');
        Files.createDirectories(MOVED);
        ImageIO.write(expected, "png", MOVED.resolve(file + "-expected.png").toFile());
        ImageIO.write(actual, "png", MOVED.resolve(file + "-actual.png").toFile());
        ImageIO.write(difference, "png", MOVED.resolve(file + "-difference.png").toFile());
        StringBuilder page = new StringBuilder("<!doctype html><title>Golden pictures that moved</title>");
        try (var files = Files.list(MOVED)) {
            files.filter(path -> path.toString().endsWith(".png"))
                    .sorted()
                    .map(path -> path.getFileName().toString())
                    .forEach(picture -> page.append("<figure><img src=\"%s\"><figcaption>%s</figcaption></figure>"
                            .formatted(picture, picture)));
        }
        Files.writeString(MOVED.resolve("index.html"), page);
    }
}
