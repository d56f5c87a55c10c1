package plumeline.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumeline.geom.Body;
import plumeline.stage.Stage;

/// A placed thing that is let go under water.
final class RisingTest {
    private static Stage stage(String tank, String place) {
        return LooseShots.stage(LooseShots.CAMERA, tank, place, "release: {thing: tin, start: 0.2 s}");
    }

    private static double base(Stage stage, double seconds) {
        double[] values = stage.startValues();
        Body tin = Rising.of(stage, values)
                .at(stage.laid(values).sceneAt(seconds))
                .things()
                .getFirst();
        return tin.pose().base().z();
    }

    /// The tin of 40 mm by 60 mm displaces 75.4 ml: 40 g of it rise by 35 g.
    @Test
    void lightThing_risesByItsLaw_toTheSurface() {
        Stage stage = stage(LooseShots.TANK, "place: {tin: {thing: tin, at: [0 mm, 0 mm, 20 mm]}}");
        assertThat(base(stage, 0.1)).isEqualTo(0.02);
        assertThat(base(stage, 0.2)).isEqualTo(0.02);
        // Gravity's pull on 35.2 g, on 40 g and the water dragged along, 8/3 of a radius cubed: 5.6 m/s² at first.
        double first = 9.80665 * (0.0753982 * 0.99821 - 0.04) / (0.04 + 998.21 * 8.0 / 3 * 8e-6);
        assertThat(base(stage, 0.2 + 0.02) - 0.02).isEqualTo(first / 2 * 0.02 * 0.02, within(0.03 * 1.2e-3));
        assertThat(base(stage, 0.4)).isGreaterThan(base(stage, 0.3));
        // Its top stops at the water line, 168 mm.
        assertThat(base(stage, 5)).isEqualTo(0.168 - 0.06, within(1e-12));
        assertThat(Rising.of(stage, stage.startValues()).assumed())
                .singleElement()
                .asString()
                .contains("rises end on");
    }

    @Test
    void thingInAir_stays_andThatIsSaid() {
        Stage stage = LooseShots.stage(
                LooseShots.CAMERA,
                "place: {tin: {thing: tin, at: [0 mm, 0 mm, 20 mm]}}",
                "release: {thing: tin, start: 0.2 s}");
        assertThat(base(stage, 3)).isEqualTo(0.02);
        assertThat(Rising.of(stage, stage.startValues()).assumed())
                .singleElement()
                .asString()
                .startsWith("tin is drawn where it is placed");
    }

    @Test
    void nothingLetGo_saysNothing() {
        Stage stage = LooseShots.stage(LooseShots.CAMERA, LooseShots.TIN);
        assertThat(Rising.of(stage, stage.startValues()).assumed()).isEmpty();
    }
}
