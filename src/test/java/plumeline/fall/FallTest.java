package plumeline.fall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/// Limits, order, ranges and refusals of falls.
final class FallTest {
    private static final Medium WATER = Medium.ofWater(293.15);

    private static Piece ball(double metres, double density) {
        return new Piece(Piece.Shape.BALL, metres, metres, density * Math.PI / 6 * metres * metres * metres);
    }

    @Test
    void farDown_itGoesSteadily_howeverSmall() {
        for (double size : new double[] {0.0001, 0.001, 0.02}) {
            Fall fall = new Fall(ball(size, 1600), WATER, 1);
            double steady = fall.findTerminalMetresPerSecond().orElseThrow();
            Fall.At far = fall.at(2);
            assertThat(far.metresPerSecond()).isCloseTo(steady, withinPercentage(0.01));
            assertThat(fall.at(2.1).seconds() - far.seconds()).isCloseTo(0.1 / steady, withinPercentage(1));
        }
    }

    @Test
    void atRest_nothingHasHappened() {
        assertThat(new Fall(ball(0.01, 2000), WATER, 1).at(0)).isEqualTo(new Fall.At(0, 0, 0));
    }

    @Test
    void moreDrag_isSlower_andLongerInTheFrame() {
        Piece cube = new Piece(Piece.Shape.CUBE, 0.012, 0.012, 0.0025);
        Fall.At usual = new Fall(cube, WATER, 1).at(0.2);
        Fall.At braked = new Fall(cube, WATER, 1.6).at(0.2);
        assertThat(braked.metresPerSecond()).isLessThan(usual.metresPerSecond());
        assertThat(braked.seconds()).isGreaterThan(usual.seconds());
    }

    @Test
    void asDenseAsTheMedium_itStays() {
        Fall fall = new Fall(ball(0.02, WATER.densityKilogramsPerMetre3()), WATER, 1);
        assertThat(fall.moves()).isFalse();
        assertThatThrownBy(() -> fall.at(0.1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void tooLargeAndFast_isOutsideTheDragsRange() {
        Fall fall = new Fall(ball(0.5, 7800), WATER, 1);
        assertThat(fall.findTerminalMetresPerSecond()).isEmpty();
        assertThat(fall.isKnownAt(3)).isFalse();
        assertThat(fall.isKnownAt(0.5)).isTrue();
    }

    @Test
    void shapes_haveTheirVolumesAndFaces() {
        Piece disc = new Piece(Piece.Shape.DISC, 0.02, 0.004, 0.001);
        assertThat(disc.volumeMetres3()).isCloseTo(Math.PI / 4 * 0.0004 * 0.004, within(1e-15));
        Piece cube = new Piece(Piece.Shape.CUBE, 0.02, 0.02, 0.001);
        assertThat(cube.volumeMetres3()).isCloseTo(8e-6, within(1e-18));
        assertThat(cube.faceMetres2()).isCloseTo(4e-4, within(1e-18));
        assertThat(ball(0.02, 1000).addedKilograms(1000))
                .isCloseTo(ball(0.02, 500).massKilograms(), within(1e-12));
    }

    @Test
    void outsideTheRanges_isRefused() {
        assertThatThrownBy(() -> new Piece(Piece.Shape.BALL, 0, 1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Fall(ball(0.01, 2000), WATER, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Medium.ofWater(400)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Medium(-1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Fall(ball(0.01, 2000), WATER, 1).at(-1))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
