package plumeline.cut.mask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import plumeline.plan.Plan;
import plumeline.tidy.Outside;

/// Masks of plans drawn by chance against a projection by hand.
@Outside(
        source = "Fermat's principle of least time, by crossing points that make the optical path least; the pinhole's"
                + " similar triangles (any text on optics)",
        kind = "closed form by another way")
final class MaskOutsideTest {
    private static final double NEAR_PIXELS = 0.05;
    private static final int PLANS = 24;
    private static final long SEED = 20261130;

    /// A row of the table: where a straight part of a line shows.
    private record Row(String line, String seen, double[] pixels, double[] places) {}

    private static List<Row> rows(Masked masked, long captured) {
        MaskCsv csv = new MaskCsv(masked);
        csv.add(new MaskCsv.Row("source", "", captured, captured, captured), masked.frame(captured));
        List<Row> rows = new ArrayList<>();
        for (String line : csv.text().lines().skip(1).toList()) {
            String[] cells = line.split(",", -1);
            assertThat(cells).hasSize(41);
            rows.add(new Row(cells[8], cells[10], numbers(cells, 11, 15), numbers(cells, 32, 38)));
        }
        return rows;
    }

    private static double[] numbers(String[] cells, int from, int to) {
        double[] numbers = new double[to - from];
        for (int i = from; i < to; i++) {
            numbers[i - from] = cells[i].isEmpty() ? Double.NaN : Double.parseDouble(cells[i]);
        }
        return numbers;
    }

    private static Optional<ByHand.Shown> shown(ByHand hand, String seen, double[] place, double at) {
        return seen.equals("mirrored") ? hand.mirrored(place, at) : hand.shown(place, at);
    }

    @Test
    void everyPartsEnds_areWhereTheyShowByHand() {
        Random random = new Random(SEED);
        int compared = 0;
        int mirrored = 0;
        for (int i = 0; i < PLANS; i++) {
            ByHand hand = new ByHand(random, i % 4 != 0);
            Masked masked = Held.masked(hand.lines());
            for (long captured : new long[] {-3, 0, Math.round(0.3 * hand.rate), Math.round(0.7 * hand.rate)}) {
                double at = captured / hand.rate;
                for (Row row : rows(masked, captured)) {
                    if (row.seen().equals("unknown")) {
                        continue;
                    }
                    for (int end = 0; end < 2; end++) {
                        double[] place = {row.places()[3 * end], row.places()[3 * end + 1], row.places()[3 * end + 2]};
                        assertThat(offLine(hand, row.line(), place, at))
                                .as("plan " + i + " " + row.line())
                                .isLessThan(2e-4);
                        Optional<ByHand.Shown> there = shown(hand, row.seen(), place, at);
                        // Just at a boundary the file's rounding may lie on its other side.
                        if (there.isPresent() && there.get().seen().equals(row.seen())) {
                            assertThat(row.pixels()[2 * end])
                                    .as("plan " + i + " " + row.line() + " " + row.seen())
                                    .isEqualTo(there.get().x(), within(NEAR_PIXELS));
                            assertThat(row.pixels()[2 * end + 1])
                                    .as("plan " + i + " " + row.line() + " " + row.seen())
                                    .isEqualTo(there.get().y(), within(NEAR_PIXELS));
                            compared++;
                            mirrored += row.seen().equals("mirrored") ? 1 : 0;
                        }
                    }
                }
            }
        }
        assertThat(mirrored).isGreaterThan(20);
        assertThat(compared).isGreaterThan(800);
    }

    private static double offLine(ByHand hand, String name, double[] place, double at) {
        ByHand.Strand strand = hand.strands(at).stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
        double[] way = ByHand.minus(strand.far(), strand.foot());
        double[] aside = ByHand.minus(place, strand.foot());
        double share = ByHand.dot(way, aside) / ByHand.dot(way, way);
        return ByHand.length(ByHand.minus(place, strand.at(Math.clamp(share, 0, 1))));
    }

    @Test
    void everyPlaceOfALine_isOnAPart() {
        Random random = new Random(SEED + 1);
        int compared = 0;
        int unknown = 0;
        for (int i = 0; i < PLANS; i++) {
            ByHand hand = new ByHand(random, i % 4 != 0);
            Masked masked = Held.masked(hand.lines());
            for (long captured : new long[] {0, Math.round(0.5 * hand.rate)}) {
                double at = captured / hand.rate;
                List<Row> rows = rows(masked, captured);
                for (ByHand.Strand strand : hand.strands(at)) {
                    for (int j = 1; j < 60; j++) {
                        Optional<ByHand.Shown> there = settled(hand, strand, j / 60.0, at);
                        if (there.isEmpty()) {
                            continue;
                        }
                        if (there.get().seen().equals("unknown")) {
                            assertThat(isWithin(rows, strand, j / 60.0))
                                    .as("plan " + i + " " + strand.name() + " at " + j)
                                    .isTrue();
                            unknown++;
                        } else if (hand.isInPicture(there.get())) {
                            assertThat(beside(rows, strand.name(), there.get()))
                                    .as("plan " + i + " " + strand.name() + " " + there.get())
                                    .isLessThan(NEAR_PIXELS);
                            compared++;
                        }
                    }
                }
            }
        }
        assertThat(compared).isGreaterThan(1000);
        assertThat(unknown).isGreaterThan(20);
    }

