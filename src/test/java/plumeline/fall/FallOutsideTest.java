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

    /// A table tennis ball of 40 mm and 2.7 g, lifted by 33.5 ml of water.
    @Test
    @Outside(
            source = "Horowitz and Williamson, J. Fluid Mech. 651 (2010) 251: light balls rise in a zigzag with a"
                    + " coefficient of 0.75; Karamanev and Nikolov, AIChE J. 38 (1992) 1843: 0.95; from memory",
            place = "below 0.61 of the water's density at Re 10,000, below 0.36 at 450 (abstract)",
            kind = "measurement",
            printedDigits = 2)
    void lightBalls_riseInAZigzag_withMoreDrag() {
        Fall fall = new Fall(new Piece(Piece.Shape.BALL, 0.04, 0.04, 0.0027), WATER, 1);
        double speed = fall.findTerminalMetresPerSecond().orElseThrow();
        double lift = G * (998.2 * Math.PI / 6 * 6.4e-5 - 0.0027);
        assertThat(lift / (998.2 / 2 * Math.PI * 4e-4 * speed * speed)).isBetween(0.749, 0.95);
        assertThat(fall.at(5).metresPerSecond()).isCloseTo(speed, withinPercentage(0.1));
        assertThat(fall.zigzags()).isTrue();
        assertThat(new Fall(ball(0.040, 650), WATER, 1).zigzags()).isFalse();
        assertThat(new Fall(ball(0.0030, 300), WATER, 1).zigzags()).isTrue();
        assertThat(new Fall(ball(0.0030, 450), WATER, 1).zigzags()).isFalse();
        assertThat(new Fall(ball(0.0010, 300), WATER, 1).zigzags()).isFalse();
        assertThat(new Fall(ball(0.040, 1100), WATER, 1).zigzags()).isFalse();
    }

    /// Cubes that fall tumble: two fits of free falls lie within what holds four times in five.
    @Test
    @Outside(
            source =
                    "Haider and Levenspiel 1989 for a sphericity of 0.806; Pettyjohn and Christiansen 1948, 5.31 - 4.88"
                            + " times it, on the face of the ball of its volume; from memory",
            kind = "measurement",
            printedDigits = 3)
    void cubes_fallAsMeasured_withinTheirRange() {
        double face = Math.PI / 4 * Math.pow(6 / Math.PI, 2.0 / 3);
        double re = 5000;
        double fit = 24 / re * (1 + 0.2764 * Math.pow(re, 0.5449)) + 1.3521 / (1 + 491.6 / re);
        for (double free : new double[] {fit * face, (5.31 - 4.88 * 0.806) * face}) {
            double usual = Drag.CUBE.coefficient(re);
            assertThat(free).isBetween(Drag.CUBE.lowShare() * usual, Drag.CUBE.highShare() * usual);
        }
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
    }

    /// A disc of 10 mm in air whose steady speed is 12 m/s by Hoerner's coefficient: what it weighs, 12 m/s of air hold
    /// up. The air that it drags along is half a thousandth of it.
    @Test
    @Outside(
            source = "the project's check values F06, F07: square-law drag, steady speed 12 m/s, after 1 m",
            place = "4.282 m/s after 0.4567 s; Hoerner 1965, disc broadside 1.17",
            kind = "worked example",
            printedDigits = 4)
    void aDiscOfTwelveMetresASecond_fallsAsTheRowsSay() {
        double face = Math.PI / 4 * 0.01 * 0.01;
        double air = 1.204;
        double kilograms = 1.17 * face * air / 2 * 144 / G + air * face * 0.001;
        Fall fall = new Fall(new Piece(Piece.Shape.DISC, 0.01, 0.001, kilograms), Medium.AIR, 1);
        assertThat(fall.findTerminalMetresPerSecond().orElseThrow()).isCloseTo(12, withinPercentage(0.1));
        assertThat(fall.at(1).metresPerSecond()).isCloseTo(4.282, within(0.003));
        assertThat(fall.at(1).seconds()).isCloseTo(0.4567, within(0.0005));
    }

    /// What rises end on: its coefficient as its steady speed has it, the water it drags along as its first
    /// acceleration has it.
    @Test
    @Outside(
            source = "drag of a cylinder end on, check value F22: 0.81 past two diameters, 0.85 at two, 0.91 at one"
                    + " (Hoerner's pages, a data book); a disc's added mass 8/3 of its radius cubed (Lamb)",
            place = "within 0.06; the range holds a disc's 1.17 and a rounded head's 0.6",
            kind = "measurement",
            printedDigits = 2)
    void whatRisesEndOn_hasACylindersDrag_andADiscsWater() {
        double face = Math.PI * 0.021 * 0.021;
        Rise rise = new Rise(0.1, 133.5e-6, face, WATER, 1);
        double rho = WATER.densityKilogramsPerMetre3();
        double steady = rise.steadyMetresPerSecond();
        double coefficient = rise.liftNewtons() / (rho * face * steady * steady / 2);
        assertThat(coefficient).isBetween(0.81 - 0.06, 0.91);
        assertThat(coefficient * Rise.LEAST_DRAG).isCloseTo(0.6, within(0.06));
        assertThat(coefficient * Rise.MOST_DRAG).isBetween(1.17, 1.17 + 0.12);
        double dragged = rise.liftNewtons() / rise.firstMetresPerSecond2() - 0.1;
        assertThat(dragged).isCloseTo(rho * 8 / 3 * Math.pow(0.021, 3), withinPercentage(0.1));
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
