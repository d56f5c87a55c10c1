package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.water.Attitudes;
import plumeline.water.Hanging;
import plumeline.water.Hold;
import plumeline.water.Turned;
import plumeline.water.Vessel;
import plumeline.water.Wall;

/// Where a tied body hangs, by the lever, by the laws that the question `hang` uses, and for random bodies.
final class PoiseTest {
    private static final double WATER = 998.207;
    private static final Poise.Wish UPRIGHT = new Poise.Wish(0, 3);
    private static final Poise.Wish LEVEL = new Poise.Wish(90, 3);

    /// 197 g about 48 mm and 133.5 ml about 56 mm: (197 · 48 − 133.2606 · 56)/(197 − 133.2606) = 31.27 mm.
    private static final double BALANCE = (197 * 48 - 0.998207 * 133.5 * 56) / (197 - 0.998207 * 133.5);

    private static Vessel solid() {
        double radius = Math.sqrt(133.5e-6 / (Math.PI * 0.112));
        return new Vessel(Turned.cylinder(radius, 0.112), new Vessel.Shell(0.197, 0.048), new Vessel.Inside.Solid());
    }

    private static Poise.Ties ties(double cutDegrees, Double... millimetres) {
        return new Poise.Ties(List.of(millimetres).stream().map(mm -> mm / 1000).toList(), cutDegrees);
    }

    private static double margin(Poise poise, Poise.Ties ties, Poise.Wish wish) {
        double[] parts = poise.parts(ties, wish);
        return Math.min(parts[0], parts[1]);
    }

    @Test
    void balance_isTheLevers_atEveryTilt() {
        Poise poise = new Poise(solid(), WATER);
        for (double tilt : new double[] {0, 0.5, 30, 90, 179.9, 180}) {
            assertThat(1000 * poise.balanceMetres(tilt)).isEqualTo(BALANCE, within(1e-4));
        }
    }

    @Test
    void oneTie_overTheBalance_holdsUpright_underIt_upsideDown() {
        Poise poise = new Poise(solid(), WATER);
        assertThat(poise.tiltDegrees(ties(0, 35.0), UPRIGHT)).isZero();
        assertThat(poise.tiltDegrees(ties(0, 28.0), UPRIGHT)).isEqualTo(180);
        assertThat(margin(poise, ties(0, 110.0), UPRIGHT)).isEqualTo(3);
        assertThat(margin(poise, ties(0, 28.0), new Poise.Wish(180, 3))).isEqualTo(3);
    }

    /// A millimetre to where it tips counts for 3 deg.
    @Test
    void margin_fallsSteadilyToNothing_whereItTips() {
        Poise poise = new Poise(solid(), WATER);
        assertThat(margin(poise, ties(0, BALANCE + 0.5), UPRIGHT)).isEqualTo(1.5, within(1e-3));
        assertThat(margin(poise, ties(0, BALANCE), UPRIGHT)).isEqualTo(0, within(1e-3));
        assertThat(margin(poise, ties(0, BALANCE - 2), UPRIGHT)).isEqualTo(-6, within(1e-3));
        // Far below it counts no more than the tilt itself, 180 deg where 3 are allowed.
        assertThat(margin(new Poise(solid(), WATER), ties(0, -60.0), UPRIGHT)).isEqualTo(-177, within(1e-9));
    }

    @Test
    void oneTie_holdsLevel_onlyOnTheBalancePoint() {
        Poise poise = new Poise(solid(), WATER);
        assertThat(margin(poise, ties(90, BALANCE), LEVEL)).isEqualTo(1.5, within(1e-3));
        assertThat(poise.tiltDegrees(ties(90, BALANCE + 0.4), LEVEL)).isEqualTo(90);
        assertThat(margin(poise, ties(90, BALANCE + 2), LEVEL)).isNegative();
        assertThat(poise.tiltDegrees(ties(90, BALANCE + 2), LEVEL)).isZero();
    }

    /// Loads by hand: N (b − x)/(b − a) and N (x − a)/(b − a), N = 63.739 g.
    @Test
    void twoTies_onBothSides_holdTheTiltTheirLinesAreCutFor() {
        Poise poise = new Poise(solid(), WATER);
        double net = (0.197 - 0.998207e-3 * 133.5) * 9.80665;
        for (double cut : new double[] {20, 90, 140}) {
            Poise.Wish wish = new Poise.Wish(cut, 3);
            assertThat(poise.tiltDegrees(ties(cut, 10.0, 95.0), wish)).isEqualTo(cut);
            assertThat(margin(poise, ties(cut, 10.0, 95.0), wish)).isEqualTo(3);
            List<Double> pulls = poise.pullsNewtons(ties(cut, 10.0, 95.0), wish);
            assertThat(pulls.get(0)).isEqualTo(net * (95 - BALANCE) / 85, within(1e-6));
            assertThat(pulls.get(1)).isEqualTo(net * (BALANCE - 10) / 85, within(1e-6));
        }
        assertThat(margin(poise, ties(20, 10.0, 95.0), new Poise.Wish(18, 3))).isEqualTo(1, within(1e-9));
        assertThat(margin(poise, ties(-20, 10.0, 95.0), new Poise.Wish(20, 3))).isEqualTo(-37, within(1e-9));
        assertThat(poise.tips(ties(90, 40.0, 95.0), LEVEL)).isTrue();
        assertThat(margin(poise, ties(90, BALANCE + 1, 95.0), LEVEL)).isEqualTo(-3, within(1e-3));
    }

