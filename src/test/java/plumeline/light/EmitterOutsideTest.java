package plumeline.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.geom.Vec;
import plumeline.tidy.Outside;

/// Light on patches against published configuration factors and textbook sums.
@Outside(
        source = "Howell's catalogue of configuration factors; Siegel and Howell, 4th ed.; each test names its row",
        kind = "closed form")
final class EmitterOutsideTest {
    private static final Vec DOWN = new Vec(0, 0, -1);
    private static final Vec X = new Vec(1, 0, 0);
    private static final Patch FLOOR = new Patch(Vec.ZERO, Vec.UP);

    private static double panelFactor(double x, double y, double z, double width, double depth) {
        return new Panel(new Vec(x, y, z), DOWN, X, width, depth, 1).factor(FLOOR);
    }

    /// Howell's catalogue of configuration factors, B-3: a rectangle parallel to the element, one corner over it.
    @ParameterizedTest
    @CsvSource({"1, 1, 1, 0.138532", "1, 2, 1, 0.167375", "0.5, 0.5, 1, 0.0598641", "2, 1, 1, 0.167375"})
    void rectangle_overItsCorner(double a, double b, double h, double factor) {
        assertThat(panelFactor(a / 2, b / 2, h, a, b)).isCloseTo(factor, within(1e-6));
    }

    /// The same catalogue, B-4: a square that stands on the element's plane, its lower corner 1 before the element.
    @Test
    void rectangle_standing() {
        Panel standing = new Panel(new Vec(0.5, 1, 0.5), new Vec(0, -1, 0), X, 1, 1, 1);
        assertThat(standing.factor(FLOOR)).isCloseTo(0.0557342, within(1e-6));
    }

    /// The same, B-12: a disc over the element, r²/(r² + h²); within 1 % of the inverse square from five diameters on
    /// (the lighting engineers' rule).
    @ParameterizedTest
    @CsvSource({"1, 0.5", "0.5, 0.2", "0.3, 0.0825688", "0.1, 0.00990099", "20, 0.99750623", "100, 0.99990001"})
    void disc_overTheElement(double radius, double factor) {
        double found = new Disc(new Vec(0, 0, 1), DOWN, radius, 1).factor(FLOOR);
        assertThat(found / factor).isCloseTo(1, within(1e-5));
        if (radius <= 0.1) {
            assertThat(radius * radius / found).isCloseTo(1, within(0.01001));
        }
    }

    /// The same, B-13: a disc parallel to the element and a aside of it:
    /// `½ (1 − (1 + H² − R²)/√((1 + H² + R²)² − 4 R²))`, H = h/a, R = r/a.
    @ParameterizedTest
    @CsvSource({"0.3, 0.5, 1", "0.5, 0.2, 0.4", "1, 1, 0.1", "0.2, 2, 0.5"})
    void disc_aside(double radius, double a, double h) {
        double high = h / a;
        double wide = radius / a;
        double all = 1 + high * high + wide * wide;
        double factor = 0.5 * (1 - (1 + high * high - wide * wide) / Math.sqrt(all * all - 4 * wide * wide));
        assertThat(new Disc(new Vec(a, 0, h), DOWN, radius, 1).factor(FLOOR)).isCloseTo(factor, within(2e-6));
    }

    /// Textbook sums: a disc of 5000 cd/m², 0.3 m in radius, 1 m over a floor; a panel of 0.6 by 0.9 m likewise, under
    /// its middle and 0.5 m along its short side (own algebra of corner factors).
    @Test
    void lux_underDiscAndPanel() {
        assertThat(new Disc(new Vec(0, 0, 1), DOWN, 0.3, 5000).lux(FLOOR)).isCloseTo(1296.99, within(0.02));
        assertThat(new Panel(new Vec(0, 0, 1), DOWN, X, 0.6, 0.9, 5000).lux(FLOOR))
                .isCloseTo(2265.24, within(0.01));
        assertThat(new Panel(new Vec(0.5, 0, 1), DOWN, X, 0.6, 0.9, 5000).lux(FLOOR))
                .isCloseTo(1571.03, within(0.01));
    }

