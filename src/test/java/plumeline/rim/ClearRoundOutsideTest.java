package plumeline.rim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;
import plumeline.tidy.Outside;

/// Rays through round glass against textbook laws of rods and tubes.
@Outside(source = "laws of rods, ball lenses and Fresnel; each test names its own", kind = "closed form")
final class ClearRoundOutsideTest {
    private static final double R = 0.03;
    private static final double EMPTY = -1;
    private static final double FULL = 9;

    private static ClearRound cylinder(double wall, double glass, double liquid, double level) {
        return new ClearRound(Solid.cylinder(2 * R, 0.4), wall, new Indices(1, glass, liquid), level);
    }

    private static ClearRound rod(double index) {
        return cylinder(2 * R, index, 1, EMPTY);
    }

    /// Sight along +y that passes the axis at a distance to the right, rising by an angle.
    private static Passage sight(ClearRound glass, double aside, double rise) {
        Vec at = new Vec(aside, -Math.sqrt(R * R - aside * aside), 0.2);
        return glass.follow(at, new Vec(0, Math.cos(rise), Math.sin(rise)));
    }

    private static Passage.Out out(ClearRound glass, double aside) {
        return (Passage.Out) sight(glass, aside, 0);
    }

    /// How far to the left sight at the right of the axis is turned, degrees: toward the axis and past it.
    private static double turned(Passage.Out out) {
        return Math.toDegrees(Math.atan2(-out.direction().x(), out.direction().y()));
    }

