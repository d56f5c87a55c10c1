package plumeline.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.geom.Vec;
import plumeline.tidy.Outside;

/// Bodies with liquid and air inside against the same bodies cut into bars: no cut forms, no moments; levels by sorting
/// bars by height, rest by the least of the energies.
@Outside(source = "bars of 0.6 mm by 0.6 mm across the body, summed", place = "this test", kind = "other method")
final class BarsOutsideTest {
    private static final double WATER = 998.207;
    private static final double SIDE = 0.0006;
    private static final long SEED = 99;

    /// A bar across the tilt's plane: where it is, and its volume.
    private record Bar(double x, double z, double metres3) {
        private double height(Vec up) {
            return x * up.x() + z * up.z();
        }
    }

    private record Bars(List<Bar> hull, List<Bar> cavity, Vessel vessel) {
        private static Bars of(Vessel vessel) {
            Vessel.Inside.Filled filled = (Vessel.Inside.Filled) vessel.inside();
            return new Bars(bars((Turned) vessel.outer()), bars((Turned) filled.cavity()), vessel);
        }

        private static List<Bar> bars(Turned form) {
            List<Bar> all = new ArrayList<>();
            double base = form.rings().getFirst().heightMetres();
            int layers = (int) Math.ceil(form.heightMetres() / SIDE);
            double thick = form.heightMetres() / layers;
            for (int k = 0; k < layers; k++) {
                double z = base + (k + 0.5) * thick;
                double r = radius(form, z);
                int strips = (int) Math.ceil(2 * r / SIDE);
                double wide = 2 * r / strips;
                for (int i = 0; i < strips; i++) {
                    double x = (i + 0.5) * wide - r;
                    all.add(new Bar(x, z, thick * wide * 2 * Math.sqrt(r * r - x * x)));
                }
            }
            return all;
        }

        private static double radius(Turned form, double z) {
            for (int i = 1; i < form.rings().size(); i++) {
                Turned.Ring a = form.rings().get(i - 1);
                Turned.Ring b = form.rings().get(i);
                if (z <= b.heightMetres()) {
                    double share = (z - a.heightMetres()) / (b.heightMetres() - a.heightMetres());
                    return a.radiusMetres() + share * (b.radiusMetres() - a.radiusMetres());
                }
            }
            return 0;
        }

        private static double volume(List<Bar> bars) {
            return bars.stream().mapToDouble(Bar::metres3).sum();
        }

        /// Centre of the lowest of some bars that make up a volume.
        private static Vec lowest(List<Bar> bars, Vec up, double metres3) {
            Bar[] sorted = bars.toArray(new Bar[0]);
            Arrays.sort(sorted, Comparator.comparingDouble(bar -> bar.height(up)));
            double left = metres3;
            double x = 0;
            double z = 0;
            for (int i = 0; i < sorted.length && left > 0; i++) {
                double part = Math.min(left, sorted[i].metres3());
                x += part * sorted[i].x();
                z += part * sorted[i].z();
                left -= part;
            }
            return new Vec(x, 0, z).times(1 / metres3);
        }

        private double liquidKilograms() {
            Vessel.Inside.Filled filled = (Vessel.Inside.Filled) vessel.inside();
            return filled.liquidMetres3() * filled.densityKilogramsPerMetre3();
        }

        private double outsideMetres3() {
            return volume(hull);
        }

        private Vec massCentre(Vec up) {
            Vessel.Inside.Filled filled = (Vessel.Inside.Filled) vessel.inside();
            Vec liquid = lowest(cavity, up, filled.liquidMetres3());
            Vec shell = new Vec(0, 0, vessel.shell().centreMetres());
            double mass = vessel.shell().massKilograms();
            return shell.times(mass).plus(liquid.times(liquidKilograms())).times(1 / (mass + liquidKilograms()));
        }

        private double floatingEnergy(double degrees) {
            Vec up = FormTest.up(degrees);
            double mass = vessel.shell().massKilograms() + liquidKilograms();
            Vec wet = lowest(hull, up, mass / WATER);
            return mass * 9.80665 * up.dot(massCentre(up).minus(wet));
        }
    }

    private static Vessel vessel(Random random, double specific) {
        Turned hull = FormTest.turned(
                0,
                0.020 + 0.015 * random.nextDouble(),
                0.02 + 0.02 * random.nextDouble(),
                0.025 + 0.01 * random.nextDouble(),
                0.09,
                0.020 + 0.01 * random.nextDouble(),
                0.12,
                0.012 + 0.01 * random.nextDouble());
        Portion whole = hull.whole();
        Turned cavity = hull.scaled(0.93, 0.06);
        double liquid = cavity.whole().volumeMetres3() * (0.3 + 0.6 * random.nextDouble());
        double mass = specific * whole.volumeMetres3() * WATER - liquid * 1000;
        double centre = 0.035 + 0.04 * random.nextDouble();
        return new Vessel(
                hull, new Vessel.Shell(Math.max(0.02, mass), centre), new Vessel.Inside.Filled(cavity, liquid, 1000));
    }

    @Test
    void netLiftAndTieHeight_agree() {
        Random random = new Random(SEED);
        System.out.println("seed " + SEED);
        for (int i = 0; i < 12; i++) {
            Vessel vessel = vessel(random, 1.3);
            Bars bars = Bars.of(vessel);
            double mass = vessel.shell().massKilograms() + bars.liquidKilograms();
            double displaced = bars.outsideMetres3() * WATER;
            double lift = (displaced - mass) * 9.80665;
            assertThat(Buoyancy.netLiftNewtons(vessel, WATER)).isCloseTo(lift, within(0.005 * displaced * 9.80665));
            Vec lying = new Vec(1, 0, 0);
            double middle =
                    Bars.lowest(bars.hull(), lying, bars.outsideMetres3()).z();
            double tie = (mass * bars.massCentre(lying).z() - displaced * middle) / (mass - displaced);
            assertThat(Hanging.singlePointMetres(vessel, WATER, Hanging.Wanted.LEVEL))
                    .isCloseTo(tie, within(0.001));
        }
    }

    @Test
    void floatingTilt_agrees() {
        Random random = new Random(SEED + 1);
        int leaning = 0;
        for (int i = 0; i < 8; i++) {
            Vessel vessel = vessel(random, 0.6 + 0.3 * random.nextDouble());
            Bars bars = Bars.of(vessel);
            double tilt = 0;
            double least = Double.POSITIVE_INFINITY;
            for (Attitudes.Attitude each : Attitudes.list(vessel, WATER, new Hold.Free())) {
                if (each.energyJoules() < least) {
                    least = each.energyJoules();
                    tilt = Math.toDegrees(each.tiltRadians());
                }
            }
            double best = leastOf(bars, 0, 180, 6);
            best = leastOf(bars, best - 6, best + 6, 1);
            best = leastOf(bars, best - 1, best + 1, 0.25);
            assertThat(tilt).as("body " + i).isCloseTo(Math.abs(best), within(1.0));
            leaning += tilt > 2 && tilt < 178 ? 1 : 0;
        }
        assertThat(leaning).as("bodies that lean").isGreaterThan(1);
    }

    private static double leastOf(Bars bars, double from, double to, double step) {
        double best = from;
        double least = Double.POSITIVE_INFINITY;
        for (double degrees = from; degrees <= to + 1e-9; degrees += step) {
            double energy = bars.floatingEnergy(degrees);
            if (energy < least) {
                least = energy;
                best = degrees;
            }
        }
        return best;
    }
}
