package plumeline.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Vec;
import plumeline.ranges.Ranges;

/// Which end up: where a body comes to rest. A box is turned all ways, one that is round only by the tilt of its axis.
///
/// For what is round the righting moment is looked at every two degrees and, where it comes near to nothing without
/// changing its sign, at quarters of that; a rest is then found to a thousandth of a degree. Two rests nearer to each
/// other than half a degree may be taken for one.
public final class Attitudes {
    private static final int STEPS = 90;
    private static final int QUARTERS = 4;
    private static final double EDGE_RADIANS = Math.toRadians(0.02);
    private static final double FINE_RADIANS = Math.toRadians(0.0005);
    private static final int MOST_FALSI = 8;
    private static final int MOST_RETURNS = 8;
    private static final double STEP_BACK_RADIANS = Math.toRadians(0.5);

    /// A way to lean that favours no side of a box.
    private static final double OBLIQUE_RADIANS = 0.7;

    private static final double INDIFFERENT = 1e-8;

    private Attitudes() {}

    /// A tilt at which a vessel rests and to which it comes back when it is pushed a little.
    ///
    /// @param tiltRadians tilt of the axis from upright, radians, 0 to π
    /// @param towardRadians which side is up when it is tilted: from its width's direction toward its depth's,
    /// radians, 0 to π/2 (all corners of a box that are alike count as one); 0 for what is round
    /// @param stiffnessNewtonMetresPerRadian what the moment grows by when it is pushed, newton metres a radian, ≥
    /// 0; the least of all ways
    /// @param energyJoules potential energy, joules
    /// @param airUnderMetres3 the air under its base that is left there, cubic metres, ≥ 0
    public record Attitude(
            double tiltRadians,
            double towardRadians,
            double stiffnessNewtonMetresPerRadian,
            double energyJoules,
            double airUnderMetres3) {
        /// Says which end is up.
        ///
        /// @return the end
        public End end() {
            double degrees = Math.toDegrees(tiltRadians);
            return degrees < 45 ? End.TOP : degrees > 135 ? End.BASE : End.NEITHER;
        }
    }

    /// An end of a body.
    public enum End {
        /// Its top: it stands.
        TOP,
        /// Its base: it is upside down.
        BASE,
        /// It lies.
        NEITHER
    }

    /// Whether a vessel rests somewhere of itself.
    public sealed interface Rest {
        /// It does.
        ///
        /// @param attitude where
        record At(Attitude attitude) implements Rest {}

        /// No tilt is preferred to another.
        record Indifferent() implements Rest {}
    }

    /// Lists every stable attitude.
    ///
    /// @param vessel the vessel
    /// @param waterKilogramsPerMetre3 the water's density, kilograms a cubic metre, > 0
    /// @param hold what holds it
    /// @return the attitudes from upright on, each with the air under its base that it holds there; none where it
    /// is indifferent
    public static List<Attitude> list(Vessel vessel, double waterKilogramsPerMetre3, Hold hold) {
        if (!vessel.isRound()) {
            Rolling rolling = new Rolling(vessel, waterKilogramsPerMetre3, hold);
            return rolling.isFlat(vessel, INDIFFERENT) ? List.of() : rolling.list(vessel);
        }
        Curve curve = new Curve(vessel, waterKilogramsPerMetre3, hold);
        List<Attitude> found = new ArrayList<>();
        if (curve.isFlat()) {
            return found;
        }
        List<Sample> samples = curve.samples();
        if (samples.getFirst().moment() > 0) {
            found.add(curve.attitude(0));
        }
        for (int i = 1; i < samples.size(); i++) {
            if (samples.get(i - 1).moment() <= 0 && samples.get(i).moment() > 0) {
                found.add(curve.attitude(curve.root(samples.get(i - 1), samples.get(i))));
            }
        }
        if (samples.getLast().moment() <= 0) {
            found.add(curve.attitude(Math.PI));
        }
        found.removeIf(each -> curve.losesAirAndHold(each.tiltRadians()));
        return List.copyOf(found);
    }

