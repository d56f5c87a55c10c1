package plumeline.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

/// Lines against retail charts, rigging pages and pendulum laws.
final class LineOutsideTest {
    private static final double G = 9.80665;
    private static final double NYLON = Line.Material.NYLON.plannedPascals();

    @Test
    @Outside(
            source = "retail charts of nylon monofilament: labelled strength by diameter, scatter 20 to 25 %",
            place = "rows L05 to L10 of the check values",
            kind = "common practice",
            printedDigits = 2)
    void charts_agreeWithinTheirScatter() {
        double[] diameters = {0.20, 0.25, 0.30, 0.35, 0.40, 0.50};
        double[] newtons = {17.8, 31, 44.5, 58, 78, 122};
        for (int i = 0; i < diameters.length; i++) {
            double d = diameters[i] * 1e-3;
            assertThat(Line.strengthNewtons(d, NYLON)).isCloseTo(newtons[i], withinPercentage(i == 4 ? 25 : 20));
            assertThat(Line.strengthNewtons(d, Line.Material.NYLON.lowPascals()))
                    .isLessThan(newtons[i]);
            assertThat(Line.strengthNewtons(d, Line.Material.NYLON.highPascals()))
                    .isGreaterThan(newtons[i]);
        }
    }

    @Test
    @Outside(
            source = "arithmetic of the check values",
            place = "rows L12, L17, L18",
            kind = "worked example",
            printedDigits = 3)
    void strengthAndLeastDiameter() {
        assertThat(Line.strengthNewtons(0.25e-3, 600e6)).isCloseTo(29.5, within(0.05));
        assertThat(leastMillimetres(0.55 * G)).isCloseTo(0.338, within(0.0005));
        assertThat(leastMillimetres(0.0805)).isCloseTo(0.041, within(0.0005));
    }

    private static double leastMillimetres(double newtons) {
        return 1e3 * Line.diameterMetres(Line.neededNewtons(newtons, 0.5, 5), NYLON);
    }

    @Test
    @Outside(
            source =
                    "rigging pages: 200 lb at 45 degrees pull 141.4 lb; two ropes at 30 degrees over level pull W each",
            place = "rows L21, L22 of the check values",
            kind = "worked example",
            printedDigits = 4)
    void leaningLines() {
        assertThat(Line.leaningNewtons(200, Math.PI / 4)).isCloseTo(141.4, within(0.05));
        assertThat(Line.leaningNewtons(1, Math.PI / 3)).isCloseTo(1, within(1e-12));
        assertThat(Line.leaningNewtons(1, Math.PI / 6)).isCloseTo(0.5774, within(0.00005));
    }

    @Test
    @Outside(
            source = "the seconds pendulum: 0.994 m swing one way in a second (any text on mechanics)",
            place = "from memory",
            kind = "published number",
            printedDigits = 3)
    void secondsPendulum() {
        assertThat(Line.swingSeconds(Line.Hung.inAir(1), 0.994, G)).isCloseTo(2, within(0.001));
    }

    @Test
    @Outside(
            source = "bifilar pendulum integrated step by step, in this test",
            place = "small turns of a bar on two lines",
            kind = "closed form by another way",
            printedDigits = 4)
    void turnOnTwoLines() {
        double length = 0.5;
        double apart = 0.06;
        double gyration = 0.025;
        // Each line leans by turn·apart/(2·length); its sideways pull at apart/2 turns the thing back.
        double turn = 0.02;
        double speed = 0;
        double seconds = 0;
        double step = 1e-5;
        while (turn > 0) {
            double torque = -2 * (G / 2) * (turn * apart / 2 / length) * (apart / 2);
            speed += step * torque / (gyration * gyration);
            turn += step * speed;
            seconds += step;
        }
        double swing = Line.swingSeconds(Line.Hung.inAir(0.4), length, G);
        assertThat(Line.turnSeconds(swing, gyration, apart)).isCloseTo(4 * seconds, withinPercentage(0.1));
    }

    @Test
    @Outside(source = "limits of the law: a heavy ball in water, nearly afloat", place = "own", kind = "closed form")
    void water_slowsTheSwing() {
        double dry = Line.swingSeconds(Line.Hung.inAir(0.4), 0.5, G);
        double wet = Line.swingSeconds(new Line.Hung(0.4, 0.3, 0.5), 0.5, G);
        assertThat(wet / dry).isCloseTo(Math.sqrt(0.55 / 0.1), within(1e-9));
        assertThat(Line.waitSeconds(wet, 0.5, 0.5)).isCloseTo(wet, within(1e-12));
        assertThat(Line.waitSeconds(2, 0.5, 0.125)).isCloseTo(6, within(1e-12));
        assertThatThrownBy(() -> new Line.Hung(0.3, 0.4, 0.5)).hasMessageStartingWith("mass less displaced mass");
        assertThatThrownBy(() -> Line.safetyFactor(10, 1.2, 1)).hasMessageContaining("knot's share is 1.2");
    }
}
