package plumeline.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Random;
import org.junit.jupiter.api.Test;

/// The exact wall: solved against traced, least time, limits, the shortcut's error, both ways through.
final class FlatWallTest {
    private static final long SEED = 7_2026;
    private static final FlatWall TANK = FlatWall.ofWater(0.008);

    @Test
    void airSlope_tracedForward_arrivesAtThePoint() {
        Random random = new Random(SEED);
        for (int i = 0; i < 5000; i++) {
            FlatWall wall = wall(random);
            WallDepths depths = new WallDepths(power(random, -6, 1), power(random, -4, 0));
            double aside = power(random, -9, 3);
            double slope = wall.airSlope(depths, aside);
            assertThat(wall.asideMetres(depths, slope))
                    .as("seed %d, case %d", SEED, i)
                    .isCloseTo(aside, within(1e-12 * aside));
            // the slope itself is as good: the way aside grows at least as fast as a·slope, so look at both sides of it
            assertThat(asideExactly(wall, depths, slope * (1 - 1e-12)).doubleValue())
                    .isLessThan(aside);
            assertThat(asideExactly(wall, depths, slope * (1 + 1e-12)).doubleValue())
                    .isGreaterThan(aside);
        }
    }

    /// The same sum in 34 digits, angle by angle as Snell wrote it.
    private static BigDecimal asideExactly(FlatWall wall, WallDepths depths, double slope) {
        MathContext digits = MathContext.DECIMAL128;
        BigDecimal tangent = new BigDecimal(slope);
        BigDecimal square = tangent.multiply(tangent, digits);
        BigDecimal sineSquare = square.divide(square.add(BigDecimal.ONE), digits);
        BigDecimal aside = new BigDecimal(depths.airMetres()).multiply(tangent, digits);
        double[][] layers = {{wall.glassMetres(), wall.glassIndex()}, {depths.behindMetres(), wall.behindIndex()}};
        for (double[] layer : layers) {
            BigDecimal index = new BigDecimal(layer[1]);
            BigDecimal bent = sineSquare.divide(index.multiply(index, digits), digits);
            BigDecimal bentTangent =
                    bent.divide(BigDecimal.ONE.subtract(bent, digits), digits).sqrt(digits);
            aside = aside.add(new BigDecimal(layer[0]).multiply(bentTangent, digits), digits);
        }
        return aside;
    }

    @Test
    void airSlope_pathTakesLeastTime() {
        // Fermat: crossing points moved a little either way only make the optical path longer. Snell's law isn't used.
        Random random = new Random(SEED);
        for (int i = 0; i < 300; i++) {
            FlatWall wall = wall(random);
            WallDepths depths = new WallDepths(0.05 + random.nextDouble(), 0.01 + 0.3 * random.nextDouble());
            double aside = random.nextDouble();
            double slope = wall.airSlope(depths, aside);
            double outer = depths.airMetres() * slope;
            double inner = outer + new Layer(wall.glassMetres(), wall.glassIndex()).asideMetres(slope);
            double best = opticalPath(wall, depths, aside, outer, inner);
            for (double nudge : new double[] {-1e-4, 1e-4}) {
                assertThat(opticalPath(wall, depths, aside, outer + nudge, inner))
                        .isGreaterThan(best);
                assertThat(opticalPath(wall, depths, aside, outer, inner + nudge))
                        .isGreaterThan(best);
                assertThat(opticalPath(wall, depths, aside, outer + nudge, inner + nudge))
                        .isGreaterThan(best);
            }
        }
    }

    private static double opticalPath(FlatWall wall, WallDepths depths, double aside, double outer, double inner) {
        return Math.hypot(depths.airMetres(), outer)
                + wall.glassIndex() * Math.hypot(wall.glassMetres(), inner - outer)
                + wall.behindIndex() * Math.hypot(depths.behindMetres(), aside - inner);
    }

    @Test
    void airSlope_normalIncidence_isZero() {
        assertThat(TANK.airSlope(new WallDepths(0.5, 0.12), 0)).isZero();
        assertThat(TANK.apparentMetres(new WallDepths(0.5, 0.12), 0))
                .isCloseTo(0.5 + 0.008 / 1.52 + 0.12 / 1.333, within(1e-15));
    }

    @Test
    void airSlope_grazing_staysFiniteAndRises() {
        WallDepths touching = new WallDepths(1e-9, 0.1);
        double last = 0;
        for (double aside = 1e-3; aside < 1e6; aside *= 2) {
            double slope = TANK.airSlope(touching, aside);
            assertThat(slope).isFinite().isGreaterThan(last);
            last = slope;
        }
    }

