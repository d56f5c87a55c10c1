package plumeline.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.geom.Vec;

/// Stable attitudes of random bodies, and how they are held.
final class AttitudesTest {
    private static final double WATER = 998.207;
    private static final long SEED = 4711;
    private static final int BODIES = 1000;

    private static Vessel random(Random random) {
        return random.nextInt(2) == 0 ? random(random, FormTest.randomTurned(random)) : randomBox(random);
    }

    private static Vessel randomBox(Random random) {
        double width = 0.02 + 0.08 * random.nextDouble();
        return random(random, new Block(width, 0.02 + 0.08 * random.nextDouble(), 0.03 + 0.1 * random.nextDouble()));
    }

    private static Vessel random(Random random, Form hull) {
        Portion whole = hull.whole();
        double factor = 0.80 + 0.15 * random.nextDouble();
        Form cavity = switch (hull) {
            case Turned turned -> turned.scaled(factor, whole.centroid().z());
            case Block(double width, double depth, double height, double _) ->
                new Block(factor * width, factor * depth, factor * height, (1 - factor) / 2 * height);
            case Dished dished -> dished;
        };
        double room = cavity.whole().volumeMetres3();
        double mass = (0.05 + 0.7 * random.nextDouble()) * whole.volumeMetres3() * 1000;
        double centre = height(hull) * (0.2 + 0.6 * random.nextDouble());
        double share = random.nextInt(4) == 0 ? 0 : random.nextDouble();
        return new Vessel(
                hull,
                new Vessel.Shell(mass, centre),
                new Vessel.Inside.Filled(cavity, share * room, 900 + 300 * random.nextDouble()));
    }

    private static double height(Form form) {
        return form.highestMetres(Vec.UP) - form.lowestMetres(Vec.UP);
    }

    private static double scale(Vessel vessel) {
        return vessel.massKilograms() * 9.80665 * height(vessel.outer());
    }

    private static Hold hold(Random random, Vessel vessel) {
        return random.nextInt(3) == 0 ? new Hold.Tied(random.nextDouble() * height(vessel.outer())) : new Hold.Free();
    }

    /// Energy again, from levels found by halving: none of what the attitudes were found with but the cut itself.
    private static double energy(Vessel vessel, Hold hold, double tilt) {
        return energy(vessel, hold, new Vec(Math.sin(tilt), 0, Math.cos(tilt)));
    }

    private static double energy(Vessel vessel, Hold hold, Vec up) {
        Vessel.Inside.Filled filled = (Vessel.Inside.Filled) vessel.inside();
        double liquid = filled.liquidMetres3() * filled.densityKilogramsPerMetre3();
        double mass = vessel.shell().massKilograms() + liquid;
        Portion wet = halved(filled.cavity(), up, filled.liquidMetres3());
        double weights = vessel.shell().massKilograms() * vessel.shell().centreMetres() * up.z()
                + liquid * up.dot(wet.centroid());
        Portion whole = vessel.outer().whole();
        double lift = whole.volumeMetres3() * WATER;
        return 9.80665
                * switch (hold) {
                    case Hold.Tied(double height) ->
                        weights - lift * up.dot(whole.centroid()) - (mass - lift) * height * up.z();
                    case Hold.Free() when mass >= lift -> weights - mass * up.dot(whole.centroid());
                    case Hold.Free() -> {
                        Portion under = halved(vessel.outer(), up, mass / WATER);
                        yield weights - mass * up.dot(under.centroid());
                    }
                };
    }

    private static Portion halved(Form form, Vec up, double volume) {
        double low = form.lowestMetres(up);
        double high = form.highestMetres(up);
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (form.below(up, middle).volumeMetres3() > volume) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return form.below(up, low);
    }

    /// A direction some degrees from another, that way round.
    private static Vec pushed(Vec up, double degrees, double round) {
        Vec first = up.cross(Math.abs(up.z()) < 0.7 ? Vec.UP : new Vec(1, 0, 0)).unit();
        Vec way = first.times(Math.cos(round)).plus(up.cross(first).times(Math.sin(round)));
        double push = Math.toRadians(degrees);
        return up.times(Math.cos(push)).plus(way.times(Math.sin(push)));
    }

