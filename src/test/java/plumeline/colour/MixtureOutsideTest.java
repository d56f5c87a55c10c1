package plumeline.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.hipparchus.optim.PointValuePair;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.tidy.Outside;

/// Mixtures against sums by Grassmann's laws and another solver of linear programmes, which is given the programme in
/// tristimulus values.
@Outside(
        source = "Hipparchus 4.0.3, its simplex method; three by three sums; each test names its own",
        kind = "other program, closed form")
final class MixtureOutsideTest {
    /// The CIE 1931 spectrum at 625, 525 and 465 nm (colour-science 0.4.6), and a glowing body of 5600 K.
    private static final List<Chromaticity> LASERS = List.of(
            Chromaticity.ofXy(0.70061, 0.29930),
            Chromaticity.ofXy(0.11416, 0.82621),
            Chromaticity.ofXy(0.13550, 0.03988),
            Chromaticity.ofXy(0.33020, 0.33908));

    private static List<Primary> lamp(int emitters, double... lumens) {
        List<Primary> lamp = new ArrayList<>();
        for (int i = 0; i < emitters; i++) {
            lamp.add(new Primary(LASERS.get(i), lumens[i]));
        }
        return lamp;
    }

    /// Shares of the light of three emitters by the three by three sum (grade F: closed form).
    @ParameterizedTest
    @CsvSource({
        "0.45986, 0.41060, 0.42606, 0.56064, 0.01329",
        "0.42336, 0.39895, 0.39023, 0.59030, 0.01947",
        "0.33020, 0.33908, 0.31290, 0.64218, 0.04492",
        "0.22466, 0.32874, 0.15435, 0.78268, 0.06296"
    })
    void threeEmitters_shareAsGrassmannSays(double x, double y, double red, double green, double blue) {
        Mixture found = Mixture.brightest(lamp(3, 300, 500, 80), Chromaticity.ofXy(x, y));
        assertThat(300 * found.drives().get(0) / found.lumens()).isCloseTo(red, within(1e-4));
        assertThat(500 * found.drives().get(1) / found.lumens()).isCloseTo(green, within(1e-4));
        assertThat(80 * found.drives().get(2) / found.lumens()).isCloseTo(blue, within(1e-4));
        assertThat(found.drives().stream().mapToDouble(each -> each).max().orElse(0))
                .isEqualTo(1);
        assertThat(found.distance()).isZero();
    }

    /// 3200 K with a white emitter of 5600 K, as a linear programme of four emitters (grade F: worked out by another
    /// program): no blue, and green at its most.
    @Test
    void whiteEmitter_takesTheBluesPlace() {
        List<Primary> lamp = lamp(4, 1000, 1000, 1000, 2000);
        Mixture found = Mixture.brightest(lamp, Planck.chromaticity(3200));
        assertThat(found.drives().get(2)).isZero();
        assertThat(found.drives().get(1)).isEqualTo(1);
        assertThat(1000 * found.drives().get(0) / found.lumens()).isCloseTo(0.25459, within(5e-4));
        assertThat(1000 / found.lumens()).isCloseTo(0.31193, within(5e-4));
        assertThat(2000 * found.drives().get(3) / found.lumens()).isCloseTo(0.43348, within(5e-4));
    }

    private static double[] ofEach(List<Primary> lamp, ToDoubleFunction<Xyz> part) {
        return lamp.stream()
                .mapToDouble(each -> part.applyAsDouble(each.colour().at(each.lumens())))
                .toArray();
    }

    /// The same programme in `X y = x Y` and `Z y = (1 − x − y) Y`, by another solver.
    private static double[] simplex(List<Primary> lamp, Chromaticity wanted) {
        double x = wanted.x();
        double y = wanted.y();
        List<LinearConstraint> constraints = new ArrayList<>();
        constraints.add(new LinearConstraint(ofEach(lamp, light -> light.x() * y - x * light.y()), Relationship.EQ, 0));
        constraints.add(new LinearConstraint(
                ofEach(lamp, light -> light.z() * y - (1 - x - y) * light.y()), Relationship.EQ, 0));
        for (int i = 0; i < lamp.size(); i++) {
            double[] one = new double[lamp.size()];
            one[i] = 1;
            constraints.add(new LinearConstraint(one, Relationship.LEQ, 1));
        }
        PointValuePair best = new SimplexSolver(1e-9)
                .optimize(
                        new LinearObjectiveFunction(ofEach(lamp, Xyz::y), 0),
                        new LinearConstraintSet(constraints),
                        GoalType.MAXIMIZE,
                        new NonNegativeConstraint(true));
        return best.getPoint();
    }

