package plumeline.cut.mask;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import plumeline.geom.Point;

/// Matte pictures, read back by the platform's own reader.
final class MattePngTest {
    private static BufferedImage read(ClipSize size, List<List<Point>> patches) throws IOException {
        byte[] png = MattePng.of(size, List.of(new MaskFrame.Patches("line", patches)));
        return ImageIO.read(new ByteArrayInputStream(png));
    }

    private static int sample(BufferedImage image, int x, int y) {
        return image.getRaster().getSample(x, y, 0);
    }

    /// A box of whole pixels is those pixels; one a hair wider touches more.
    @Test
    void aBox_isEveryPixelThatItTouches() throws IOException {
        for (double wider : new double[] {0, 0.01}) {
            BufferedImage image =
                    read(new ClipSize(40, 30), List.of(box(10 - wider, 5 - wider, 20 + wider, 25 + wider)));
            int off = wider > 0 ? 1 : 0;
            for (int y = 0; y < 30; y++) {
                for (int x = 0; x < 40; x++) {
                    boolean isIn = x >= 10 - off && x < 20 + off && y >= 5 - off && y < 25 + off;
                    assertThat(sample(image, x, y)).as(x + ", " + y).isEqualTo(isIn ? 255 : 0);
                }
            }
        }
    }

    private static List<Point> box(double left, double top, double right, double bottom) {
        return List.of(new Point(left, top), new Point(right, top), new Point(right, bottom), new Point(left, bottom));
    }

    /// Patches by chance, over each other and over the edges, against a test of every pixel's own places.
    @Test
    void patchesByChance_areWhiteWhereTheyAre() throws IOException {
        Random random = new Random(5);
        int white = 0;
        for (int round = 0; round < 40; round++) {
            ClipSize size = new ClipSize(1 + random.nextInt(700), 1 + random.nextInt(90));
            List<List<Point>> patches = new ArrayList<>();
            for (int i = random.nextInt(4); i >= 0; i--) {
                List<Hull.Spot> spots = new ArrayList<>();
                for (int j = 0; j < 3; j++) {
                    spots.add(new Hull.Spot(
                            new Point(random.nextDouble(-100, 800), random.nextDouble(-30, 120)),
                            random.nextDouble(0.5, 20),
                            Optional.empty()));
                }
                patches.add(Hull.of(spots).corners());
            }
            BufferedImage image = read(size, patches);
            for (int i = 0; i < 3000; i++) {
                double x = random.nextDouble() * size.acrossPixels();
                double y = random.nextDouble() * size.downPixels();
                if (patches.stream().anyMatch(corners -> isIn(corners, x, y))) {
                    assertThat(sample(image, (int) x, (int) y)).isEqualTo(255);
                    white++;
                }
                int px = (int) x;
                int py = (int) y;
                // Only a touched pixel is white: one with no patch within its diagonal stays black.
                if (patches.stream().allMatch(corners -> awayPixels(corners, px + 0.5, py + 0.5) > 0.7072)) {
                    assertThat(sample(image, px, py)).isEqualTo(0);
                }
            }
        }
        assertThat(white).isGreaterThan(5000);
    }

    /// Corners run one way round: a place is in where it is on the same side of all edges.
    private static boolean isIn(List<Point> corners, double x, double y) {
        return awayPixels(corners, x, y) <= 0;
    }

    private static double awayPixels(List<Point> corners, double x, double y) {
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            double cross = (b.x() - a.x()) * (y - a.y()) - (b.y() - a.y()) * (x - a.x());
            most = Math.max(most, -cross / Math.hypot(b.x() - a.x(), b.y() - a.y()));
        }
        return most;
    }

    @Test
    void nothing_isBlack() throws IOException {
        BufferedImage image = read(new ClipSize(3840, 2160), List.of());
        assertThat(image.getWidth()).isEqualTo(3840);
        assertThat(image.getHeight()).isEqualTo(2160);
        assertThat(Arrays.stream(image.getRaster().getSamples(0, 0, 3840, 2160, 0, (int[]) null))
                        .max())
                .hasValue(0);
    }
}