    /// Mean factor between equal squares face to face, 0.1 m, 0.05 m apart: 0.4153 (Howell C-11, printed in a
    /// heat-transfer library's example); between coaxial discs 0.1 and 0.2 m in radius, 0.5 m apart: 0.1339 (Siegel
    /// and Howell, 4th ed., p. 845).
    @Test
    void meanFactors_arePointFactorsIntegrated() {
        double sum = 0;
        int n = 40;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double x = 0.1 * ((i + 0.5) / n - 0.5);
                double y = 0.1 * ((j + 0.5) / n - 0.5);
                sum += panelFactor(x, y, 0.05, 0.1, 0.1);
            }
        }
        assertThat(sum / (n * n)).isCloseTo(0.4153, within(1e-4));
        double rings = 0;
        for (int i = 0; i < n; i++) {
            double r = 0.1 * Math.sqrt((i + 0.5) / n);
            rings += new Disc(new Vec(r, 0, 0.5), DOWN, 0.2, 1).factor(FLOOR);
        }
        assertThat(rings / n).isCloseTo(0.1339, within(1e-4));
    }

    /// A long thin tube square over a patch gives `I' /d` with I' = 2 r L a metre: `E = 2 r L (π/2)/d · ...` for an
    /// endless one π·L·r/d (the long cylinder's factor r/d, Howell B-29); a short far one `2 r l L/d²`.
    @Test
    void tube_longAndFar() {
        Tube endless = new Tube(new Vec(0, 0, 1), X, DOWN, 2000, 0.015, 1000);
        assertThat(endless.lux(FLOOR)).isCloseTo(Math.PI * 1000 * 0.015, within(0.02));
        Tube far = new Tube(new Vec(0, 0, 30), X, DOWN, 0.6, 0.015, 1000);
        assertThat(far.lux(FLOOR)).isCloseTo(2 * 0.015 * 0.6 * 1000 / 900, within(3e-5));
    }

    /// The same light counted point by point over what shines, at odd places and turns.
    @Test
    void everyEmitter_agreesWithCountingPoints() {
        Patch patch = new Patch(new Vec(0.1, -0.2, 0.05), new Vec(0.3, 0.4, Math.sqrt(0.75)));
        Vec facing = new Vec(-0.6, -0.48, -0.64);
        Vec right = new Vec(0.8, -0.6, 0)
                .minus(facing.times(facing.dot(new Vec(0.8, -0.6, 0))))
                .unit();
        Panel panel = new Panel(new Vec(0.5, 0.3, 0.4), facing, right, 0.7, 0.5, 1);
        int n = 800;
        double counted = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                Vec at = panel.middle()
                        .plus(right.times(0.7 * ((i + 0.5) / n - 0.5)))
                        .plus(panel.up().times(0.5 * ((j + 0.5) / n - 0.5)));
                counted += piece(at, facing, patch) * 0.35 / ((double) n * n);
            }
        }
        assertThat(panel.lux(patch)).isCloseTo(counted, within(2e-4 * counted));
        Tube tube = new Tube(new Vec(0.4, 0.1, 0.3), right, facing, 0.6, 0.05, 1);
        Vec side = right.cross(facing);
        double round = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double angle = 2 * Math.PI * (j + 0.5) / n;
                Vec out = facing.times(Math.cos(angle)).plus(side.times(Math.sin(angle)));
                Vec at = tube.middle()
                        .plus(right.times(0.6 * ((i + 0.5) / n - 0.5)))
                        .plus(out.times(0.05));
                round += piece(at, out, patch) * 0.6 * 2 * Math.PI * 0.05 / ((double) n * n);
            }
        }
        assertThat(tube.lux(patch)).isCloseTo(round, within(5e-4 * round));
    }

    private static double piece(Vec at, Vec facing, Patch patch) {
        Vec way = at.minus(patch.place());
        double square = way.dot(way);
        double sends = -way.dot(facing);
        double gets = way.dot(patch.facing());
        return sends > 0 && gets > 0 ? sends * gets / (square * square) : 0;
    }

    /// By lux at a distance: a strip of 300 by 1200 mm that gives 4000 lx at 1 m gives less than a point's 16,000 lx at
    /// half the way (the inverse square is a point's), and as much as counted from its luminance.
    @Test
    void lux_atADistance_givesItsLuminance() {
        Panel strip = new Panel(new Vec(0, 0, 1), DOWN, X, 0.3, 1.2, 0);
        Emitter lit = strip.giving(4000, 1);
        assertThat(lit.lux(FLOOR)).isCloseTo(4000, within(1e-6));
        assertThat(lit.lux(new Patch(new Vec(0, 0, 0.5), Vec.UP))).isBetween(9000.0, 13000.0);
    }

    /// Twice as far with every length doubled and the luminance quartered is the same candela: a quarter of the lux.
    @Test
    void twiceTheSize_sameCandela_quarterTheLux() {
        Panel small = new Panel(new Vec(0.2, 0.1, 1), DOWN, X, 0.3, 1.2, 4000);
        Panel large = new Panel(new Vec(0.4, 0.2, 2), DOWN, X, 0.6, 2.4, 1000);
        assertThat(large.lux(FLOOR) * 4).isCloseTo(small.lux(FLOOR), within(1e-9));
    }

    @Test
    void whatShinesTheOtherWay_orLiesBehind_givesNothing() {
        assertThat(new Panel(new Vec(0, 0, 1), Vec.UP, X, 1, 1, 1000).lux(FLOOR))
                .isZero();
        assertThat(new Panel(new Vec(0, 0, -1), Vec.UP, X, 1, 1, 1000).lux(FLOOR))
                .isZero();
        assertThat(new Tube(new Vec(0, 0, 1), Vec.UP, X, 1, 0.1, 1000).lux(FLOOR))
                .isZero();
    }
}