    private static Chromaticity random(Random random) {
        double x = 0.01 + 0.97 * random.nextDouble();
        double y = 0.01 + 0.97 * random.nextDouble();
        return x + y < 0.99 ? Chromaticity.ofXy(x, y) : Chromaticity.ofXy(0.99 - x, 0.99 - y);
    }

    private static List<Primary> randomLamp(Random random, int emitters) {
        List<Primary> lamp = new ArrayList<>();
        for (int i = 0; i < emitters; i++) {
            lamp.add(new Primary(random(random), Math.pow(10, 3 * random.nextDouble())));
        }
        return lamp;
    }

    /// Four hundred lamps of three to nine emitters, each at a colour that some mixture of it has (seed 11): the same
    /// drives, within what the issue asks (0.5 %, output 99.5 %) and far nearer.
    @Test
    void randomMixtures_areThoseOfAnotherSolver() {
        Random random = new Random(11);
        for (int i = 0; i < 400; i++) {
            List<Primary> lamp = randomLamp(random, 3 + random.nextInt(7));
            List<Double> some = new ArrayList<>();
            for (int k = 0; k < lamp.size(); k++) {
                some.add(0.05 + random.nextDouble());
            }
            Chromaticity wanted = Primary.sum(lamp, some).findChromaticity().orElseThrow();
            Mixture found = Mixture.brightest(lamp, wanted);
            double[] other = simplex(lamp, wanted);
            double lumens = 0;
            for (int k = 0; k < other.length; k++) {
                assertThat(found.drives().get(k)).as("lamp %d", i).isCloseTo(other[k], within(1e-5));
                lumens += other[k] * lamp.get(k).lumens();
            }
            assertThat(found.lumens() / lumens).isCloseTo(1, within(1e-6));
            assertThat(found.colour().distance(wanted)).isLessThan(1e-9);
            assertThat(found.room()).isPositive();
        }
    }

    /// The primaries of ANSI E1.54, of which no light is as blue or as green: x, y by colour-science 0.4.6 (grade D).
    @Test
    void entertainmentPrimaries_areMixedToo() {
        List<Primary> lamp = List.of(
                new Primary(Chromaticity.ofXy(0.7347, 0.2653), 300),
                new Primary(Chromaticity.ofXy(0.1596, 0.8404), 600),
                new Primary(Chromaticity.ofXy(0.0366, 0.0001), 0.1),
                new Primary(Chromaticity.ofXy(0.4254, 0.4044), 900));
        for (double kelvin = 1800; kelvin < 9000; kelvin += 300) {
            Mixture found = Mixture.brightest(lamp, Planck.chromaticity(kelvin));
            double[] other = simplex(lamp, Planck.chromaticity(kelvin));
            for (int k = 0; k < other.length; k++) {
                assertThat(found.drives().get(k)).isCloseTo(other[k], within(1e-5));
            }
            assertThat(found.distance()).isZero();
        }
    }

    /// Twin emitters, emitters in a line, one at the colour itself: as bright as the other solver, whichever drives.
    @Test
    void alikeEmitters_areAsBrightAsCanBe() {
        Random random = new Random(12);
        for (int i = 0; i < 100; i++) {
            List<Primary> lamp = randomLamp(random, 3);
            lamp.addAll(List.copyOf(lamp));
            Chromaticity middle = Primary.sum(lamp.subList(0, 3), List.of(1.0, 0.5, 0.7))
                    .findChromaticity()
                    .orElseThrow();
            Primary one = lamp.getFirst();
            lamp.add(new Primary(middle, one.lumens()));
            lamp.add(new Primary(
                    one.colour()
                            .at(one.lumens())
                            .plus(lamp.get(1).colour().at(1), 300)
                            .findChromaticity()
                            .orElseThrow(),
                    200));
            Mixture found = Mixture.brightest(lamp, middle);
            double[] other = simplex(lamp, middle);
            double lumens = 0;
            for (int k = 0; k < other.length; k++) {
                lumens += other[k] * lamp.get(k).lumens();
            }
            assertThat(found.lumens() / lumens).as("lamp %d", i).isCloseTo(1, within(1e-6));
            assertThat(found.colour().distance(middle)).isLessThan(1e-8);
        }
    }

