package plumeline.water;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Vec;

/// How a body that isn't round turns in the water: downhill in energy over all directions, by Newton's steps on the
/// slope, none longer than a few degrees, so that it comes to rest in the hollow it starts in.
final class Rolling {
    private static final int MOST_STEPS = 80;
    private static final double LONGEST_RADIANS = Math.toRadians(4);
    private static final double PUSH_RADIANS = Math.toRadians(0.5);
    private static final double PROBE_RADIANS = 1e-4;
    private static final double DONE_RADIANS = 1e-8;
    private static final double LEVEL_SHARE = 1e-9;
    private static final double CURVED_SHARE = 1e-6;
    private static final double SAME_RADIANS = Math.toRadians(0.5);

    private static final double[] TILTS = {3, 30, 55, 88, 92, 125, 150, 177};
    private static final double[] TOWARDS = {3, 45, 87};

    private final double water;
    private final Hold hold;
    private final double scaleJoules;

    Rolling(Vessel vessel, double waterKilogramsPerMetre3, Hold hold) {
        water = waterKilogramsPerMetre3;
        this.hold = hold;
        double size = vessel.outer().highestMetres(Vec.UP) - vessel.outer().lowestMetres(Vec.UP);
        scaleJoules = vessel.massKilograms() * Water.GRAVITY_METRES_PER_SECOND2 * size;
    }

    private Stance at(Vessel vessel, Vec up) {
        return Stance.of(vessel, water, hold, up);
    }

    /// Whether no direction is preferred to another.
    boolean isFlat(Vessel vessel, double share) {
        for (double tilt : TILTS) {
            for (double toward : TOWARDS) {
                Vec up = Stance.up(Math.toRadians(tilt), Math.toRadians(toward));
                double turns = at(vessel, up).slope().lengthMetres();
                if (turns > share * scaleJoules * Math.sin(Math.toRadians(tilt))) {
                    return false;
                }
            }
        }
        return true;
    }

    /// Every place it comes to rest from all round; one for those that a box's symmetry makes alike.
    List<Attitudes.Attitude> list(Vessel vessel) {
        List<Vec> places = new ArrayList<>();
        List<Attitudes.Attitude> found = new ArrayList<>();
        for (double tilt : TILTS) {
            for (double toward : TOWARDS) {
                Vec start = Stance.up(Math.toRadians(tilt), Math.toRadians(toward));
                Descent descent = new Descent(vessel, start, places);
                if (descent.run()) {
                    places.add(descent.quarter());
                    found.add(descent.attitude());
                }
            }
        }
        found.sort((a, b) -> Double.compare(a.tiltRadians(), b.tiltRadians()));
        return List.copyOf(found);
    }

    /// Where it comes to rest when it is let go.
    Attitudes.Attitude settle(Vessel vessel, Vec from) {
        Descent descent = new Descent(vessel, from, List.of());
        descent.run();
        return descent.attitude();
    }

    /// One way down.
    private final class Descent {
        private final List<Vec> known;
        private Vessel vessel;
        private Stance here;
        private Bowl bowl;

        private Descent(Vessel vessel, Vec start, List<Vec> known) {
            this.known = known;
            this.vessel = vessel.spilled(start);
            here = at(this.vessel, start);
            bowl = bowl();
        }

        /// Goes down to a rest; false where it is one that is known.
        private boolean run() {
            for (int i = 0; i < MOST_STEPS && !isKnown(); i++) {
                if (!step()) {
                    return true;
                }
            }
            return !isKnown();
        }

        private boolean isKnown() {
            Vec place = quarter();
            return known.stream().anyMatch(each -> each.minus(place).lengthMetres() < SAME_RADIANS);
        }

        private Vec quarter() {
            return new Vec(
                    Math.abs(here.up().x()), Math.abs(here.up().y()), here.up().z());
        }

        private Attitudes.Attitude attitude() {
            double side = Math.hypot(here.up().x(), here.up().y());
            double toward = side < SAME_RADIANS * 1e-3
                    ? 0
                    : Math.atan2(quarter().y(), quarter().x());
            double stiffness = Math.max(0, bowl.least());
            double air = vessel.airUnderMetres3(here.tiltRadians());
            return new Attitudes.Attitude(here.tiltRadians(), toward, stiffness, here.energyJoules(), air);
        }

        /// One step; false at rest.
        private boolean step() {
            boolean level = here.slope().lengthMetres() <= LEVEL_SHARE * scaleJoules;
            if (level && bowl.least() >= -CURVED_SHARE * scaleJoules) {
                return false;
            }
            Vec step = level ? bowl.across().times(PUSH_RADIANS) : bowl.down(CURVED_SHARE * scaleJoules);
            double length = step.lengthMetres();
            step = length > LONGEST_RADIANS ? step.times(LONGEST_RADIANS / length) : step;
            double energy = here.energyJoules();
            while (step.lengthMetres() > DONE_RADIANS) {
                Vec up = here.up().plus(step).unit();
                if (at(vessel, up).energyJoules() < energy) {
                    vessel = vessel.spilled(up);
                    here = at(vessel, up);
                    bowl = bowl();
                    return true;
                }
                step = step.times(0.5);
            }
            return false;
        }

        private Bowl bowl() {
            Vec up = here.up();
            Vec first =
                    up.cross(Math.abs(up.z()) < 0.7 ? Vec.UP : new Vec(1, 0, 0)).unit();
            Vec second = up.cross(first);
            Vec slope = here.slope();
            Vec one = at(vessel, up.plus(first.times(PROBE_RADIANS)).unit())
                    .slope()
                    .minus(slope);
            Vec other = at(vessel, up.plus(second.times(PROBE_RADIANS)).unit())
                    .slope()
                    .minus(slope);
            double mixed = (one.dot(second) + other.dot(first)) / 2;
            return Bowl.of(first, second, slope, one.dot(first), mixed, other.dot(second));
        }
    }

    /// How the energy curves about a direction: the two principal curvatures, joules, with their directions.
    private record Bowl(double least, Vec across, double most, Vec along, Vec slope) {
        private static Bowl of(Vec first, Vec second, Vec slope, double aa, double ab, double bb) {
            double middle = (aa + bb) / 2 / PROBE_RADIANS;
            double spread = Math.hypot((aa - bb) / 2, ab) / PROBE_RADIANS;
            double angle = Math.atan2(2 * ab, aa - bb) / 2;
            Vec along = first.times(Math.cos(angle)).plus(second.times(Math.sin(angle)));
            Vec across = second.times(Math.cos(angle)).minus(first.times(Math.sin(angle)));
            return new Bowl(middle - spread, across, middle + spread, along, slope);
        }

        /// The step to the bottom; where it curves the other way, as far downhill.
        private Vec down(double floor) {
            double one = -slope.dot(across) / Math.max(Math.abs(least), floor);
            double other = -slope.dot(along) / Math.max(Math.abs(most), floor);
            return across.times(one).plus(along.times(other));
        }
    }
}
