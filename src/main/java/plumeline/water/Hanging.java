package plumeline.water;

import java.util.ArrayList;
import java.util.List;
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
    public record Found(double tiltRadians, Steadiness steadiness, List<Double> loadsNewtons) {
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

    /// Gives the net weight in water.
    ///
    /// @param vessel the vessel
    /// @param waterKilogramsPerMetre3 the water's density, kilograms a cubic metre, > 0
    /// @return weight less lift, newtons; negative where it floats
    public static double loadNewtons(Vessel vessel, double waterKilogramsPerMetre3) {
        return -Buoyancy.netLiftNewtons(vessel, waterKilogramsPerMetre3);
    }

    /// Gives the one tie height that counts for an attitude: level, the balance point x = (M·x_m − ρV·x_v)/(M − ρV);
    /// upright, the height above which a tie holds it upright; upside down, the height below which one does,
    /// whichever way it leans. For what floats and is held from below it is the other way round.
    ///
    /// @param vessel the vessel
    /// @param waterKilogramsPerMetre3 the water's density, kilograms a cubic metre, > 0
    /// @param wanted the attitude
    /// @return height over the base, metres; may lie beyond its ends
    /// @throws IllegalArgumentException where weight and lift are the same: no line pulls
    public static double singlePointMetres(Vessel vessel, double waterKilogramsPerMetre3, Wanted wanted) {
        double load = loadNewtons(vessel, waterKilogramsPerMetre3);
        Ranges.check(load != 0, "load", load, "other than 0");
        if (wanted == Wanted.LEVEL) {
            Stance stance = Stance.of(vessel, waterKilogramsPerMetre3, new Hold.Tied(0), Stance.up(Math.PI / 2));
            double heldKilograms = stance.massKilograms() - stance.displacedKilograms();
            return (stance.massKilograms() * stance.massCentre().z()
                            - stance.displacedKilograms()
                                    * stance.displacedCentre().z())
                    / heldKilograms;
        }
        double one = balanceMetres(vessel, waterKilogramsPerMetre3, wanted, 0);
        double other = balanceMetres(vessel, waterKilogramsPerMetre3, wanted, Math.PI / 2);
        return (wanted == Wanted.UPRIGHT) == load > 0 ? Math.max(one, other) : Math.min(one, other);
    }

    /// The tie height at which it neither comes back nor goes on when it leans a little towards a side.
    private static double balanceMetres(
            Vessel vessel, double waterKilogramsPerMetre3, Wanted wanted, double towardRadians) {
        double tilt = Math.abs(wanted.tiltRadians() - 1e-4);
        Stance stance = Stance.of(vessel, waterKilogramsPerMetre3, new Hold.Tied(0), Stance.up(tilt, towardRadians));
        double held = (stance.massKilograms() - stance.displacedKilograms()) * Water.GRAVITY_METRES_PER_SECOND2;
        return -stance.rightingNewtonMetres() / (held * Math.sin(tilt));
    }

    /// Hangs it.
    ///
    /// @param vessel the vessel
    /// @param waterKilogramsPerMetre3 the water's density, kilograms a cubic metre, > 0
    /// @param wanted the attitude it starts from; with two lines of the length for it
    /// @param pointsMetres heights of one or two ties over the base, metres, two of them apart
    /// @return how it comes to rest
    public static Found hang(Vessel vessel, double waterKilogramsPerMetre3, Wanted wanted, List<Double> pointsMetres) {
        int count = pointsMetres.size();
        Ranges.check(count == 1 || count == 2, "points", count, "1 or 2");
        double load = loadNewtons(vessel, waterKilogramsPerMetre3);
        if (load == 0) {
            List<Double> none = new ArrayList<>();
            pointsMetres.forEach(_ -> none.add(0.0));
            return new Found(wanted.tiltRadians(), Steadiness.INDIFFERENT, none);
        }
        double balance = singlePointMetres(vessel, waterKilogramsPerMetre3, wanted);
        if (count == 1) {
            return onOne(vessel, waterKilogramsPerMetre3, wanted, pointsMetres, 0, balance);
        }
        double first = pointsMetres.get(0);
        double second = pointsMetres.get(1);
        Ranges.check(first != second, "points", first, "apart");
        if (wanted != Wanted.LEVEL) {
            boolean firstCarries = first > second == (wanted == Wanted.UPRIGHT) == load > 0;
            return onOne(vessel, waterKilogramsPerMetre3, wanted, pointsMetres, firstCarries ? 0 : 1, balance);
        }
        double onFirst = load * (second - balance) / (second - first);
        double onSecond = load - onFirst;
        if (onFirst / load >= 0 && onSecond / load >= 0) {
            return new Found(Math.PI / 2, Steadiness.STEADY, List.of(onFirst, onSecond));
        }
        Found tipped =
                onOne(vessel, waterKilogramsPerMetre3, wanted, pointsMetres, onFirst / load < 0 ? 1 : 0, balance);
        return new Found(tipped.tiltRadians(), tipped.steadiness(), List.of(onFirst, onSecond));
    }

    private static Found onOne(
            Vessel vessel,
            double waterKilogramsPerMetre3,
            Wanted wanted,
            List<Double> pointsMetres,
            int carries,
            double balanceMetres) {
        double load = loadNewtons(vessel, waterKilogramsPerMetre3);
        List<Double> loads = new ArrayList<>();
        for (int i = 0; i < pointsMetres.size(); i++) {
            loads.add(i == carries ? load : 0.0);
        }
        double at = pointsMetres.get(carries);
        if (wanted == Wanted.LEVEL && Math.abs(at - balanceMetres) <= ON_IT_METRES) {
            return new Found(wanted.tiltRadians(), Steadiness.INDIFFERENT, loads);
        }
        double from = wanted.tiltRadians() + (wanted == Wanted.UPRIGHT ? PUSH_RADIANS : 0);
        from -= wanted == Wanted.UPSIDE_DOWN ? PUSH_RADIANS : 0;
        return switch (Attitudes.settle(vessel, waterKilogramsPerMetre3, new Hold.Tied(at), from)) {
            case Attitudes.Rest.At(Attitudes.Attitude attitude) ->
                new Found(attitude.tiltRadians(), Steadiness.STEADY, loads);
            case Attitudes.Rest.Indifferent() -> new Found(wanted.tiltRadians(), Steadiness.INDIFFERENT, loads);
        };
    }
}
