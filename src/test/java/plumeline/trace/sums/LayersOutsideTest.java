package plumeline.trace.sums;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

/// Ways through layers against textbook cases.
@Outside(
        source = "Hecht, Optics: plane-parallel plate, Fresnel's formulas, apparent depth",
        place = "from memory of chapter 4",
        kind = "worked example")
final class LayersOutsideTest {
    @Test
    void plateOfTenMillimetres_movesLightAtThirtyDegreesBy194() {
        Layers layers = new Layers(1.5);
        layers.find(1, 0.01, 0, 1, Math.tan(Math.PI / 6) + 0.01 / Math.sqrt(8));
        assertThat(layers.airSlope()).isCloseTo(Math.tan(Math.PI / 6), within(1e-8));
        double aside = 0.01 * (layers.airSlope() - layers.glassSlope()) * layers.airCosine();
        assertThat(aside).isCloseTo(1.94e-3, within(0.005e-3));
    }

    @Test
    void waterOneMetreDeep_looksThreeQuartersAsDeep() {
        Layers layers = new Layers(1.5);
        layers.find(1, 0, 1, 4.0 / 3, 0.001);
        double aside = layers.middleSlope() / layers.airSlope();
        assertThat(aside).isCloseTo(0.75, within(1e-4));
    }

    @Test
    void windowPane_passesNinetyTwoHundredthsStraightOn() {
        Layers layers = new Layers(1.5);
        layers.find(1, 0.004, 1, 1, 0);
        assertThat(layers.passesPane(1)).isCloseTo(0.923, within(5e-4));
    }
}
