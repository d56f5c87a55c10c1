package plumeline.water;

import java.util.ArrayList;
import java.util.List;

/// What keeps a floating product under, upright: each is tried on the vessel, and what fails says why.
public final class Remedies {
    /// Ballast over what makes it neutral, as the question `float` counts it.
    public static final double BALLAST_MARGIN = 1.1;

    /// What ballast or a liquid inside must hold it down with, kilograms: 20 g, common practice.
    private static final double DOWN_KILOGRAMS = 0.020;

    /// Pure glycerol at 20 degC, 1261.1 kg/m3 (CRC Handbook, 102nd ed.); heavier clear liquids aren't for a set.
    private static final double HEAVIEST_LIQUID = 1261;

    private static final double UPRIGHT_RADIANS = Math.toRadians(5);
    private static final double PUSH_RADIANS = Math.toRadians(1);

    private Remedies() {}

    /// Ways to keep it under, the best first.
    public enum Way {
        /// Let the air out from under its hollow base, by tilting it under water.
        CLEAR_BASE,
        /// Open it, drain it and fill it with tank water, no air left.
        OPEN_DRAIN_FLOOD,
        /// Ballast inside, on its floor.
        BALLAST_INSIDE,
        /// Ballast outside, touching its base from below.
        BALLAST_OUTSIDE,
        /// A line from its base to the tank's floor.
        TIE_DOWN,
        /// A heavier liquid inside.
        OTHER_LIQUID
    }

    /// What came of trying one.
    public enum Result {
        /// It stays under, upright on a line from its top, or from its base where it is tied down.
        WORKS,
        /// It still floats.
        FLOATS,
        /// It sinks, but by less than is wanted.
        TOO_LITTLE,
        /// It turns over or leans.
        TURNS,
        /// There is no room for it inside.
        NO_ROOM,
        /// Nothing on hand is so heavy.
        NO_SUCH_LIQUID
    }

    /// One way, tried.
    ///
    /// @param way what was done
    /// @param result what came of it
    /// @param amount what it takes: ballast's mass in kilograms, the line's pull in newtons, the liquid's density
    /// in kilograms a cubic metre; 0 for flooding and for letting air out
    /// @param netLiftNewtons net lift afterwards, newtons
    /// @param tiltRadians tilt at rest afterwards, hung from its top or tied down by its base, radians
    public record Remedy(Way way, Result result, double amount, double netLiftNewtons, double tiltRadians) {
        /// Tells whether it helps.
        ///
        /// @return true where it does
        public boolean works() {
            return result == Result.WORKS;
        }
    }

    /// Tries every way on a vessel that floats, or sinks by less than is wanted.
    ///
    /// @param vessel the vessel
    /// @param waterKilogramsPerMetre3 the water's density, kilograms a cubic metre, > 0
    /// @param ballastKilogramsPerMetre3 the ballast's density, kilograms a cubic metre, greater than the water's
    /// @param wantedKilograms the net weight in water that is wanted, kilograms, ≥ 0; ballast and liquids are told
    /// for that or for 20 g, whichever is more
    /// @param spreadKilograms how far the net weight may be off, kilograms, ≥ 0; ballast and liquids make up for it
    /// @return what came of each: what works first, both in the order of [Way]; none where it sinks so far as it is
    public static List<Remedy> list(
            Vessel vessel,
            double waterKilogramsPerMetre3,
            double ballastKilogramsPerMetre3,
            double wantedKilograms,
            double spreadKilograms) {
        double wanted = wantedKilograms * Water.GRAVITY_METRES_PER_SECOND2;
        double lift = Buoyancy.netLiftNewtons(vessel, waterKilogramsPerMetre3);
        if (wantedKilograms > 0 ? -lift >= wanted : lift <= 0) {
            return List.of();
        }
        List<Remedy> tried = new ArrayList<>();
        Trial trial = new Trial(vessel, waterKilogramsPerMetre3, wantedKilograms, spreadKilograms);
        if (vessel.hollow() instanceof Vessel.Hollow.Under(Turned _, double air) && air > 0) {
            tried.add(trial.clearBase());
        }
        if (vessel.inside() instanceof Vessel.Inside.Filled filled) {
            tried.add(trial.flood());
            tried.add(trial.ballast(filled, ballastKilogramsPerMetre3));
        }
        tried.add(trial.ballastOutside(ballastKilogramsPerMetre3));
        if (lift > 0) {
            tried.add(trial.tieDown());
        }
        if (vessel.inside() instanceof Vessel.Inside.Filled filled && filled.liquidMetres3() > 0) {
            tried.add(trial.liquid(filled));
        }
        List<Remedy> ranked = new ArrayList<>();
        tried.stream().filter(Remedy::works).forEach(ranked::add);
        tried.stream().filter(each -> !each.works()).forEach(ranked::add);
        return List.copyOf(ranked);
    }

