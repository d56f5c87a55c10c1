package plumeline.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.geom.Vec;
import plumeline.tidy.Outside;

/// Faces that aren't even, against sums over small pieces and counts of points.
@Outside(
        source = "midpoint quadrature and counts written here; area common to two equal circles and mean of 2^-x (any"
                + " book of geometry and analysis)",
        kind = "worked example")
final class GlowOutsideTest {
    private static final Vec FRONT = new Vec(0, 1, 0);
    private static final Vec RIGHT = new Vec(-1, 0, 0);
    private static final Panel PANEL = new Panel(Vec.ZERO, FRONT, RIGHT, 0.6, 0.4, 1);

    /// The mean as light counts it, from near before its middle, from aside, from far, and over its edge.
    @ParameterizedTest
    @CsvSource({"0, 0.1, 0", "0.1, 0.25, 0.05", "0.5, 0.3, 0.2", "0, 3, 0", "0.3, 0.05, 0.2"})
    void mean_isThatOfSmallPieces(double x, double y, double z) {
        Patch patch = new Patch(new Vec(x, y, z), new Vec(0, -1, 0));
        for (double stops : new double[] {0.5, 1, 2}) {
            HotCentre glow = HotCentre.of(PANEL, stops);
            double all = 0;
            double sum = 0;
            int across = 900;
            int along = 600;
            for (int i = 0; i < across; i++) {
                for (int j = 0; j < along; j++) {
                    double u = 2 * (i + 0.5) / across - 1;
                    double v = 2 * (j + 0.5) / along - 1;
                    Vec way = new Vec(0.3 * u, 0, 0.2 * v).minus(patch.place());
                    double square = way.dot(way);
                    double weight = way.y() * way.y() / (square * square);
                    all += weight;
                    sum += weight * Math.pow(2, -stops * (u * u + v * v) / 2);
                }
            }
            double mean = SkyMean.of(
                    PANEL.outline(patch.place()),
                    patch,
                    way -> glow.share(
                            patch.place().plus(way.times(-patch.place().y() / way.y())), way.times(-1)));
            assertThat(mean).isCloseTo(sum / all, within(0.001 * sum / all));
        }
    }

    /// A panel's corner is as many stops under its middle as it says, the middle of an edge half of them; a disc's edge
    /// all round.
    @Test
    void hotCentre_fallsOffByItsStops() {
        HotCentre panel = HotCentre.of(PANEL, 2);
        assertThat(panel.share(new Vec(0.3, 0, 0.2), FRONT)).isCloseTo(0.25, within(1e-12));
        assertThat(panel.share(new Vec(0, 0, 0.2), FRONT)).isCloseTo(0.5, within(1e-12));
        HotCentre disc = HotCentre.of(new Disc(Vec.ZERO, FRONT, 0.3, 1), 1);
        assertThat(disc.share(new Vec(0.3 * Math.sin(1), 0, 0.3 * Math.cos(1)), FRONT))
                .isCloseTo(0.5, within(1e-12));
    }

    /// The mean of 2^-x from 0 to 1 is 1/(2 ln 2); a panel's by a sum.
    @Test
    void hotCentre_meansAreThoseOfAnalysis() {
        assertThat(HotCentre.of(new Disc(Vec.ZERO, FRONT, 0.3, 1), 1).meanOverDisc(0.3))
                .isCloseTo(0.5 / Math.log(2), within(1e-12));
        double sum = 0;
        for (int i = 0; i < 1000; i++) {
            double u = (i + 0.5) / 1000;
            sum += Math.pow(2, -1.5 * u * u / 2) / 1000;
        }
        assertThat(HotCentre.of(PANEL, 1.5).meanOver(0.6, 0.4)).isCloseTo(sum * sum, within(1e-6));
    }

    /// Of points in a cell's far end those count that its near end covers; seed 7.
    @Test
    void grid_passesWhatBothEndsShare() {
        CellGrid grid = new CellGrid(FRONT, 0.5);
        for (double tangent : new double[] {0, 0.05, 0.2, 0.3, 0.45}) {
            Random random = new Random(7);
            int in = 0;
            int both = 0;
            for (int i = 0; i < 400_000; i++) {
                double x = 2 * random.nextDouble() - 1;
                double y = 2 * random.nextDouble() - 1;
                if (x * x + y * y < 1) {
                    in++;
                    // Diameter 2, depth 4: the far end is moved aside by 4 tan.
                    double moved = x + 4 * tangent;
                    both += moved * moved + y * y < 1 ? 1 : 0;
                }
            }
            assertThat(grid.passing(tangent)).isCloseTo((double) both / in, within(0.004));
        }
        assertThat(grid.passing(0.5)).isZero();
        assertThat(grid.passing(3)).isZero();
    }

    /// At the edges of its beam half is left, as beam angles are told: common practice.
    @Test
    void grid_leavesHalfAtItsBeamsEdge() {
        CellGrid grid = CellGrid.ofBeam(FRONT, Math.toRadians(40));
        double edge = Math.toRadians(20);
        assertThat(grid.share(Vec.ZERO, new Vec(Math.sin(edge), Math.cos(edge), 0)))
                .isCloseTo(0.5, within(1e-6));
        assertThat(grid.share(Vec.ZERO, FRONT)).isCloseTo(1, within(1e-12));
        assertThat(grid.share(Vec.ZERO, new Vec(1, -0.1, 0))).isZero();
    }
}