    @Test
    void randomBodies_energyNeverFalls_whenPushedAnyWayFromAStableAttitude() {
        Random random = new Random(SEED);
        System.out.println("seed " + SEED);
        int attitudes = 0;
        int several = 0;
        int askew = 0;
        for (int i = 0; i < BODIES; i++) {
            Vessel vessel = random(random);
            Hold hold = hold(random, vessel);
            List<Attitudes.Attitude> all = Attitudes.list(vessel, WATER, hold);
            assertThat(all).as("body " + i).isNotEmpty();
            several += all.size() > 1 ? 1 : 0;
            for (Attitudes.Attitude each : all) {
                Vec up = Stance.up(each.tiltRadians(), each.towardRadians());
                double rest = energy(vessel, hold, up);
                assertThat(each.energyJoules()).isCloseTo(rest, within(1e-8 * scale(vessel)));
                for (int way = 0; way < 8; way++) {
                    for (double degrees : new double[] {0.05, 0.2, 0.4}) {
                        double gained = energy(vessel, hold, pushed(up, degrees, way * Math.PI / 4)) - rest;
                        assertThat(gained)
                                .as("body " + i + " " + each + " by " + degrees)
                                .isGreaterThanOrEqualTo(-1e-9 * scale(vessel));
                    }
                }
                attitudes++;
                double quarter = each.towardRadians() % (Math.PI / 2);
                askew += quarter > 0.02 && quarter < Math.PI / 2 - 0.02 ? 1 : 0;
            }
        }
        assertThat(attitudes).isGreaterThan(BODIES);
        assertThat(several).as("bodies that can come to rest in several ways").isGreaterThan(100);
        assertThat(askew).as("boxes that rest over a corner").isGreaterThan(5);
    }

    @Test
    void randomBodies_noLowerPlaceIsMissed() {
        Random random = new Random(SEED + 1);
        for (int i = 0; i < 150; i++) {
            Vessel vessel = random(random, FormTest.randomTurned(random));
            Hold hold = hold(random, vessel);
            List<Attitudes.Attitude> all = Attitudes.list(vessel, WATER, hold);
            double scale = scale(vessel);
            double before = energy(vessel, hold, Math.toRadians(-1));
            double here = energy(vessel, hold, 0);
            for (int degrees = 0; degrees <= 180; degrees++) {
                double after = energy(vessel, hold, Math.toRadians(degrees + 1.0));
                double tilt = Math.toRadians(degrees);
                if (here < before - 1e-7 * scale && here < after - 1e-7 * scale) {
                    assertThat(all)
                            .as("body " + i + " at " + degrees)
                            .anySatisfy(
                                    each -> assertThat(each.tiltRadians()).isCloseTo(tilt, within(Math.toRadians(1))));
                }
                before = here;
                here = after;
            }
        }
    }

    /// On a grid of 4 and 5 degrees over a quarter of all directions, which a box's symmetry makes enough.
    @Test
    void randomBoxes_noLowerPlaceIsMissed() {
        Random random = new Random(SEED + 3);
        for (int i = 0; i < 12; i++) {
            Vessel vessel = randomBox(random);
            Hold hold = hold(random, vessel);
            List<Attitudes.Attitude> all = Attitudes.list(vessel, WATER, hold);
            for (int tilt = 0; tilt <= 180; tilt += 4) {
                for (int toward = 0; toward <= 90; toward += tilt % 180 == 0 ? 90 : 5) {
                    Vec up = Stance.up(Math.toRadians(tilt), Math.toRadians(toward));
                    if (isLowest(vessel, hold, up)) {
                        assertThat(all)
                                .as("body " + i + " at " + tilt + ", " + toward)
                                .anySatisfy(each -> assertThat(apart(each, up)).isLessThan(Math.toRadians(5)));
                    }
                }
            }
        }
    }

