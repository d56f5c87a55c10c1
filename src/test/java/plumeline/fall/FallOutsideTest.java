package plumeline.fall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

/// Falls against measured drag and speeds, and against closed forms.
final class FallOutsideTest {
    private static final Medium WATER = Medium.ofWater(293.15);
    private static final double G = 9.80665;

    private static Piece ball(double metres, double density) {
        return new Piece(Piece.Shape.BALL, metres, metres, density * Math.PI / 6 * metres * metres * metres);
    }

    private static double steady(Piece piece, Medium medium) {
        return new Fall(piece, medium, 1).findTerminalMetresPerSecond().orElseThrow();
    }

    @Test
    @Outside(
            source = "measured drag of spheres (the project's check values F08 to F11), and a public"
                    + " code's Clift at 200",
            place = "within 6 %, the data's own scatter",
            kind = "measurement",
            printedDigits = 4)
    void balls_haveTheMeasuredDrag() {
        assertThat(Drag.BALL.coefficient(1000)).isCloseTo(0.4786, withinPercentage(6));
        assertThat(Drag.BALL.coefficient(57.54)).isCloseTo(1.479, withinPercentage(6));
        assertThat(Drag.BALL.coefficient(7.015)).isCloseTo(5.623, withinPercentage(6));
        assertThat(Drag.BALL.coefficient(8375)).isCloseTo(0.3981, withinPercentage(6));
        assertThat(Drag.BALL.coefficient(200)).isCloseTo(0.77563, within(1e-5));
        assertThat(Drag.BALL.coefficient(0.005)).isCloseTo(24 / 0.005, withinPercentage(0.01));
    }

    /// Each piece of the table meets the next: the printed coefficients leave steps of a few per cent at most.
    @Test
    @Outside(
            source = "Haider and Levenspiel 1989 for spheres, fitted to 408 points",
            kind = "measurement",
            printedDigits = 2)
    void balls_goWithAnotherFit() {
        for (double re = 0.02; re < 2e5; re *= 1.3) {
            double other = 24 / re * (1 + 0.1806 * Math.pow(re, 0.6459)) + 0.4251 / (1 + 6880.95 / re);
            assertThat(Drag.BALL.coefficient(re)).as("Re %s", re).isCloseTo(other, withinPercentage(11));
        }
    }

    @Test
    @Outside(
            source = "Gunn and Kinzer, J. Meteorol. 6 (1949) 243: drops of water in air",
            place = "0.5, 1, 2 mm: 2.06, 4.03, 6.49 m/s",
            kind = "measurement",
            printedDigits = 3)
    void drops_fallAsMeasured() {
        assertThat(steady(ball(0.0005, 998.2), Medium.AIR)).isCloseTo(2.06, withinPercentage(4));
        assertThat(steady(ball(0.001, 998.2), Medium.AIR)).isCloseTo(4.03, withinPercentage(3));
        assertThat(steady(ball(0.002, 998.2), Medium.AIR)).isCloseTo(6.49, withinPercentage(5));
    }

    @Test
    @Outside(
            source = "the project's check values F25 to F27, by another program's Clift",
            kind = "other program",
            printedDigits = 2)
    void balls_sinkAndRiseInWater() {
        assertThat(steady(ball(0.010, 2500), WATER)).isCloseTo(0.71, withinPercentage(5));
        assertThat(steady(ball(0.0085, 1250), WATER)).isCloseTo(0.26, withinPercentage(6));
        assertThat(steady(ball(0.025, 917), WATER)).isCloseTo(0.26, withinPercentage(8));
        assertThat(new Fall(ball(0.025, 917), WATER, 1).netNewtons()).isNegative();
    }

    @Test
    @Outside(source = "free fall, √(2gh) and √(2h/g)", place = "F01 to F04", kind = "closed form", printedDigits = 4)
    void withoutDrag_itFallsFreely() {
        Fall lead = new Fall(ball(0.05, 11_340), Medium.AIR, 1e-6);
        assertThat(lead.at(0.5).metresPerSecond()).isCloseTo(3.132, within(0.001));
        assertThat(lead.at(1).metresPerSecond()).isCloseTo(4.429, within(0.001));
        assertThat(lead.at(0.3).seconds()).isCloseTo(0.2474, within(0.0002));
        assertThat(lead.at(1).seconds()).isCloseTo(0.4516, within(0.0002));
    }

    /// A disc's coefficient is one number, so that speed and time have closed forms, added mass counted.
    @Test
    @Outside(
            source = "v = w √(1 − exp(−2gh/w²)), t = (w/g) acosh(exp(gh/w²)) with square-law drag",
            place = "F06, F07",
            kind = "closed form")
    void withSquareDrag_speedAndTimeAreTheClosedForms() {
        Piece disc = new Piece(Piece.Shape.DISC, 0.03, 0.004, 0.004);
        Fall fall = new Fall(disc, WATER, 1);
        double moved = disc.massKilograms() + disc.addedKilograms(WATER.densityKilogramsPerMetre3());
        double g = fall.netNewtons() / moved;
        double w = steady(disc, WATER);
        for (double h : new double[] {0.02, 0.1, 0.4}) {
            assertThat(fall.at(h).metresPerSecond())
                    .isCloseTo(w * Math.sqrt(1 - Math.exp(-2 * g * h / w / w)), withinPercentage(0.2));
            double log = g * h / w / w;
            double seconds = w / g * (log + Math.log1p(Math.sqrt(1 - Math.exp(-2 * log))));
            assertThat(fall.at(h).seconds()).isCloseTo(seconds, withinPercentage(0.5));
        }
        assertThat(12 * Math.sqrt(1 - Math.exp(-2 * G / 144))).isCloseTo(4.282, within(0.003));
    }

    @Test
    @Outside(
            source = "Berryman 1983 (0.64), Onoda and Liniger 1990 (0.555), Baker and Kudrolli 2010 (cubes 0.54, 0.67)",
            place = "P08 to P10: 1222 and 1070 balls of 10 mm in a litre",
            kind = "measurement",
            printedDigits = 2)
    void pieces_packAsMeasured() {
        Packing balls = Packing.of(Piece.Shape.BALL);
        double volume = ball(0.01, 1).volumeMetres3();
        assertThat(Packing.pieces(1e-3, volume, balls.closeShare())).isCloseTo(1222, within(2.0));
        assertThat(Packing.pieces(1e-3, volume, balls.looseShare())).isCloseTo(1070, within(2.0));
        Packing cubes = Packing.of(Piece.Shape.CUBE);
        assertThat(Packing.pieces(1e-3, 1e-6, cubes.looseShare())).isCloseTo(540, within(5.0));
        assertThat(Packing.pieces(1e-3, 1e-6, cubes.closeShare())).isCloseTo(670, within(5.0));
    }

    @Test
    @Outside(
            source = "Hoerner, Fluid-Dynamic Drag (1965), by pages that quote it",
            place = "disc broadside 1.17, cube face-on 1.05",
            kind = "measurement",
            printedDigits = 3)
    void bluffPieces_haveHoernersDrag() {
        assertThat(Drag.DISC.coefficient(5000)).isEqualTo(1.17);
        assertThat(Drag.CUBE.coefficient(5000)).isEqualTo(1.05);
        assertThat(Drag.DISC.coefficient(133)).isCloseTo(Drag.DISC.coefficient(134), within(0.01));
        assertThat(Drag.CUBE.coefficient(10)).isEqualTo(Drag.BALL.coefficient(10));
    }
}
