package plumeline.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/// Bent panes: convergence, likeness, what helps and what doesn't, where the theory ends.
final class PlatesTest {
    private static final Pane.Elasticity GLASS = Pane.Elasticity.FLOAT_GLASS;
    private static final double WEIGHT = 998.2 * 9.80665;

    @Test
    void moreTerms_changeNothingWorthTheName() {
        for (double ratio : new double[] {0.3, 1, 2.5, 6, 12}) {
            for (Pane.Top top : Pane.Top.values()) {
                Pane pane = new Pane(0.4 * ratio, 0.4, 0.008, top);
                for (double depth : new double[] {0.1, 0.3, 0.4}) {
                    PaneLoad load = new PaneLoad.Liquid(depth, WEIGHT);
                    PaneBending taken = Plates.bend(pane, load, GLASS);
                    PaneBending many = Plates.bend(pane, load, GLASS, 400);
                    assertThat(taken.stressPascals()).isCloseTo(many.stressPascals(), withinPercentage(0.1));
                    assertThat(taken.deflectionMetres()).isCloseTo(many.deflectionMetres(), withinPercentage(0.01));
                }
            }
        }
    }

    @Test
    void likePanes_scale() {
        PaneBending one = water(0.6, 0.4, 0.008, 0.35, Pane.Top.FREE);
        PaneBending twice = water(1.2, 0.8, 0.016, 0.7, Pane.Top.FREE);
        assertThat(twice.stressPascals()).isCloseTo(2 * one.stressPascals(), withinPercentage(1e-6));
        assertThat(twice.deflectionMetres()).isCloseTo(4 * one.deflectionMetres(), withinPercentage(1e-6));
        PaneBending thick = water(0.6, 0.4, 0.016, 0.35, Pane.Top.FREE);
        assertThat(thick.stressPascals()).isCloseTo(one.stressPascals() / 4, withinPercentage(1e-6));
        assertThat(thick.deflectionMetres()).isCloseTo(one.deflectionMetres() / 8, withinPercentage(1e-6));
    }

    @Test
    void turnedPane_evenLoad_isTheSame() {
        PaneBending lying = Plates.bend(new Pane(0.6, 0.4, 0.008, Pane.Top.HELD), new PaneLoad.Even(4000), GLASS);
        PaneBending standing = Plates.bend(new Pane(0.4, 0.6, 0.008, Pane.Top.HELD), new PaneLoad.Even(4000), GLASS);
        assertThat(lying.stressPascals()).isCloseTo(standing.stressPascals(), withinPercentage(0.05));
        assertThat(lying.deflectionMetres()).isCloseTo(standing.deflectionMetres(), withinPercentage(0.05));
    }

    @Test
    void twoLiquidsUpAndDown_addToAnEvenLoad_onAHeldSquare() {
        // Water on one side and its mirror image make an even load: the middle bends by the sum, twice the one.
        double brim = water(0.5, 0.5, 0.01, 0.5, Pane.Top.HELD).deflectionMetres();
        PaneBending even = Plates.bend(new Pane(0.5, 0.5, 0.01, Pane.Top.HELD), new PaneLoad.Even(WEIGHT * 0.5), GLASS);
        assertThat(2 * brim).isBetween(even.deflectionMetres(), 1.02 * even.deflectionMetres());
    }

    @Test
    void openTop_isMuchWorse_andPeaksAtTheRim() {
        PaneBending open = water(0.8, 0.4, 0.008, 0.4, Pane.Top.FREE);
        PaneBending held = water(0.8, 0.4, 0.008, 0.4, Pane.Top.HELD);
        assertThat(open.stressPascals()).isGreaterThan(1.4 * held.stressPascals());
        assertThat(open.deflectionMetres()).isGreaterThan(6 * held.deflectionMetres());
        assertThat(open.yMetres()).isCloseTo(0.4, within(1e-12));
        assertThat(open.xMetres()).isCloseTo(0.4, within(1e-12));
        assertThat(held.yMetres()).isBetween(0.1, 0.2);
    }

    @Test
    void lowerWater_bendsLess_upToNothing() {
        double before = Double.POSITIVE_INFINITY;
        for (double depth = 0.4; depth > 0.005; depth -= 0.02) {
            PaneBending bending = water(0.7, 0.4, 0.006, depth, Pane.Top.FREE);
            assertThat(bending.stressPascals()).isPositive().isLessThan(before);
            before = bending.stressPascals();
        }
        assertThat(before).isLessThan(1e5);
    }

    @Test
    void validity_saysWhereTheTheoryEnds() {
        assertThat(water(0.6, 0.4, 0.008, 0.4, Pane.Top.FREE).validity()).isEqualTo(PaneBending.Validity.GOOD);
        PaneBending bowed = water(1.2, 0.4, 0.0075, 0.4, Pane.Top.FREE);
        assertThat(bowed.deflectionMetres() / 0.0075).isBetween(0.5, 1.0);
        assertThat(bowed.validity()).isEqualTo(PaneBending.Validity.MEMBRANE_BEGINS);
        assertThat(water(1.2, 0.4, 0.004, 0.4, Pane.Top.FREE).validity()).isEqualTo(PaneBending.Validity.MEMBRANE);
        assertThat(water(0.1, 0.4, 0.010, 0.4, Pane.Top.FREE).validity()).isEqualTo(PaneBending.Validity.GOOD);
        assertThat(water(0.099, 0.4, 0.010, 0.4, Pane.Top.FREE).validity())
                .isEqualTo(PaneBending.Validity.NO_THIN_PLATE);
        assertThat(water(8.1, 0.4, 0.019, 0.1, Pane.Top.HELD).validity()).isEqualTo(PaneBending.Validity.NO_THIN_PLATE);
    }

    @Test
    void whatCantBe_throws() {
        assertThatThrownBy(() -> water(0.6, 0.4, 0.008, 0.5, Pane.Top.FREE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("liquid's depth on the pane is 0.5; must be at most 0.4");
        assertThatThrownBy(() -> new Pane(0, 1, 1, Pane.Top.FREE)).hasMessageContaining("pane's width");
        assertThatThrownBy(() -> new Pane.Elasticity(70e9, 0.6)).hasMessageContaining("Poisson's ratio");
        assertThatThrownBy(() -> new PaneLoad.Even(Double.NaN)).hasMessageContaining("pressure");
    }

    private static PaneBending water(double width, double height, double thickness, double depth, Pane.Top top) {
        return Plates.bend(new Pane(width, height, thickness, top), new PaneLoad.Liquid(depth, WEIGHT), GLASS);
    }
}