    @Test
    void airSlope_growsWithTheWayAside_andShrinksWithDepth() {
        WallDepths depths = new WallDepths(0.7, 0.12);
        double last = 0;
        for (int i = 1; i < 500; i++) {
            double slope = TANK.airSlope(depths, i * 1e-3);
            assertThat(slope).isGreaterThan(last);
            assertThat(TANK.airSlope(new WallDepths(0.7, 0.13), i * 1e-3)).isLessThan(slope);
            last = slope;
        }
    }

    @Test
    void indexOne_wallIsNotThere() {
        FlatWall nothing = new FlatWall(0.008, 1, 1);
        WallDepths depths = new WallDepths(0.7, 0.12);
        assertThat(nothing.airSlope(depths, 0.3)).isCloseTo(0.3 / 0.828, within(1e-15));
        assertThat(nothing.paraxialShiftMetres(0.12)).isZero();
        assertThat(nothing.shiftErrorMetres(0.12, 1.2)).isZero();
    }

    @Test
    void directionBehind_dependsOnItsIndexOnly_notOnTheGlass() {
        double slope = Math.tan(0.4);
        double throughGlass = new Boundary(1.52, 1.333)
                .findBentRadians(new Boundary(1, 1.52).findBentRadians(0.4).orElseThrow())
                .orElseThrow();
        assertThat(new Layer(1, 1.333).asideMetres(slope)).isCloseTo(Math.tan(throughGlass), within(1e-15));
    }

    @Test
    void ray_goesTheSameWayBack() {
        Random random = new Random(SEED);
        for (int i = 0; i < 1000; i++) {
            double from = 1 + random.nextDouble();
            double to = 1 + random.nextDouble();
            double angle = Math.PI * (random.nextDouble() - 0.5);
            new Boundary(from, to).findBentRadians(angle).ifPresent(bent -> {
                double back = new Boundary(to, from).findBentRadians(bent).orElse(Math.PI / 2);
                assertThat(Math.abs(back)).isCloseTo(Math.abs(angle), within(1e-7));
            });
        }
    }

    @Test
    void boundary_pastTheCriticalAngle_reflectsTotally() {
        Boundary out = new Boundary(1.333, 1);
        double critical = out.findCriticalRadians().orElseThrow();
        assertThat(out.findBentRadians(critical - 1e-9)).isPresent();
        assertThat(out.findBentRadians(critical + 1e-9)).isEmpty();
        assertThat(new Boundary(1, 1.333).findCriticalRadians()).isEmpty();
    }

    @Test
    void shortcut_errorIsExactMinusParaxial_andBounded() {
        for (double thickness : new double[] {0.008, 0.12, 1}) {
            Layer layer = new Layer(thickness, 1.333);
            for (int tenths = 0; tenths < 900; tenths++) {
                double angle = Math.toRadians(tenths / 10.0);
                double error = layer.shiftErrorMetres(angle);
                assertThat(error).isCloseTo(layer.shiftMetres(angle) - layer.paraxialShiftMetres(), within(1e-15));
                assertThat(layer.shiftErrorBoundMetres(angle)).isGreaterThanOrEqualTo(error);
                assertThat(error).isBetween(0.0, thickness / 1.333);
            }
        }
        double eleven = Math.toRadians(11);
        Layer water = new Layer(0.12, 1.333);
        assertThat(water.shiftErrorBoundMetres(eleven) / water.shiftErrorMetres(eleven))
                .isLessThan(1.02);
    }

    @Test
    void apparentPoint_liesOnTheRaysLineInAir() {
        WallDepths depths = new WallDepths(0.7, 0.12);
        double slope = TANK.airSlope(depths, 0.2);
        assertThat(TANK.apparentMetres(depths, 0.2) * slope).isCloseTo(0.2, within(1e-15));
        double shift = 0.7 + 0.008 + 0.12 - TANK.apparentMetres(depths, 0.2);
        double angle = Math.atan(slope);
        assertThat(shift).isCloseTo(TANK.paraxialShiftMetres(0.12) + TANK.shiftErrorMetres(0.12, angle), within(1e-15));
    }

    @Test
    void outsideRanges_areRefusedByName() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WallDepths(0, 0.1))
                .withMessage("air in front of the wall is 0.0; must be finite and greater than 0");
        assertThatIllegalArgumentException().isThrownBy(() -> new FlatWall(-0.001, 1.5, 1.3));
        assertThatIllegalArgumentException().isThrownBy(() -> new FlatWall(0.001, 0.9, 1.3));
        assertThatIllegalArgumentException().isThrownBy(() -> new FlatWall(0.001, 1.5, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> TANK.airSlope(new WallDepths(1, 0.1), -1));
    }

    private static FlatWall wall(Random random) {
        return new FlatWall(0.02 * random.nextDouble(), 1 + random.nextDouble(), 1 + random.nextDouble());
    }

    private static double power(Random random, int least, int most) {
        return Math.pow(10, least + (most - least) * random.nextDouble());
    }
}