    private record Trial(Vessel vessel, double water, double wantedKilograms, double spreadKilograms) {
        /// What ballast brings it down with, newtons.
        private double liftLess() {
            return Buoyancy.netLiftNewtons(vessel, water)
                    + Math.max(DOWN_KILOGRAMS, wantedKilograms + spreadKilograms) * Water.GRAVITY_METRES_PER_SECOND2;
        }

        /// Ballast is weighed to the gram, not less.
        private static double toTheGram(double kilograms) {
            return Math.ceil(kilograms * 1000 - 1e-6) / 1000;
        }

        private double baseMetres() {
            return vessel.outer().lowestMetres(Stance.up(0));
        }

        private double topMetres() {
            return vessel.outer().highestMetres(Stance.up(0));
        }

        private Remedy clearBase() {
            return judge(Way.CLEAR_BASE, vessel.withAirUnder(0), 0, topMetres());
        }

        private Remedy flood() {
            return judge(Way.OPEN_DRAIN_FLOOD, Buoyancy.flooded(vessel, water), 0, topMetres());
        }

        /// On the floor of the cavity; in its liquid it weighs all it weighs, as the vessel's outside stays as it is.
        private Remedy ballast(Vessel.Inside.Filled filled, double density) {
            double lift = Buoyancy.netLiftNewtons(vessel, water);
            double mass = toTheGram(Buoyancy.ballastKilograms(liftLess(), density, 0));
            if (mass / density > filled.airMetres3()) {
                return new Remedy(Way.BALLAST_INSIDE, Result.NO_ROOM, mass, lift, 0);
            }
            return judge(Way.BALLAST_INSIDE, vessel.withInside(mass, density), mass, topMetres());
        }

        private Remedy ballastOutside(double density) {
            double mass = toTheGram(Buoyancy.ballastKilograms(liftLess(), density, water));
            return judge(Way.BALLAST_OUTSIDE, vessel.withUnder(mass, density), mass, topMetres());
        }

        private Remedy tieDown() {
            double lift = Buoyancy.netLiftNewtons(vessel, water);
            double tilt = tiltOn(vessel, baseMetres());
            Result result = tilt <= UPRIGHT_RADIANS ? Result.WORKS : Result.TURNS;
            return new Remedy(Way.TIE_DOWN, result, lift, lift, tilt);
        }

        private Remedy liquid(Vessel.Inside.Filled filled) {
            double more = liftLess() / Water.GRAVITY_METRES_PER_SECOND2 / filled.liquidMetres3();
            double density = Math.ceil(filled.densityKilogramsPerMetre3() + more);
            if (density > HEAVIEST_LIQUID) {
                double left = Buoyancy.netLiftNewtons(vessel, water);
                return new Remedy(Way.OTHER_LIQUID, Result.NO_SUCH_LIQUID, density, left, 0);
            }
            Vessel.Inside other = new Vessel.Inside.Filled(filled.cavity(), filled.liquidMetres3(), density);
            return judge(Way.OTHER_LIQUID, vessel.holding(other), density, topMetres());
        }

        private Remedy judge(Way way, Vessel after, double amount, double tieMetres) {
            double lift = Buoyancy.netLiftNewtons(after, water);
            if (lift >= 0) {
                return new Remedy(way, Result.FLOATS, amount, lift, 0);
            }
            if (-lift < wantedKilograms * Water.GRAVITY_METRES_PER_SECOND2) {
                return new Remedy(way, Result.TOO_LITTLE, amount, lift, 0);
            }
            double tilt = tiltOn(after, tieMetres);
            return new Remedy(way, tilt <= UPRIGHT_RADIANS ? Result.WORKS : Result.TURNS, amount, lift, tilt);
        }

        private double tiltOn(Vessel after, double tieMetres) {
            return switch (Attitudes.settle(after, water, new Hold.Tied(tieMetres), PUSH_RADIANS)) {
                case Attitudes.Rest.At(Attitudes.Attitude attitude) -> attitude.tiltRadians();
                case Attitudes.Rest.Indifferent() -> 0;
            };
        }
    }
}