    /// How a place shows, where its near neighbours show alike.
    private static Optional<ByHand.Shown> settled(ByHand hand, ByHand.Strand strand, double share, double at) {
        Optional<ByHand.Shown> there = hand.shown(strand.at(share), at);
        for (double off : new double[] {-0.003, 0.003}) {
            Optional<ByHand.Shown> near = hand.shown(strand.at(share + off), at);
            if (there.isEmpty()
                    || near.isEmpty()
                    || !near.get().seen().equals(there.get().seen())) {
                return Optional.empty();
            }
        }
        return there;
    }

    private static boolean isWithin(List<Row> rows, ByHand.Strand strand, double share) {
        double[] place = strand.at(share);
        return rows.stream()
                .filter(row -> row.seen().equals("unknown") && row.line().equals(strand.name()))
                .anyMatch(row -> place[2] >= Math.min(row.places()[2], row.places()[5])
                        && place[2] <= Math.max(row.places()[2], row.places()[5]));
    }

    private static double beside(List<Row> rows, String line, ByHand.Shown shown) {
        double least = Double.POSITIVE_INFINITY;
        for (Row row : rows) {
            if (row.line().equals(line) && row.seen().equals(shown.seen())) {
                double x = row.pixels()[2] - row.pixels()[0];
                double y = row.pixels()[3] - row.pixels()[1];
                double share =
                        ((shown.x() - row.pixels()[0]) * x + (shown.y() - row.pixels()[1]) * y) / (x * x + y * y);
                double to = Math.clamp(share, 0, 1);
                least = Math.min(
                        least, Math.hypot(row.pixels()[0] + to * x - shown.x(), row.pixels()[1] + to * y - shown.y()));
            }
        }
        return least;
    }

    @Test
    void thePicture_isWhiteWhereverTheLineIsWhileTheShutterIsOpen() throws IOException {
        Random random = new Random(SEED + 2);
        int compared = 0;
        for (int i = 0; i < PLANS / 2; i++) {
            ByHand hand = new ByHand(random, i % 4 != 0);
            Plan plan = Held.plan(hand.lines());
            Masked masked = Held.masked(plan);
            long captured = Math.round(0.4 * hand.rate);
            Raster matte = read(masked, plan, captured);
            assertThat(matte.getWidth()).isEqualTo((int) hand.acrossPixels);
            assertThat(matte.getHeight()).isEqualTo((int) hand.downPixels);
            for (int k = 0; k <= 4; k++) {
                double at = captured / hand.rate + hand.exposure * k / 4;
                for (ByHand.Strand strand : hand.strands(at)) {
                    for (int j = 1; j < 60; j++) {
                        Optional<ByHand.Shown> there = settled(hand, strand, j / 60.0, at);
                        if (there.isEmpty() || there.get().seen().equals("unknown") || !hand.isInPicture(there.get())) {
                            continue;
                        }
                        double half = strand.diameter() / 2 * 2000 / there.get().depth();
                        for (double aside : new double[] {-half, 0, half}) {
                            int x = (int) Math.floor(there.get().x() + aside);
                            int y = (int) Math.floor(there.get().y());
                            if (x >= 0 && x < matte.getWidth()) {
                                assertThat(matte.getSample(x, y, 0))
                                        .as("plan " + i + " " + strand.name() + " " + there.get())
                                        .isEqualTo(255);
                                compared++;
                            }
                        }
                    }
                }
            }
        }
        assertThat(compared).isGreaterThan(1000);
    }

    private static Raster read(Masked masked, Plan plan, long captured) throws IOException {
        MaskNumbers numbers = MaskNumbers.of(plan, masked);
        String name = String.format(Locale.ROOT, "one/source/%07d.png", numbers.goFrame() + captured);
        for (MaskFiles.MaskFile file : MaskFiles.of(masked, numbers).files()) {
            if (file.name().equals(name)) {
                BufferedImage image =
                        ImageIO.read(new ByteArrayInputStream(file.bytes().get()));
                assertThat(image.getRaster().getNumBands()).isEqualTo(1);
                assertThat(image.getSampleModel().getSampleSize(0)).isEqualTo(8);
                return image.getData();
            }
        }
        throw new AssertionError("no " + name);
    }
}