    /// Finds where a vessel comes to rest when it is let go, slowly. Air that leaves from under its base on the way is
    /// gone.
    ///
    /// @param vessel the vessel
    /// @param waterKilogramsPerMetre3 the water's density, kilograms a cubic metre, > 0
    /// @param hold what holds it
    /// @param fromRadians the tilt at which it is let go, radians, 0 to π; no rest that can't bear a push counts
    /// @return the rest
    public static Rest settle(Vessel vessel, double waterKilogramsPerMetre3, Hold hold, double fromRadians) {
        if (!vessel.isRound()) {
            Rolling rolling = new Rolling(vessel, waterKilogramsPerMetre3, hold);
            return rolling.isFlat(vessel, INDIFFERENT)
                    ? new Rest.Indifferent()
                    : new Rest.At(rolling.settle(vessel, Stance.up(fromRadians, OBLIQUE_RADIANS)));
        }
        return settle(vessel.spilled(Stance.up(fromRadians)), waterKilogramsPerMetre3, hold, fromRadians, MOST_RETURNS);
    }

    /// With less air than it set out with it may not stay where that air left: then it goes back.
    private static Rest settle(
            Vessel vessel, double waterKilogramsPerMetre3, Hold hold, double fromRadians, int returns) {
        Curve curve = new Curve(vessel, waterKilogramsPerMetre3, hold);
        Rest rest = curve.settle(fromRadians);
        if (returns == 0
                || !(rest instanceof Rest.At(Attitude attitude))
                || !curve.losesAirAndHold(attitude.tiltRadians())) {
            return rest;
        }
        Vessel left = vessel.spilled(Stance.up(attitude.tiltRadians()));
        return settle(left, waterKilogramsPerMetre3, hold, attitude.tiltRadians() - STEP_BACK_RADIANS, returns - 1);
    }

    /// Gives the righting moment at a tilt.
    ///
    /// @param vessel the vessel
    /// @param waterKilogramsPerMetre3 the water's density, kilograms a cubic metre, > 0
    /// @param hold what holds it
    /// @param tiltRadians tilt of the axis from upright, radians, 0 to π
    /// @return moment, newton metres; positive turns it back towards upright
    public static double rightingNewtonMetres(
            Vessel vessel, double waterKilogramsPerMetre3, Hold hold, double tiltRadians) {
        return Stance.of(vessel, waterKilogramsPerMetre3, hold, Stance.up(tiltRadians))
                .rightingNewtonMetres();
    }

    /// Gives the stiffness of the upright attitude toward its width; negative where it falls over.
    ///
    /// @param vessel the vessel
    /// @param waterKilogramsPerMetre3 the water's density, kilograms a cubic metre, > 0
    /// @param hold what holds it
    /// @return stiffness, newton metres a radian
    public static double uprightStiffness(Vessel vessel, double waterKilogramsPerMetre3, Hold hold) {
        return new Curve(vessel, waterKilogramsPerMetre3, hold).stiffness(0);
    }

    private record Sample(double tilt, double moment) {}

    private static final class Curve {
        private final Vessel vessel;
        private final double water;
        private final Hold hold;
        private final List<Sample> samples = new ArrayList<>();

        private Curve(Vessel vessel, double waterKilogramsPerMetre3, Hold hold) {
            this.vessel = vessel;
            this.water = Ranges.checkPositive(waterKilogramsPerMetre3, "waterKilogramsPerMetre3");
            this.hold = hold;
        }

        private Sample at(double tilt) {
            return new Sample(tilt, rightingNewtonMetres(vessel, water, hold, tilt));
        }

        private List<Sample> coarse() {
            if (samples.isEmpty()) {
                for (int i = 0; i <= STEPS; i++) {
                    samples.add(at(EDGE_RADIANS + i * (Math.PI - 2 * EDGE_RADIANS) / STEPS));
                }
            }
            return samples;
        }

        private Rest settle(double fromRadians) {
            Sample here = at(Math.clamp(fromRadians, EDGE_RADIANS, Math.PI - EDGE_RADIANS));
            if (isNothing(here) && isFlat()) {
                return new Rest.Indifferent();
            }
            boolean down = here.moment() > 0;
            double step = Math.PI / STEPS * (down ? -1 : 1);
            while (here.tilt() > EDGE_RADIANS && down || here.tilt() < Math.PI - EDGE_RADIANS && !down) {
                Sample next = at(Math.clamp(here.tilt() + step, EDGE_RADIANS, Math.PI - EDGE_RADIANS));
                if (next.moment() > 0 != down) {
                    return new Rest.At(attitude(down ? root(next, here) : root(here, next)));
                }
                here = next;
            }
            return new Rest.At(attitude(down ? 0 : Math.PI));
        }

