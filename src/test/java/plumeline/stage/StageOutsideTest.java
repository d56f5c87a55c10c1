package plumeline.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

/// A posed shot against figures that aren't ours.
final class StageOutsideTest {
    private static final String FILE =
            "place: {a: {thing: flacon, at: [0 mm, 0 mm]}, b: {thing: flacon, at: [0 mm, 100 mm]},"
                    + " c: {thing: flacon, at: [0 mm, 200 mm]}, d: {thing: flacon, at: [0 mm, 300 mm]}}";

    @Test
    @Outside(
            source = "brief A as a crew would hand it over, shot A1",
            place = "Expected findings: pan 39.5 deg, heights 53 to 36, 33, 31, 29 % of one focus",
            kind = "worked example",
            printedDigits = 2)
    void briefA_panAndHeights() {
        Stage stage = Staged.stage(
                "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], aim: a}",
                FILE,
                "moves:",
                "  slide: {machine: slider, by: [-600 mm, 0 mm], in: 8 s, profile: trapezoid}",
                "  pan: {machine: head, keeps: [a, b, c, d]}",
                "speed: 200 %",
                "frames: 97");
        Scene end = Staged.at(stage, 96);
        assertThat(Math.toDegrees(end.aim().turnRadians())).isEqualTo(39.5, within(0.05));
        double left = Math.atan2(600, 900) - Math.asin(21 / Math.hypot(600, 900));
        double right = Math.atan2(600, 600) + Math.asin(21 / Math.hypot(600, 600));
        assertThat(end.aim().turnRadians()).isEqualTo((left + right) / 2, within(1e-9));
        // The brief's heights at the end are with the focus pulled to 946 mm along the axis; a plan keeps the start's
        // focus
        // for the whole shot, so the same depths are read here on that other scale.
        double[] expected = {36, 33, 31, 29};
        double image = 50 * 946 / 896.0;
        for (int i = 0; i < 4; i++) {
            double depth = end.projection().depth(end.things().get(i).middle()) * 1e3;
            assertThat(100 * 118 * image / depth / 20.25).isEqualTo(expected[i], within(0.6));
        }
        Scene start = Staged.at(stage, 0);
        assertThat(100 * 0.118 / 0.6 / start.picture().heightTangent()).isEqualTo(53, within(0.5));
    }

    @Test
    @Outside(
            source = "Gaussian lens formula: 1/f = 1/object + 1/image, magnification = image/object; optics textbooks",
            kind = "closed form")
    void picture_scaleIsThatOfAThinLens() {
        Scene scene = Staged.start(Staged.CAMERA, Staged.HERO);
        double image = 1 / (1 / 0.05 - 1 / 0.6);
        assertThat(scene.picture().imageMetres()).isEqualTo(image, within(1e-12));
        assertThat(scene.picture().magnification()).isEqualTo(image / 0.6, within(1e-12));
        assertThat(scene.picture().widthTangent()).isEqualTo(0.036 / image, within(1e-12));
    }

    @Test
    @Outside(
            source = "paraxial shift through flat layers, t (1 - 1/n), n 1.52 and 1.333; optics textbooks",
            place = "brief A, shot A2: 1071 mm dry, 1104 through 8 mm of glass and 120 mm of water",
            kind = "worked example",
            printedDigits = 4)
    void briefA_theTankBringsTheBottleNearer() {
        Scene scene = Staged.start(
                "camera: {body: main, lens: fifty, at: [0 mm, -1104 mm, 128 mm], aim: hero}",
                "tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}",
                "place: {hero: {thing: tin, at: [0 mm, 0 mm, 80 mm], lines: 2}}");
        double shift = 8 * (1 - 1 / 1.52) + 120 * (1 - 1 / 1.333);
        assertThat(scene.picture().focusMetres() * 1e3).isEqualTo(1104 - shift, within(0.01));
        assertThat(scene.picture().focusMetres() * 1e3).isEqualTo(1071, within(0.5));
    }
}