    @Test
    void whatFloats_hangsOnNoLine() {
        Vessel light = new Vessel(Turned.cylinder(0.02, 0.1), new Vessel.Shell(0.05, 0.05), new Vessel.Inside.Solid());
        Poise poise = new Poise(light, WATER);
        assertThat(poise.floats()).isTrue();
        assertThat(margin(poise, ties(0, 50.0), UPRIGHT)).isEqualTo(-177);
    }

    private static Vessel random(Random random) {
        Turned hull = new Turned(List.of(
                new Turned.Ring(0, 0.015 + 0.02 * random.nextDouble()),
                new Turned.Ring(0.05 + 0.05 * random.nextDouble(), 0.015 + 0.02 * random.nextDouble()),
                new Turned.Ring(0.12, 0.008 + 0.02 * random.nextDouble())));
        double volume = hull.whole().volumeMetres3();
        if (random.nextBoolean()) {
            double mass = volume * (1050 + 1500 * random.nextDouble());
            return new Vessel(
                    hull, new Vessel.Shell(mass, 0.02 + 0.08 * random.nextDouble()), new Vessel.Inside.Solid());
        }
        double cavity = volume * (0.7 + 0.2 * random.nextDouble());
        double liquid = cavity * random.nextDouble();
        double empty = (volume - cavity) * 2500 + Math.max(0, volume * 1020 - (volume - cavity) * 2500 - liquid * 1000);
        return new Wall(hull, new Vessel.Hollow.Flat())
                .around(new Wall.Empty(empty, OptionalDouble.empty()), cavity, liquid, 1000);
    }

    /// The balance's table against the laws of `hang` and of rests.
    @Test
    void randomBodies_restWhereTheLawsSay() {
        Random random = new Random(20261129);
        int compared = 0;
        for (int i = 0; i < 150; i++) {
            Vessel vessel = random(random);
            Poise poise = new Poise(vessel, WATER);
            double upright = Hanging.singlePointMetres(vessel, WATER, Hanging.Wanted.UPRIGHT);
            double level = Hanging.singlePointMetres(vessel, WATER, Hanging.Wanted.LEVEL);
            assertThat(poise.balanceMetres(0)).as("body %d upright", i).isEqualTo(upright, within(1e-5));
            assertThat(poise.balanceMetres(90)).as("body %d level", i).isEqualTo(level, within(1e-6));
            double tie = 0.12 * random.nextDouble();
            double from = 1 + 178 * random.nextDouble();
            Attitudes.Rest rest = Attitudes.settle(vessel, WATER, new Hold.Tied(tie), Math.toRadians(from));
            if (rest instanceof Attitudes.Rest.At(Attitudes.Attitude attitude)) {
                assertThat(poise.restDegrees(tie, from))
                        .as("body %d tied at %f from %f", i, tie, from)
                        .isEqualTo(Math.toDegrees(attitude.tiltRadians()), within(0.5));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(140);
    }

    /// Holds exactly where the question does, but for a tie within 0.5 mm of where it tips.
    @Test
    void randomBodies_holdWhereTheQuestionDoes() {
        Random random = new Random(4711);
        int held = 0;
        int failed = 0;
        for (int i = 0; i < 400; i++) {
            Vessel vessel = random(random);
            Hanging.Wanted wanted = Hanging.Wanted.values()[i % 3];
            double degrees = Math.toDegrees(wanted.tiltRadians());
            List<Double> points = i % 2 == 0
                    ? List.of(0.12 * random.nextDouble())
                    : List.of(0.06 * random.nextDouble(), 0.06 + 0.06 * random.nextDouble());
            Hanging.Found found = Hanging.hang(vessel, WATER, wanted, points);
            boolean pulls = found.loadsNewtons().stream().allMatch(load -> load >= 0);
            double off = Math.abs(Math.toDegrees(found.tiltRadians()) - degrees);
            double margin =
                    margin(new Poise(vessel, WATER), new Poise.Ties(points, degrees), new Poise.Wish(degrees, 3));
            if (Math.abs(off - 3) < 0.1 || Math.abs(margin) < 1.6) {
                continue;
            }
            assertThat(margin > 0)
                    .as("body %d %s at %s: %f", i, wanted, points, margin)
                    .isEqualTo(pulls && off < 3);
            held += margin > 0 ? 1 : 0;
            failed += margin < 0 ? 1 : 0;
        }
        assertThat(held).isGreaterThan(80);
        assertThat(failed).isGreaterThan(80);
    }

    @Test
    void margins_areSteadyInTheTies() {
        Random random = new Random(7);
        for (int i = 0; i < 60; i++) {
            Poise poise = new Poise(random(random), WATER);
            Poise.Wish wish = new Poise.Wish(i % 3 * 90, 3);
            double step = 1e-5;
            double before = margin(poise, new Poise.Ties(List.of(-0.01), wish.tiltDegrees()), wish);
            for (double tie = -0.01 + step; tie < 0.13; tie += step) {
                double here = margin(poise, new Poise.Ties(List.of(tie), wish.tiltDegrees()), wish);
                assertThat(Math.abs(here - before)).as("body %d at %f", i, tie).isLessThan(0.5);
                before = here;
            }
        }
    }
}
