package plumeline.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/// Drops: exact limits, scaling, ranges.
final class DropsTest {
    private static final Drops.Liquid WATER = new Drops.Liquid(998.2, 0.07274);
    private static final double UPRIGHT = Math.PI / 2;

    /// Half a ball, a flat disc, and a ball that touches (2π over its base, which shrinks): closed forms.
    @Test
    void dryingShape_hasItsExactLimits() {
        assertThat(Drops.shape(Math.PI / 2)).isCloseTo(2, within(1e-9));
        assertThat(Drops.shape(0)).isCloseTo(4 / Math.PI, within(1e-6));
        double theta = Math.toRadians(165);
        // A ball on a plane loses 4π R D Δc ln 2: over π a D Δc with a = R sin θ.
        assertThat(Drops.shape(theta) * Math.sin(theta) / (4 * Math.log(2))).isCloseTo(1, within(0.02));
    }

    /// Hu and Larson's fit to a field computation, 0.27 θ² + 1.30, good for angles up to 90 degrees.
    @Test
    void dryingShape_agreesWithAFittedFormula() {
        for (int degrees = 10; degrees <= 90; degrees += 5) {
            double theta = Math.toRadians(degrees);
            assertThat(Drops.shape(theta)).isCloseTo(0.27 * theta * theta + 1.30, withinPercentage(2.5));
        }
    }

    @Test
    void cap_isHalfABallAtNinetyDegrees() {
        assertThat(Drops.capMetres3(2e-3, Math.PI / 2)).isCloseTo(2 * Math.PI / 3 * 1e-9, withinPercentage(1e-9));
        assertThat(Drops.capMetres3(2e-3, Math.toRadians(60))).isCloseTo(1.008e-9, withinPercentage(0.1));
        assertThat(Drops.capMetres3(0, 1)).isZero();
    }

    /// Furmidge's balance by hand in the project's check values (rows D18, D20, D21), factor 0.774.
    @Test
    void largestDrop_onACanUprightAndLeaning() {
        assertThat(upTo(80, 50, UPRIGHT, 0.774)).isCloseTo(4.36e-3, withinPercentage(0.2));
        assertThat(upTo(110, 95, UPRIGHT, 0.774)).isCloseTo(1.99e-3, withinPercentage(0.3));
        assertThat(upTo(80, 50, Math.PI / 4, 0.774)).isCloseTo(5.18e-3, withinPercentage(0.2));
    }

    @Test
    void noHysteresis_holdsNothing_andLevelHoldsAll() {
        assertThat(upTo(70, 70, UPRIGHT, 0.78)).isZero();
        assertThat(Drops.largestStaying(WATER, ContactAngles.ofDegrees(80, 50), 0, 0.78))
                .isEqualTo(new Drops.Stay.Every());
    }

    @Test
    void nearLevel_aCapWouldBeTallerThanAPuddle() {
        assertThat(Drops.largestStaying(WATER, ContactAngles.ofDegrees(80, 50), Math.toRadians(5), 0.78))
                .isInstanceOfSatisfying(
                        Drops.Stay.PastCaps.class,
                        past -> assertThat(past.diameterMetres()).isCloseTo(9.2e-3, within(0.05e-3)));
    }

    @Test
    void wettedGlass_hasNoBeads() {
        assertThat(Drops.largestStaying(WATER, Surface.CLEAN_GLASS.usual(), UPRIGHT, 0.78))
                .isInstanceOf(Drops.Stay.NoBeads.class);
    }

    @Test
    void life_goesWithTheDiameterSquared_andEndsNowhereInFullAir() {
        MoistAir air = new MoistAir(293.15, 0.5);
        double angle = Math.toRadians(60);
        double two = value(Drops.dryingSeconds(2e-3, angle, air));
        double half = value(Drops.dryingSeconds(0.5e-3, angle, air));
        assertThat(two / half).isCloseTo(16, within(1e-6));
        // Row D25: 15.6 min ± 8 % by the fitted formula.
        assertThat(two / 60).isCloseTo(15.6, withinPercentage(8));
        assertThat(Drops.dryingSeconds(2e-3, angle, new MoistAir(293.15, 1))).isInstanceOf(Figure.Unknown.class);
        assertThat(Drops.dryingSeconds(2e-3, angle, new MoistAir(263.15, 0.5))).isInstanceOf(Figure.Unknown.class);
        assertThat(Drops.dryingSeconds(2e-3, 3, air)).isInstanceOf(Figure.Unknown.class);
    }

    @Test
    void everySurface_hasItsUsualAnglesWithinItsRange() {
        for (Surface surface : Surface.values()) {
            assertThat(surface.usual().advancingRadians())
                    .isBetween(surface.low().advancingRadians(), surface.high().advancingRadians());
            assertThat(surface.usual().recedingRadians())
                    .isBetween(surface.low().recedingRadians(), surface.high().recedingRadians());
            assertThat(Surface.find(surface.word())).contains(surface);
        }
        assertThat(Surface.find("felt")).isEmpty();
        assertThatThrownBy(() -> ContactAngles.ofDegrees(50, 60)).isInstanceOf(IllegalArgumentException.class);
    }

    private static double upTo(double advancing, double receding, double tilt, double hold) {
        return switch (Drops.largestStaying(WATER, ContactAngles.ofDegrees(advancing, receding), tilt, hold)) {
            case Drops.Stay.UpTo(double diameter) -> diameter;
            case Drops.Stay other -> throw new AssertionError(other);
        };
    }

    private static double value(Figure figure) {
        return figure.find().orElseThrow();
    }
}