    @ParameterizedTest
    @CsvSource({"0.1, 1.33", "0.5, 1.52", "0.9, 1.52", "0.99, 1.6", "-0.7, 1.49"})
    @Outside(source = "refraction twice at a round rod: 2(i - r), any text on the rainbow", kind = "closed form")
    void rod_turnsByTwiceTheBend(double share, double index) {
        double in = Math.asin(share);
        double bent = Math.asin(share / index);
        Passage.Out out = out(rod(index), share * R);
        assertThat(turned(out)).isCloseTo(Math.toDegrees(2 * (in - bent)), within(1e-9));
        assertThat(out.way()).isEqualTo(Passage.Way.WALL);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.333, 1.49, 1.52})
    @Outside(source = "the same law at grazing sight: 180 deg - 2 asin(1/n)", kind = "closed form")
    void rimOfARod_turnsByTheCriticalAngle(double index) {
        double turned = turned(out(rod(index), (1 - 1e-10) * R));
        assertThat(turned).isCloseTo(180 - 2 * Math.toDegrees(Math.asin(1 / index)), within(0.01));
    }

    @Test
    @Outside(source = "a pane with parallel faces doesn't turn sight", kind = "closed form")
    void thinEmptyGlass_isSeenStraightThrough() {
        double[] walls = {1e-3, 1e-4, 1e-5};
        for (double wall : walls) {
            assertThat(Math.abs(turned(out(cylinder(wall, 1.52, 1, EMPTY), 0.5 * R))))
                    .isLessThan(1000 * wall);
        }
    }

    /// In the wall the ray passes the axis at h/n; at the bore it meets the glass's critical angle where that is r/n:
    /// the index cancels out.
    @ParameterizedTest
    @ValueSource(doubles = {1.2, 1.52, 1.9})
    @Outside(source = "Snell's law at the bore: total reflection from h = r on", kind = "closed form")
    void sightBesideTheBore_isTotallyReflected_whateverTheIndex(double index) {
        double wall = 0.003;
        ClearRound glass = cylinder(wall, index, 1, EMPTY);
        assertThat(out(glass, (R - wall) * (1 - 1e-9)).way()).isEqualTo(Passage.Way.BORE);
        assertThat(out(glass, (R - wall) * (1 + 1e-9)).way()).isEqualTo(Passage.Way.WALL);
        // It goes over without a jump.
        assertThat(turned(out(glass, (R - wall) * (1 - 1e-9))))
                .isCloseTo(turned(out(glass, (R - wall) * (1 + 1e-9))), within(0.05));
    }

    /// In, a mirror at the bore, out: turned toward the axis by the two bends, away by the mirror.
    @ParameterizedTest
    @ValueSource(doubles = {0.92, 0.95, 0.99})
    @Outside(source = "Snell's law and the law of reflection, angles summed by hand", kind = "closed form")
    void sightMirroredAtTheBore_turnsAway(double share) {
        double wall = 0.003;
        double in = Math.asin(share);
        double bent = Math.asin(share / 1.52);
        double atBore = Math.asin(share * R / (1.52 * (R - wall)));
        double toward = 2 * (in - bent) - (Math.PI - 2 * atBore);
        assertThat(turned(out(cylinder(wall, 1.52, 1, EMPTY), share * R)))
                .isCloseTo(Math.toDegrees(toward), within(1e-9));
    }

    @Test
    @Outside(source = "a ball or cylinder lens's focal length from its middle, n R/(2(n - 1))", kind = "closed form")
    void fullCylinder_focusesAsALens() {
        double aside = 1e-5;
        Passage.Out out = out(cylinder(1e-7, 1.52, 1.333, FULL), aside);
        double focus = out.place().y()
                + out.direction().y() * out.place().x() / -out.direction().x();
        assertThat(focus).isCloseTo(1.333 * R / (2 * 0.333), within(1e-4 * R));
        // Fresh water's half filled: above the level nothing focuses.
        Passage.Out above = out(cylinder(1e-7, 1.52, 1.333, 0.1), aside);
        assertThat(Math.abs(turned(above))).isLessThan(1e-5);
    }

    @Test
    @Outside(source = "Fresnel straight on: ((n - 1)/(n + 1))^2 a face", kind = "closed form")
    void straightOn_eachFaceTakesItsShare() {
        double glass = Math.pow(0.52 / 2.52, 2);
        double water = Math.pow((1.52 - 1.333) / (1.52 + 1.333), 2);
        assertThat(out(rod(1.52), 0).transmittance()).isCloseTo(Math.pow(1 - glass, 2), within(1e-12));
        assertThat(out(cylinder(0.002, 1.52, 1.333, EMPTY), 0).transmittance())
                .isCloseTo(Math.pow(1 - glass, 4), within(1e-12));
        assertThat(out(cylinder(0.002, 1.52, 1.333, FULL), 0).transmittance())
                .isCloseTo(Math.pow((1 - glass) * (1 - water), 2), within(1e-12));
    }

    /// At Brewster's angle one polarisation passes a rod whole, the other as Fresnel says: r_s = (n² − 1)/(n² + 1).
    @Test
    @Outside(source = "Brewster's law", kind = "closed form")
    void atBrewstersAngle_halfPassesWhole() {
        double index = 1.52;
        double mirrored = Math.pow((index * index - 1) / (index * index + 1), 2);
        double share = Math.sin(Math.atan(index));
        assertThat(out(rod(index), share * R).transmittance())
                .isCloseTo((1 + Math.pow(1 - mirrored, 2)) / 2, within(1e-12));
    }

    /// Seen along the axis, sight that rises by an angle bends as if the index were √(n² − sin²)/cos; it leaves rising
    /// as it came.
    @ParameterizedTest
    @ValueSource(doubles = {5, 20, 40})
    @Outside(source = "Bravais's law for sections across a cylinder", kind = "closed form")
    void risingSight_bendsByBravais(double degrees) {
        double rise = Math.toRadians(degrees);
        double seeming = Math.sqrt(1.52 * 1.52 - Math.pow(Math.sin(rise), 2)) / Math.cos(rise);
        Passage.Out out = (Passage.Out) sight(rod(1.52), 0.6 * R, rise);
        double turned = 2 * (Math.asin(0.6) - Math.asin(0.6 / seeming));
        assertThat(turned(out)).isCloseTo(Math.toDegrees(turned), within(1e-9));
        assertThat(out.direction().z()).isCloseTo(Math.sin(rise), within(1e-12));
    }

    @Test
    @Outside(source = "light's way can be turned round", kind = "conserved quantity")
    void ways_areReversible_andNothingIsWon() {
        Random random = new Random(20261130);
        int compared = 0;
        for (int i = 0; i < 3000; i++) {
            double slope = 0.28 * (random.nextDouble() - 0.5);
            Solid.Revolved outer =
                    new Solid.Revolved(List.of(new Station(0, R - 0.2 * slope), new Station(0.4, R + 0.2 * slope)));
            ClearRound glass = new ClearRound(
                    outer,
                    0.0005 + 0.01 * random.nextDouble(),
                    new Indices(random.nextBoolean() ? 1 : 1.333, 1.52, 1.3 + 0.3 * random.nextDouble()),
                    random.nextBoolean() ? EMPTY : FULL);
            double aside = (2 * random.nextDouble() - 1) * R;
            Vec at = new Vec(aside, -Math.sqrt(R * R - aside * aside), 0.2);
            Vec way = new Vec(0.3 * random.nextGaussian(), 1, 0.3 * random.nextGaussian()).unit();
            Vec facing = new Vec(at.x(), at.y(), -slope * R).unit();
            if (way.dot(facing) < -0.02 && glass.follow(at, way) instanceof Passage.Out out) {
                assertThat(out.transmittance()).isBetween(0.0, 1.0);
                assertThat(out.direction().lengthMetres()).isCloseTo(1, within(1e-9));
                Passage.Out back =
                        (Passage.Out) glass.follow(out.place(), out.direction().times(-1));
                assertThat(back.place().distanceMetres(at)).isLessThan(1e-6);
                assertThat(back.direction().plus(way).lengthMetres()).isLessThan(1e-5);
                assertThat(back.transmittance()).isCloseTo(out.transmittance(), within(1e-5));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(1500);
    }

    @Test
    void sightThroughSurfaceFloorOrShoulder_isLost() {
        assertThat(sight(cylinder(0.002, 1.52, 1.333, 0.21), 0, 0.5)).isEqualTo(new Passage.Lost());
        ClearRound low = new ClearRound(Solid.cylinder(2 * R, 0.22), 0.002, new Indices(1, 1.52, 1.333), FULL);
        assertThat(sight(low, 0, 0.5)).isEqualTo(new Passage.Lost());
        Solid.Revolved bottle = new Solid.Revolved(
                List.of(new Station(0, R), new Station(0.21, R), new Station(0.21, R / 2), new Station(0.4, R / 2)));
        ClearRound shouldered = new ClearRound(bottle, 0.002, new Indices(1, 1.52, 1.333), EMPTY);
        assertThat(sight(shouldered, 0, 0)).isInstanceOf(Passage.Out.class);
        assertThat(sight(shouldered, 0, 0.5)).isEqualTo(new Passage.Lost());
    }
}