    private static boolean isLowest(Vessel vessel, Hold hold, Vec up) {
        double here = energy(vessel, hold, up);
        for (int way = 0; way < 12; way++) {
            for (double degrees : new double[] {2.5, 5}) {
                double there = energy(vessel, hold, pushed(up, degrees, way * Math.PI / 6));
                if (there < here + 1e-6 * scale(vessel)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static double apart(Attitudes.Attitude attitude, Vec up) {
        Vec other = Stance.up(attitude.tiltRadians(), attitude.towardRadians());
        return Math.acos(
                Math.clamp(Math.abs(other.x() * up.x()) + Math.abs(other.y() * up.y()) + other.z() * up.z(), -1, 1));
    }

    @Test
    void box_thatFloatsLow_liesOnItsWidestFace_whicheverSideThatIs() {
        Block flat = new Block(0.10, 0.04, 0.06);
        Vessel wood = new Vessel(flat, new Vessel.Shell(0.00024 * 600, 0.03), new Vessel.Inside.Solid());
        List<Attitudes.Attitude> all = Attitudes.list(wood, WATER, new Hold.Free());
        assertThat(all).hasSize(1);
        assertThat(Math.toDegrees(all.getFirst().tiltRadians())).isCloseTo(90, within(0.01));
        assertThat(Math.toDegrees(all.getFirst().towardRadians())).isCloseTo(90, within(0.01));
        Attitudes.Rest rest = Attitudes.settle(wood, WATER, new Hold.Free(), 0);
        assertThat(rest)
                .isInstanceOfSatisfying(
                        Attitudes.Rest.At.class,
                        at -> assertThat(Math.toDegrees(at.attitude().tiltRadians()))
                                .isCloseTo(90, within(0.01)));
    }

    @Test
    void airUnderAHollowBase_leavesForGood_asItTurns() {
        Turned hull = Turned.cylinder(0.033, 0.115);
        Turned recess = FormTest.turned(0, 0.024, 0.005, 0.020, 0.010, 0);
        double room = recess.whole().volumeMetres3();
        Form cavity = new Dished(hull.scaled(0.98, 0.0575), recess.scaled(1.02, 0.0575));
        Vessel can = new Vessel(
                hull,
                new Vessel.Shell(0.021, 0.0575),
                new Vessel.Inside.Filled(cavity, cavity.whole().volumeMetres3(), WATER),
                new Vessel.Hollow.Under(recess, room),
                List.of());
        Hold top = new Hold.Tied(0.115);
        assertThat(Attitudes.uprightStiffness(can, WATER, top)).isNegative();
        Attitudes.Rest.At rest = (Attitudes.Rest.At) Attitudes.settle(can, WATER, top, 0.01);
        Vessel left = can.spilled(Stance.up(rest.attitude().tiltRadians()));
        assertThat(left.displacedMetres3()).isLessThan(can.displacedMetres3());
        for (Attitudes.Attitude each : Attitudes.list(can, WATER, top)) {
            Vessel held = can.spilled(Stance.up(each.tiltRadians()));
            double push = 1e-3;
            assertThat(Attitudes.rightingNewtonMetres(held, WATER, top, each.tiltRadians() + push))
                    .isGreaterThan(Attitudes.rightingNewtonMetres(held, WATER, top, each.tiltRadians() - push));
        }
    }

    @Test
    void rightingMoment_isTheSlopeOfTheEnergy() {
        Random random = new Random(SEED + 2);
        for (int i = 0; i < 200; i++) {
            Vessel vessel = random(random, FormTest.randomTurned(random));
            Hold hold = hold(random, vessel);
            double tilt = 0.1 + 2.9 * random.nextDouble();
            double step = 1e-4;
            double slope = (energy(vessel, hold, tilt + step) - energy(vessel, hold, tilt - step)) / (2 * step);
            double scale = scale(vessel);
            assertThat(Attitudes.rightingNewtonMetres(vessel, WATER, hold, tilt))
                    .isCloseTo(slope, within(1e-5 * scale));
        }
    }

    @Test
    void flooded_evenShell_isIndifferent_andLeansNowhere() {
        Turned hull = Turned.cylinder(0.03, 0.1);
        Turned cavity = hull.scaled(0.98, 0.05);
        Vessel even = new Vessel(
                hull,
                new Vessel.Shell(0.02, 0.05),
                new Vessel.Inside.Filled(cavity, cavity.whole().volumeMetres3(), WATER));
        assertThat(Attitudes.list(even, WATER, new Hold.Free())).isEmpty();
        assertThat(Attitudes.settle(even, WATER, new Hold.Free(), 1)).isEqualTo(new Attitudes.Rest.Indifferent());
    }

    @Test
    void ballastThatTurnsItOver_isNoRemedy_andRemediesAreRanked() {
        Turned hull = Turned.cylinder(0.033, 0.115);
        Turned cavity = hull.scaled(0.995, 0.0575);
        double liquid = 355e-6;
        Vessel bottle =
                new Vessel(hull, new Vessel.Shell(0.013, 0.0575), new Vessel.Inside.Filled(cavity, liquid, 999));
        List<Remedies.Remedy> ways = Remedies.list(bottle, WATER, 7850, 0, 0);
        assertThat(ways).hasSize(5);
        assertThat(ways.getFirst().way()).isEqualTo(Remedies.Way.OPEN_DRAIN_FLOOD);
        assertThat(ways.get(1).way()).isEqualTo(Remedies.Way.BALLAST_INSIDE);
        assertThat(ways).allSatisfy(each -> {
            if (each.works() && each.way() != Remedies.Way.TIE_DOWN) {
                assertThat(each.netLiftNewtons()).isNegative();
            }
        });
        // A heavy lid: what hangs by its top still turns when tied by its base.
        Vessel topHeavy = new Vessel(hull, new Vessel.Shell(0.2, 0.110), new Vessel.Inside.Filled(cavity, 1e-4, 999));
        List<Remedies.Remedy> tried = Remedies.list(topHeavy, WATER, 7850, 0, 0);
        Remedies.Remedy tie = tried.stream()
                .filter(each -> each.way() == Remedies.Way.TIE_DOWN)
                .findFirst()
                .orElseThrow();
        assertThat(tie.result()).isEqualTo(Remedies.Result.TURNS);
        assertThat(tried.getLast().works()).isFalse();
        assertThat(tried)
                .allSatisfy(each -> assertThat(each.works()).isEqualTo(each.result() == Remedies.Result.WORKS));
        assertThat(Remedies.list(topHeavy.with(lead(0.5)), WATER, 7850, 0, 0)).isEmpty();
    }

    private static Vessel.Ballast lead(double kilograms) {
        return new Vessel.Ballast(kilograms, 11340, 0.01, Vessel.Ballast.Where.INSIDE);
    }

    @Test
    void hollow_losesItsAirWhenLaidDown() {
        Turned recess = FormTest.turned(0, 0.024, 0.010, 0.018);
        Vessel.Hollow.Under under = new Vessel.Hollow.Under(recess, 5e-6);
        assertThat(under.heldAir(FormTest.up(0)).volumeMetres3()).isCloseTo(5e-6, within(1e-12));
        assertThat(under.heldAir(FormTest.up(0)).centroid().z()).isBetween(0.005, 0.010);
        assertThat(under.heldAir(FormTest.up(20)).volumeMetres3()).isLessThan(5e-6);
        assertThat(under.heldAir(FormTest.up(90)).volumeMetres3()).isZero();
        assertThat(under.heldAir(FormTest.up(180)).volumeMetres3()).isZero();
    }

    @Test
    void whatDoesNotGoIn_isRefused() {
        Turned cavity = Turned.cylinder(0.03, 0.1);
        double room = cavity.whole().volumeMetres3();
        assertThatThrownBy(() -> new Vessel.Inside.Filled(cavity, room * 1.01, 1000))
                .hasMessageContaining("liquid");
        assertThatThrownBy(() -> new Vessel.Inside.Filled(cavity, -1e-6, 1000)).hasMessageContaining("not negative");
        Vessel full = new Vessel(
                cavity, new Vessel.Shell(0.1, 0.05), new Vessel.Inside.Filled(cavity.scaled(0.9, 0.05), 2.0e-4, 1000));
        assertThatThrownBy(() -> full.with(lead(0.5))).hasMessageContaining("ballast inside");
        assertThatThrownBy(() -> Buoyancy.ballastKilograms(1, 900, WATER)).hasMessageContaining("greater than");
    }

    @Test
    void outsideBallast_floating_isBorneByTheWater() {
        Turned hull = Turned.cylinder(0.03, 0.1);
        Vessel light = new Vessel(hull, new Vessel.Shell(0.1, 0.05), new Vessel.Inside.Solid())
                .with(new Vessel.Ballast(0.1, 7850, -0.01, Vessel.Ballast.Where.OUTSIDE));
        Level.At at = light.displacedAfloat(Vec.UP, WATER);
        assertThat(at.under().volumeMetres3() * WATER).isCloseTo(0.2, within(1e-9));
        double draught = (0.2 / WATER - 0.1 / 7850) / (Math.PI * 0.0009);
        assertThat(at.levelMetres()).isCloseTo(draught, within(1e-9));
    }
}
