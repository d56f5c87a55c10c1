package plumeline.water;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import plumeline.geom.Vec;
import plumeline.ranges.Ranges;

/// Where to tie a vessel so that it hangs as wanted, and what each line carries. All of it is under water; the lines
/// are upright and leave its axis.
///
/// **Source:** own derivation in `docs/derivations/float.md`: the lever rule on weight and lift; for upright and upside
/// down the tie height at which the energy's curvature over the tilt is nothing.
public final class Hanging {
    /// A tie this near to the balance point of a lying body is on it, as far as a hand can set it.
    private static final double ON_IT_METRES = 0.0005;

    private static final double PUSH_RADIANS = Math.toRadians(1);

    /// A lean so small that it counts as none.
    private static final double NEAR_RADIANS = 1e-4;

    private Hanging() {}

    /// How it shall hang.
    public enum Wanted {
        /// Its axis level.
        LEVEL,
        /// Its top up.
        UPRIGHT,
        /// Its base up.
        UPSIDE_DOWN;

        /// Gives the tilt of the axis from upright.
        ///
        /// @return tilt, radians
        public double tiltRadians() {
            return switch (this) {
                case LEVEL -> Math.PI / 2;
                case UPRIGHT -> 0;
                case UPSIDE_DOWN -> Math.PI;
            };
        }
    }

    /// How it hangs.
    ///
    /// @param tiltRadians tilt of the axis from upright at rest, radians; as wanted where it is indifferent
    /// @param steadiness whether it comes back to it
    /// @param loadsNewtons what each line pulls, in the order of the points, newtons; negative where it would have
    /// to push
    /// @param airUnderMetres3 the air that is left under its base there, cubic metres, ≥ 0
    public record Found(double tiltRadians, Steadiness steadiness, List<Double> loadsNewtons, double airUnderMetres3) {
        /// Copies the list.
        public Found {
            loadsNewtons = List.copyOf(loadsNewtons);
        }
    }

    /// Whether it comes back when it is pushed.
    public enum Steadiness {
        /// It does.
        STEADY,
        /// It stays wherever it is turned, or tips when a tie is a little off.
        INDIFFERENT
    }

    /// Gives the net weight in water, with all the air under its base.
    ///
    /// @param vessel the vessel
    /// @param waterKilogramsPerMetre3 the water's density, kilograms a cubic metre, > 0
    /// @return weight less lift, newtons; negative where it floats
    public static double loadNewtons(Vessel vessel, double waterKilogramsPerMetre3) {
        return -Buoyancy.netLiftNewtons(vessel, waterKilogramsPerMetre3);
    }

    /// Gives the net weight in water of what is turned to a tilt, with the air under its base that stays there.
    ///
    /// @param vessel the vessel
    /// @param waterKilogramsPerMetre3 the water's density, kilograms a cubic metre, > 0
    /// @param tiltRadians tilt of the axis from upright, radians, 0 to π
    /// @return weight less lift, newtons; negative where it floats
    public static double loadNewtons(Vessel vessel, double waterKilogramsPerMetre3, double tiltRadians) {
        return loadNewtons(vessel.spilled(Stance.up(tiltRadians)), waterKilogramsPerMetre3);
    }

    /// Gives the tie height at which nothing turns it at a tilt: tied above that it turns towards upright where it
    /// sinks.
    ///
    /// @param vessel the vessel
    /// @param waterKilogramsPerMetre3 the water's density, kilograms a cubic metre, > 0
    /// @param tiltRadians tilt of the axis from upright, radians, over 0 to under π
    /// @return height over the base, metres; may lie beyond its ends; infinite where weight and lift are the same
    public static double balanceMetres(Vessel vessel, double waterKilogramsPerMetre3, double tiltRadians) {
        return balanceMetres(vessel, waterKilogramsPerMetre3, tiltRadians, 0);
    }

    /// Gives the one tie height that counts for an attitude: level, the balance point x = (M·x_m − ρV·x_v)/(M − ρV);
    /// upright, the height above which a tie holds it upright; upside down, the height below which one does,
    /// whichever way it leans. For what floats and is held from below it is the other way round.
    ///
    /// @param vessel the vessel
    /// @param waterKilogramsPerMetre3 the water's density, kilograms a cubic metre, > 0
    /// @param wanted the attitude
    /// @return height over the base, metres; may lie beyond its ends
    /// @throws IllegalArgumentException where weight and lift are the same there: no line pulls
    public static double singlePointMetres(Vessel vessel, double waterKilogramsPerMetre3, Wanted wanted) {
        double load = loadNewtons(vessel, waterKilogramsPerMetre3, wanted.tiltRadians());
        Ranges.check(load != 0, "load", load, "other than 0");
        if (wanted == Wanted.LEVEL) {
            Stance stance = Stance.of(vessel, waterKilogramsPerMetre3, new Hold.Tied(0), Stance.up(Math.PI / 2));
            double heldKilograms = stance.massKilograms() - stance.displacedKilograms();
            return (stance.massKilograms() * stance.massCentre().z()
                            - stance.displacedKilograms()
                                    * stance.displacedCentre().z())
                    / heldKilograms;
        }
        double tilt = Math.abs(wanted.tiltRadians() - NEAR_RADIANS);
        double one = balanceMetres(vessel, waterKilogramsPerMetre3, tilt, 0);
        double other = balanceMetres(vessel, waterKilogramsPerMetre3, tilt, Math.PI / 2);
        return (wanted == Wanted.UPRIGHT) == load > 0 ? Math.max(one, other) : Math.min(one, other);
    }

