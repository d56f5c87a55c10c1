package plumeline.wet;

import java.util.List;
import java.util.OptionalInt;
import java.util.function.DoublePredicate;
import plumeline.quantity.Print;
import plumeline.roots.Roots;
import plumeline.stage.Immersed;
import plumeline.water.Attitudes;
import plumeline.water.Buoyancy;
import plumeline.water.Hold;
import plumeline.water.Material;
import plumeline.water.Remedies;
import plumeline.water.Vessel;
import plumeline.water.Water;

/// What keeps a thing under or turns it upright, each tried on it first, in sentences for findings and cards.
public final class Sinking {
    private static final int MOST_TOLD = 3;
    private static final int MOST_GRAMS = 2000;
    private static final double STEP = 9.0 / 8;
    private static final double PUSH_RADIANS = Math.toRadians(1);
    private static final double STEEL = Material.STEEL.densityKilogramsPerMetre3();

    private Sinking() {}

    /// Lists what brings a thing down.
    ///
    /// @param immersed the thing
    /// @param waterKilogramsPerMetre3 the water's density, kilograms a cubic metre
    /// @param wantedKilograms the net weight wanted, kilograms, ≥ 0
    /// @return sentences, the best first, at most three; none where it does already, or its vessel isn't known
    public static List<String> listTried(Immersed immersed, double waterKilogramsPerMetre3, double wantedKilograms) {
        if (!(immersed.body() instanceof Immersed.Body.Of(var vessel, var _))) {
            return List.of();
        }
        return Remedies.list(
                        vessel,
                        waterKilogramsPerMetre3,
                        STEEL,
                        wantedKilograms,
                        immersed.net().half())
                .stream()
                .filter(Remedies.Remedy::works)
                .limit(MOST_TOLD)
                .map(remedy -> said(vessel, remedy))
                .toList();
    }

    private static String said(Vessel vessel, Remedies.Remedy remedy) {
        String down = ": " + Lacks.grams(remedy.netLiftNewtons() / Water.GRAVITY_METRES_PER_SECOND2)
                + " down, upright on a line from its top.";
        return switch (remedy.way()) {
            case CLEAR_BASE -> "Tilt it under water until no air is left under its base" + down;
            case OPEN_DRAIN_FLOOD -> "Open, drain, fill it with tank water to the last bubble" + down;
            case BALLAST_INSIDE ->
                Lacks.grams(remedy.amount()) + " of steel inside, on its floor"
                        + written(vessel, remedy.amount(), Vessel.Ballast.Where.INSIDE) + down;
            case BALLAST_OUTSIDE ->
                Lacks.grams(remedy.amount()) + " of steel under its base"
                        + written(vessel, remedy.amount(), Vessel.Ballast.Where.OUTSIDE) + down;
            case TIE_DOWN ->
                "Tie its base to the tank's floor: it stands upright, the line pulls "
                        + Lacks.grams(remedy.amount() / Water.GRAVITY_METRES_PER_SECOND2) + " ("
                        + Lacks.newtons(remedy.amount()) + ").";
            case OTHER_LIQUID ->
                "Fill it with syrup or brine of " + Print.number(remedy.amount() / 1e3, 3) + " g/ml" + down;
        };
    }

    /// Says how the plan has steel that is added: a thing has one ballast, so that what is there already counts in.
    ///
    /// @param vessel the thing
    /// @param kilograms what is added
    /// @param where inside on its floor, or outside under its base
    /// @return such as ` (ballast: {mass: 36 g, place: under})`
    public static String written(Vessel vessel, double kilograms, Vessel.Ballast.Where where) {
        String place = where == Vessel.Ballast.Where.INSIDE ? "inside" : "under";
        if (vessel.ballasts().isEmpty()) {
            return " (ballast: {mass: " + Lacks.grams(kilograms) + ", place: " + place + "})";
        }
        Vessel.Ballast there = vessel.ballasts().getFirst();
        boolean isAlike = there.where() == where && Math.abs(there.densityKilogramsPerMetre3() - STEEL) < 1;
        return isAlike
                ? " more (in all ballast: {mass: " + Lacks.grams(kilograms + there.massKilograms()) + ", place: "
                        + place + "})"
                : ", beside the ballast that is there";
    }

    /// Finds the least steel under its base with which a thing that nothing holds comes to rest upright, still afloat
    /// where it floats: looked for in steps of an eighth, then closed in on, and rounded up to a gram, which
    /// kitchen scales weigh.
    ///
    /// @param vessel the thing
    /// @param waterKilogramsPerMetre3 the water's density, kilograms a cubic metre
    /// @param withinDegrees how far off upright it may rest
    /// @return grams; empty where none does up to 2 kg
    public static OptionalInt findUprightGrams(Vessel vessel, double waterKilogramsPerMetre3, double withinDegrees) {
        DoublePredicate isUpright = grams -> restDegrees(with(vessel, grams), waterKilogramsPerMetre3) <= withinDegrees;
        DoublePredicate floats = grams -> netKilograms(with(vessel, grams), waterKilogramsPerMetre3) < 0;
        double most = netKilograms(vessel, waterKilogramsPerMetre3) < 0
                ? Math.floor(Roots.end(floats, 0, MOST_GRAMS))
                : MOST_GRAMS;
        double before = 0;
        for (double grams = 1; grams <= most; grams = grams < most ? Math.min(grams * STEP, most) : most + 1) {
            if (isUpright.test(grams)) {
                int least = (int) Math.ceil(Roots.end(isUpright.negate(), before, grams));
                return OptionalInt.of(least);
            }
            before = grams;
        }
        return OptionalInt.empty();
    }

    private static Vessel with(Vessel vessel, double grams) {
        return vessel.withUnder(grams / 1e3, STEEL);
    }

    private static double netKilograms(Vessel vessel, double water) {
        return -Buoyancy.netLiftNewtons(vessel, water) / Water.GRAVITY_METRES_PER_SECOND2;
    }

    /// Finds how a thing that nothing holds comes to rest, let go upright.
    ///
    /// @param vessel the thing
    /// @param water the water's density, kilograms a cubic metre
    /// @return its tilt, degrees; 0 where nothing turns it
    public static double restDegrees(Vessel vessel, double water) {
        return switch (Attitudes.settle(vessel, water, new Hold.Free(), PUSH_RADIANS)) {
            case Attitudes.Rest.At(Attitudes.Attitude attitude) -> Math.toDegrees(attitude.tiltRadians());
            case Attitudes.Rest.Indifferent() -> 0;
        };
    }
}