        /// Whether air has left from under its base at a rest, so that it is none.
        private boolean losesAirAndHold(double tilt) {
            Optional<Vessel> left = vessel.findSpilled(Stance.up(tilt));
            return left.isPresent() && new Curve(left.get(), water, hold).stiffness(tilt) <= 0;
        }

        /// No moment, against one that its weight would have at a lever of its own height.
        private boolean isNothing(Sample sample) {
            double size = vessel.outer().highestMetres(Vec.UP) - vessel.outer().lowestMetres(Vec.UP);
            double most = INDIFFERENT * vessel.massKilograms() * Water.GRAVITY_METRES_PER_SECOND2 * size;
            return Math.abs(sample.moment()) <= most * Math.sin(sample.tilt());
        }

        private boolean isFlat() {
            for (Sample each : coarse()) {
                if (!isNothing(each)) {
                    return false;
                }
            }
            return true;
        }

        /// The coarse samples, and quarters beside those that are nearest to nothing.
        private List<Sample> samples() {
            List<Sample> coarse = coarse();
            List<Sample> all = new ArrayList<>();
            for (int i = 0; i < coarse.size(); i++) {
                boolean after = i > 0 && isDip(coarse, i - 1);
                if (i > 0 && (after || isDip(coarse, i))) {
                    double from = coarse.get(i - 1).tilt();
                    double step = (coarse.get(i).tilt() - from) / QUARTERS;
                    for (int q = 1; q < QUARTERS; q++) {
                        all.add(at(from + q * step));
                    }
                }
                all.add(coarse.get(i));
            }
            return all;
        }

        private static boolean isDip(List<Sample> coarse, int i) {
            if (i == 0 || i == coarse.size() - 1) {
                return false;
            }
            double before = coarse.get(i - 1).moment();
            double here = coarse.get(i).moment();
            double after = coarse.get(i + 1).moment();
            boolean oneSign = before > 0 == here > 0 && here > 0 == after > 0;
            return oneSign && Math.abs(here) < Math.abs(before) && Math.abs(here) < Math.abs(after);
        }

        /// The tilt between a moment that isn't above 0 and one that is: regula falsi as Illinois has it, each step a
        /// little beyond the root so that both ends close in; where the moment jumps, by halves.
        private double root(Sample low, Sample high) {
            double a = low.tilt();
            double b = high.tilt();
            double under = low.moment();
            double over = high.moment();
            for (int i = 0; b - a > FINE_RADIANS; i++) {
                boolean halves = i >= MOST_FALSI || !(over > under);
                double falsi = (a * over - b * under) / (over - under);
                double tilt = halves ? (a + b) / 2 : Math.clamp(falsi, a + FINE_RADIANS / 4, b - FINE_RADIANS / 4);
                double moment = at(tilt).moment();
                if (moment > 0) {
                    b = tilt;
                    over = moment;
                    under /= 2;
                } else {
                    a = tilt;
                    under = moment;
                    over /= 2;
                }
            }
            return (a + b) / 2;
        }

        private Attitude attitude(double tilt) {
            double energy = Stance.of(vessel, water, hold, Stance.up(tilt)).energyJoules();
            return new Attitude(tilt, 0, Math.max(0, stiffness(tilt)), energy, vessel.airUnderMetres3(tilt));
        }

        private double stiffness(double tilt) {
            if (tilt < EDGE_RADIANS) {
                return at(EDGE_RADIANS).moment() / EDGE_RADIANS;
            }
            if (tilt > Math.PI - EDGE_RADIANS) {
                return -at(Math.PI - EDGE_RADIANS).moment() / EDGE_RADIANS;
            }
            return (at(tilt + EDGE_RADIANS).moment() - at(tilt - EDGE_RADIANS).moment()) / (2 * EDGE_RADIANS);
        }
    }
}