    private static double balanceMetres(
            Vessel vessel, double waterKilogramsPerMetre3, double tiltRadians, double towardRadians) {
        Vec up = Stance.up(tiltRadians, towardRadians);
        Stance stance = Stance.of(vessel, waterKilogramsPerMetre3, new Hold.Tied(0), up);
        double held = (stance.massKilograms() - stance.displacedKilograms()) * Water.GRAVITY_METRES_PER_SECOND2;
        return -stance.rightingNewtonMetres() / (held * Math.sin(tiltRadians));
    }

    /// Hangs it. Air that has no room under its base in the wanted attitude, or leaves on the way to where it comes to
    /// rest, is gone.
    ///
    /// @param vessel the vessel
    /// @param waterKilogramsPerMetre3 the water's density, kilograms a cubic metre, > 0
    /// @param wanted the attitude it starts from; with two lines of the length for it
    /// @param pointsMetres heights of one or two ties over the base, metres, two of them apart
    /// @return how it comes to rest
    public static Found hang(Vessel vessel, double waterKilogramsPerMetre3, Wanted wanted, List<Double> pointsMetres) {
        int count = pointsMetres.size();
        Ranges.check(count == 1 || count == 2, "points", count, "1 or 2");
        Vessel held = vessel.spilled(Stance.up(wanted.tiltRadians()));
        double load = loadNewtons(held, waterKilogramsPerMetre3);
        double air = held.airUnderMetres3(wanted.tiltRadians());
        if (load == 0) {
            return new Found(wanted.tiltRadians(), Steadiness.INDIFFERENT, Collections.nCopies(count, 0.0), air);
        }
        double balance = singlePointMetres(held, waterKilogramsPerMetre3, wanted);
        One one = new One(held, waterKilogramsPerMetre3, wanted, pointsMetres, balance);
        if (count == 1) {
            return one.hang(0);
        }
        double first = pointsMetres.get(0);
        double second = pointsMetres.get(1);
        Ranges.check(first != second, "points", first, "apart");
        if (wanted != Wanted.LEVEL) {
            boolean firstCarries = first > second == (wanted == Wanted.UPRIGHT) == load > 0;
            return one.hang(firstCarries ? 0 : 1);
        }
        double onFirst = load * (second - balance) / (second - first);
        double onSecond = load - onFirst;
        List<Double> loads = List.of(onFirst, onSecond);
        if (onFirst / load >= 0 && onSecond / load >= 0) {
            return new Found(Math.PI / 2, Steadiness.STEADY, loads, air);
        }
        Found tipped = one.hang(onFirst / load < 0 ? 1 : 0);
        return new Found(tipped.tiltRadians(), tipped.steadiness(), loads, tipped.airUnderMetres3());
    }

    /// One tie that carries all.
    private record One(Vessel vessel, double water, Wanted wanted, List<Double> pointsMetres, double balanceMetres) {
        private Found hang(int carries) {
            double at = pointsMetres.get(carries);
            if (wanted == Wanted.LEVEL && Math.abs(at - balanceMetres) <= ON_IT_METRES) {
                return indifferent(carries);
            }
            double from = wanted.tiltRadians() + (wanted == Wanted.UPRIGHT ? PUSH_RADIANS : 0);
            from -= wanted == Wanted.UPSIDE_DOWN ? PUSH_RADIANS : 0;
            return switch (Attitudes.settle(vessel, water, new Hold.Tied(at), from)) {
                case Attitudes.Rest.At(Attitudes.Attitude attitude) -> {
                    double tilt = attitude.tiltRadians();
                    // The push that shows whether it comes back spills nothing of what does.
                    boolean comesBack = Math.abs(tilt - wanted.tiltRadians()) < PUSH_RADIANS;
                    double air = comesBack ? vessel.airUnderMetres3(tilt) : attitude.airUnderMetres3();
                    yield found(tilt, Steadiness.STEADY, carries, air);
                }
                case Attitudes.Rest.Indifferent() -> indifferent(carries);
            };
        }

        private Found indifferent(int carries) {
            double tilt = wanted.tiltRadians();
            return found(tilt, Steadiness.INDIFFERENT, carries, vessel.airUnderMetres3(tilt));
        }

        private Found found(double tilt, Steadiness steadiness, int carries, double air) {
            List<Double> loads = new ArrayList<>(Collections.nCopies(pointsMetres.size(), 0.0));
            loads.set(carries, loadNewtons(vessel.withAirUnder(air), water));
            return new Found(tilt, steadiness, loads, air);
        }
    }
}
