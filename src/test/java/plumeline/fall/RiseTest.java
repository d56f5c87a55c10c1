package plumeline.fall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.geom.Vec;

/// Things that rise against steps of Newton's law, and clouds of pieces.
final class RiseTest {
    private static final Medium WATER = Medium.ofWater(293.15);
    private static final double FACE = Math.PI * 0.021 * 0.021;

    private static Rise bottle(double kilograms) {
        return new Rise(kilograms, 133.5e-6, FACE, WATER, 1);
    }

    /// Steps of ten microseconds by the midpoint rule: mass and dragged water (8/3 of a disc's radius cubed, Lamb),
    /// lift, square drag of a blunt cylinder end on (0.85, Hoerner 1965).
    private static double stepped(Rise rise, double metres) {
        double rho = WATER.densityKilogramsPerMetre3();
        double lift = 9.80665 * (rho * rise.displacedMetres3() - rise.massKilograms());
        double moved = rise.massKilograms() + rho * 8.0 / 3 * Math.pow(0.021, 3);
        double dt = 1e-5;
        double v = 0;
        double z = 0;
        double t = 0;
        while (z < metres) {
            double half = v + dt / 2 * (lift - 0.85 * rho * FACE * v * v / 2) / moved;
            v += dt * (lift - 0.85 * rho * FACE * half * half / 2) / moved;
            z += dt * half;
            t += dt;
        }
        return t;
    }

    @Test
    void closedForm_isNewtonsLawInSteps() {
        for (double kilograms : new double[] {0.06, 0.1, 0.13}) {
            for (double way : new double[] {0.005, 0.08, 0.5}) {
                assertThat(bottle(kilograms).seconds(way))
                        .isCloseTo(stepped(bottle(kilograms), way), withinPercentage(0.2));
            }
        }
    }

    @Test
    void atFirst_itSpeedsUpFreely_atLastItGoesSteadily() {
        Rise rise = bottle(0.1);
        assertThat(rise.seconds(1e-6)).isCloseTo(Math.sqrt(2e-6 / rise.firstMetresPerSecond2()), withinPercentage(0.1));
        assertThat(rise.seconds(21) - rise.seconds(20)).isCloseTo(1 / rise.steadyMetresPerSecond(), within(1e-6));
        assertThat(rise.seconds(1e6)).isFinite();
        assertThat(rise.seconds(0)).isZero();
    }

    @Test
    void whatSinks_neverComesUp() {
        assertThat(bottle(0.2).seconds(0.1)).isInfinite();
        assertThat(bottle(0.2).steadyMetresPerSecond()).isZero();
        assertThat(bottle(0.2).isKnown()).isFalse();
        assertThat(bottle(0.1).isKnown()).isTrue();
        assertThatThrownBy(() -> bottle(0)).isInstanceOf(IllegalArgumentException.class);
    }

    private static Handful handful(long seed) {
        Piece steel = new Piece(Piece.Shape.BALL, 0.01, 0.01, 0.0041);
        return new Handful(seed, 200, 0.5, 0.03, new Fall(steel, Medium.AIR, 1));
    }

    @Test
    void aCloud_isTheSameForItsSeed_andKeepsToItsTimeAndDisc() {
        List<Handful.Dropped> pieces = handful(7).pieces();
        assertThat(handful(7).pieces()).isEqualTo(pieces);
        assertThat(handful(8).pieces()).isNotEqualTo(pieces);
        assertThat(pieces).hasSize(200);
        double last = -1;
        double away = 0;
        for (Handful.Dropped piece : pieces) {
            assertThat(piece.startSeconds()).isBetween(Math.max(0, last), 0.5);
            last = piece.startSeconds();
            double radius = Math.hypot(piece.from().x(), piece.from().y());
            assertThat(radius).isLessThanOrEqualTo(0.03);
            away += radius * radius / 200;
        }
        // Evenly over a disc the mean square is half the radius's square.
        assertThat(away).isCloseTo(0.03 * 0.03 / 2, withinPercentage(15));
        assertThat(new HashSet<>(pieces)).hasSize(200);
    }

    /// Steel in air falls freely at first: g t²/2.
    @Test
    void aCloud_fallsByTheLaw_fromWhenEachIsLetGo() {
        Handful handful = handful(7);
        List<Vec> there = handful.at(0.25, 5);
        List<Handful.Dropped> begun = handful.pieces().stream()
                .filter(piece -> piece.startSeconds() <= 0.25)
                .toList();
        assertThat(there).hasSameSizeAs(begun).hasSizeBetween(99, 101);
        for (int i = 0; i < there.size(); i++) {
            double t = 0.25 - begun.get(i).startSeconds();
            assertThat(there.get(i).z()).isCloseTo(-9.80665 * t * t / 2, within(0.003));
            assertThat(there.get(i).x()).isEqualTo(begun.get(i).from().x());
        }
        assertThat(handful.at(60, 0.4)).allMatch(place -> place.z() == -0.4);
        assertThatThrownBy(() -> new Handful(1, 0, 0, 0, handful.fall())).isInstanceOf(IllegalArgumentException.class);
    }
}