    /// Where a colour is out of reach no mixture of two emitters, tried step by step, is nearer (seed 13); what was
    /// found is a mixture, and at least one of its emitters is fully on.
    @Test
    void outOfReach_nothingIsNearer() {
        Random random = new Random(13);
        int outside = 0;
        for (int i = 0; i < 200; i++) {
            List<Primary> lamp = randomLamp(random, 1 + random.nextInt(5));
            Chromaticity wanted = random(random);
            Mixture found = Mixture.brightest(lamp, wanted);
            double least = nearest(lamp, wanted);
            if (found.distance() > 0) {
                outside++;
                assertThat(found.distance()).isLessThanOrEqualTo(least + 1e-9).isCloseTo(least, within(2e-4));
                assertThat(found.colour().distance(wanted)).isCloseTo(found.distance(), within(1e-8));
                assertThat(found.drives()).contains(1.0);
            } else {
                assertThat(found.colour().distance(wanted)).isLessThan(1e-8);
            }
        }
        assertThat(outside).isBetween(100, 190);
    }

    private static double nearest(List<Primary> lamp, Chromaticity wanted) {
        double least = Double.POSITIVE_INFINITY;
        for (Primary one : lamp) {
            for (Primary other : lamp) {
                for (int step = 0; step <= 400; step++) {
                    double way = step / 400.0;
                    Chromaticity there = new Chromaticity(
                            one.colour().u()
                                    + way * (other.colour().u() - one.colour().u()),
                            one.colour().v()
                                    + way * (other.colour().v() - one.colour().v()));
                    least = Math.min(least, there.distance(wanted));
                }
            }
        }
        return least;
    }

    /// On the outline: an emitter's own colour is that emitter alone, a colour between two is those two.
    @Test
    void onTheOutline_onlyItsEmittersMix() {
        List<Primary> lamp = lamp(3, 300, 500, 80);
        assertThat(Mixture.brightest(lamp, LASERS.get(1)).drives()).containsExactly(0.0, 1.0, 0.0);
        Chromaticity yellow =
                Primary.sum(lamp, List.of(0.6, 1.0, 0.0)).findChromaticity().orElseThrow();
        Mixture found = Mixture.brightest(lamp, yellow);
        assertThat(found.drives().get(0)).isCloseTo(0.6, within(1e-6));
        assertThat(found.drives().get(1)).isEqualTo(1);
        assertThat(found.drives().get(2)).isZero();
        assertThat(found.room()).isZero();
        Chromaticity blue = Chromaticity.ofXy(0.10, 0.02);
        Mixture nearest = Mixture.brightest(lamp, blue);
        assertThat(nearest.drives()).containsExactly(0.0, 0.0, 1.0);
        assertThat(nearest.distance()).isCloseTo(blue.distance(LASERS.get(2)), within(1e-12));
        assertThatThrownBy(() -> Mixture.brightest(List.of(), yellow)).hasMessageContaining("without an emitter");
    }

    /// Equal light of 3200 K and 5600 K mixes to x 0.37300, y 0.36659; red and green of BT.709 as white has them to the
    /// yellow of x 0.41929, y 0.50527 (grade F: centres of gravity).
    @Test
    void sums_areCentresOfGravity() {
        Chromaticity white = Primary.sum(
                        List.of(new Primary(Planck.chromaticity(3200), 1), new Primary(Planck.chromaticity(5600), 1)),
                        List.of(1.0, 1.0))
                .findChromaticity()
                .orElseThrow();
        assertThat(white.x()).isCloseTo(0.37300, within(1e-4));
        assertThat(white.y()).isCloseTo(0.36659, within(1e-4));
        Chromaticity yellow = Primary.sum(
                        List.of(
                                new Primary(Chromaticity.ofXy(0.64, 0.33), 0.2126),
                                new Primary(Chromaticity.ofXy(0.30, 0.60), 0.7152)),
                        List.of(1.0, 1.0))
                .findChromaticity()
                .orElseThrow();
        assertThat(yellow.x()).isCloseTo(0.41929, within(1e-4));
        assertThat(yellow.y()).isCloseTo(0.50527, within(1e-4));
    }
}
